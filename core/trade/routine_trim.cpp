#include "core/trade/routine_trim.hpp"

#include <algorithm>
#include <array>

namespace evenclaw {

namespace {

constexpr int counts_from_before_days = 28;

// No trimming right before calving (agproud.com 28637); that this means two weeks is our judgement,
// and that she is dry for two months from memory.
constexpr int spared_before_calving_days = 14;
constexpr int spared_from_after_dry_off_days = 60 - spared_before_calving_days;
// A cow calves about once a year: what is older is out of date (our judgement).
constexpr int known_for_days = 365;

constexpr RoutineTrimRule heifer_rule = {
    "heifer-trim",
    1,
    RoutineAnchor::due_to_calve,
    -120,
    -60,
    -59,
    -spared_before_calving_days,
    "routine trim due: heifer before her first calving",
    "2 to 3 months before the first calving (SEGES) or 3 to 4 (a breeding company's page)"};
constexpr RoutineTrimRule dry_off_rule = {
    "dry-off-trim",
    1,
    RoutineAnchor::dry_off,
    -30,
    0,
    1,
    spared_from_after_dry_off_days,
    "routine trim due: before drying off",
    "before or at drying off, 2 to 3 months before calving (SEGES); the month is derived, cows "
    "being dry about two months: from memory"};
constexpr RoutineTrimRule calving_rule = {
    "calving-trim",
    1,
    RoutineAnchor::due_to_calve,
    -90,
    -60,
    -59,
    -spared_before_calving_days,
    "routine trim due: two to three months before calving",
    "2 to 3 months before calving (SEGES); about 20 % fewer sole ulcers after a trim 1 to 3 months "
    "before it (Danish records)"};
constexpr RoutineTrimRule milk_rule = {"milk-trim",
                                       1,
                                       RoutineAnchor::calved,
                                       60,
                                       150,
                                       151,
                                       known_for_days,
                                       "routine trim due: 60 to 150 days in milk",
                                       "agproud.com 28241 and a manual of Merck"};

struct Window {
  const RoutineTrimRule* rule;
  Day anchor;

  [[nodiscard]] Day from() const { return anchor + rule->from_days; }

  [[nodiscard]] bool is_over(Day today) const { return today > anchor + rule->until_days; }

  [[nodiscard]] RoutineTrimDue due() const {
    return {rule, from(), anchor + rule->due_days, anchor + rule->overdue_days};
  }
};

/// What is still ahead of the calving she had last.
std::optional<Day> since_calving(std::optional<Day> day, const CowFacts& facts) {
  return day && facts.calved && *day <= *facts.calved ? std::nullopt : day;
}

bool is_first_calving(const CowFacts& facts) {
  return !facts.calved && facts.heifer_or_cow == HeiferOrCow::heifer;
}

/// The rules that hold for her, the one that was opened last first.
std::vector<Window> windows(const CowFacts& facts) {
  std::vector<Window> all;
  const std::optional<Day> calves = since_calving(facts.due_to_calve, facts);
  const std::optional<Day> dry = since_calving(facts.dry_off, facts);
  if (calves && is_first_calving(facts)) {
    all.push_back({&heifer_rule, *calves});
  } else if (dry) {
    all.push_back({&dry_off_rule, *dry});
  } else if (calves) {
    all.push_back({&calving_rule, *calves});
  }
  if (facts.calved) all.push_back({&milk_rule, *facts.calved});
  return all;
}

}  // namespace

std::span<const RoutineTrimRule> all_routine_trim_rules() {
  static constexpr std::array rules = {heifer_rule, dry_off_rule, calving_rule, milk_rule};
  return rules;
}

std::optional<RoutineTrimDue> routine_trim_due(const CowFacts& facts, std::span<const Day> trims,
                                               Day today) {
  for (const Window& window : windows(facts)) {
    if (today < window.from()) continue;
    const bool is_done = std::any_of(trims.begin(), trims.end(), [&](Day trim) {
      return trim >= window.from() - counts_from_before_days && trim <= today;
    });
    if (is_done || window.is_over(today)) return std::nullopt;
    return window.due();
  }
  return std::nullopt;
}

std::vector<Day> trims_of(std::span<const TurnRow> turns, std::span<const FootRow> feet) {
  std::vector<Day> days;
  for (const TurnRow& turn : turns) {
    if (turn.end != TurnEnd::done) continue;
    const bool both_hinds = turn.lifted.has(Foot::lh) && turn.lifted.has(Foot::rh);
    const bool was_left = std::any_of(feet.begin(), feet.end(), [&](const FootRow& foot) {
      const bool is_hind = foot.foot == Foot::lh || foot.foot == Foot::rh;
      return foot.turn == turn.turn && is_hind && foot.trimmed == Trimmed::no;
    });
    if (both_hinds && !was_left) days.push_back(turn.day);
  }
  return days;
}

}  // namespace evenclaw
