#include "core/trade/cow_facts.hpp"

#include <algorithm>

#include "core/base/text.hpp"
#include "core/trade/check.hpp"

namespace evenclaw {

namespace {

constexpr int limit_kilograms = 400;
constexpr int heifer_for_days = 365;

struct SmallBreed {
  std::string_view name;
  std::string_view source;
};

constexpr SmallBreed small_breeds[] = {
    {"jersey", "named as a small breed with no claw length of its own in what was collected"},
    {"dexter", "from memory"},
    {"kerry", "from memory"}};

bool came_as(const TurnRow& turn, Reason reason) {
  return turn.reason == reason || turn.also.has(reason);
}

std::optional<HeiferOrCow> told_by(const TurnRow& turn) {
  // A heifer that has just calved is still called one.
  if (came_as(turn, Reason::heifer)) return HeiferOrCow::heifer;
  const bool has_calved = came_as(turn, Reason::fresh) || came_as(turn, Reason::dry_off);
  return has_calved ? std::optional(HeiferOrCow::cow) : std::nullopt;
}

}  // namespace

WeightClass weight_class_of(int kilograms) {
  return kilograms < limit_kilograms ? WeightClass::under_400_kg : WeightClass::from_400_kg;
}

CowFacts facts_of(const Rows& rows) {
  CowFacts facts;
  if (!rows.cow_facts.empty()) {
    const CowFactsRow& row = rows.cow_facts.front();
    facts = {row.breed,  row.born,      row.heifer_or_cow, row.heifer_or_cow_on, row.weight,
             row.calved, row.lactation, row.dry_off,       row.due_to_calve};
  }
  const auto tell = [&](HeiferOrCow told, Day on) {
    if (facts.heifer_or_cow_on && on < *facts.heifer_or_cow_on) return;
    facts.heifer_or_cow = told;
    facts.heifer_or_cow_on = on;
  };
  if (facts.calved) tell(HeiferOrCow::cow, *facts.calved);
  for (const TurnRow& turn : rows.turns) {
    if (const std::optional<HeiferOrCow> told = told_by(turn)) tell(*told, turn.day);
  }
  return facts;
}

CowFacts facts_of(const CowPast& past) {
  return facts_of(past.rows);
}

bool is_heifer_on(const CowFacts& facts, Day today) {
  if (facts.heifer_or_cow != HeiferOrCow::heifer) return false;
  return !facts.heifer_or_cow_on || today - *facts.heifer_or_cow_on <= heifer_for_days;
}

bool is_small_breed(std::string_view breed) {
  const std::string folded = fold_case(trimmed(breed));
  return std::any_of(std::begin(small_breeds), std::end(small_breeds),
                     [&](const SmallBreed& row) { return row.name == folded; });
}

}  // namespace evenclaw
