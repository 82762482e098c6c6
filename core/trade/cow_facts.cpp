#include "core/trade/cow_facts.hpp"

#include <algorithm>

#include "core/base/text.hpp"
#include "core/trade/check.hpp"

namespace evenclaw {

namespace {

constexpr int limit_kilograms = 400;

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

CowFacts facts_of(const CowPast& past) {
  CowFacts facts;
  if (!past.rows.cow_facts.empty()) {
    const CowFactsRow& row = past.rows.cow_facts.front();
    facts = {row.breed, row.born, row.heifer_or_cow, row.heifer_or_cow_on, row.weight};
  }
  for (const TurnRow& turn : past.rows.turns) {
    const std::optional<HeiferOrCow> told = told_by(turn);
    if (!told || (facts.heifer_or_cow_on && turn.day < *facts.heifer_or_cow_on)) continue;
    facts.heifer_or_cow = told;
    facts.heifer_or_cow_on = turn.day;
  }
  return facts;
}

bool is_small_breed(std::string_view breed) {
  const std::string folded = fold_case(trimmed(breed));
  return std::any_of(std::begin(small_breeds), std::end(small_breeds),
                     [&](const SmallBreed& row) { return row.name == folded; });
}

}  // namespace evenclaw
