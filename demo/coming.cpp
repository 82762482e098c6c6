#include "demo/coming.hpp"

#include <algorithm>
#include <optional>

#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

/// What decides for one cow; draws are made whatever she has, so that she changes no other.
struct Luck {
  bool misses_recheck = false;
  bool is_seen_lame = false;
};

Luck luck_drawn(RandomStream& draws) {
  Luck luck;
  luck.misses_recheck = draws.chance(value_of(Parameter::misses_recheck));
  luck.is_seen_lame = draws.chance(value_of(Parameter::farmer_sees_lame));
  return luck;
}

bool walks_lame(const Cow& cow) {
  return std::any_of(cow.feet.begin(), cow.feet.end(), is_lame_on);
}

/// In the window of a routine trim and not trimmed lately: two to five months after calving, and
/// before she is dried off. The windows are the first ones of docs/method/follow-up.md, in weeks.
std::optional<Reason> whose_time_it_is(const Cow& cow, int week) {
  constexpr int lately = 8;
  if (week - cow.last_trim < lately || is_dry(cow, week)) return std::nullopt;
  constexpr int weeks_before_dry = 4;
  if (week >= cow.dry_from - weeks_before_dry) return Reason::dry_off;
  const int in_milk = weeks_in_milk(cow, week);
  const bool not_since_calving = cow.last_trim < cow.calvings.back();
  if (not_since_calving && in_milk >= 8 && in_milk <= 24) return Reason::routine;
  constexpr int long_in_milk = 40;
  if (in_milk >= long_in_milk && week - cow.last_trim >= 26) return Reason::routine;
  return std::nullopt;
}

std::optional<Reason> reason_of(const Cow& cow, VisitKind kind, bool lame_are_brought, int week,
                                const Luck& luck) {
  if (cow.recheck_from <= week && !luck.misses_recheck) return Reason::recheck;
  constexpr int just_trimmed = 3;
  const bool was_just_here = week - cow.last_trim < just_trimmed;
  if (lame_are_brought && luck.is_seen_lame && !was_just_here && walks_lame(cow)) {
    return Reason::lame;
  }
  if (kind != VisitKind::round) return std::nullopt;
  constexpr int fresh_weeks = 4;
  if (lactation_of(cow) > 1 && weeks_in_milk(cow, week) <= fresh_weeks) return Reason::fresh;
  constexpr int weeks_before_dry = 4;
  const bool soon_dry = week >= cow.dry_from - weeks_before_dry && !is_dry(cow, week);
  return soon_dry ? Reason::dry_off : Reason::routine;
}

int rank_of(Reason reason) {
  if (reason == Reason::recheck) return 0;
  return reason == Reason::lame ? 1 : 2;
}

}  // namespace

VisitKind visit_in(const Farm& farm, int week) {
  if (farm.rhythm == Rhythm::part_of_herd) {
    return week % farm.weeks_between_visits == 0 ? VisitKind::day_of_some : VisitKind::none;
  }
  const int of_round = week % farm.weeks_between_visits;
  if (of_round == 0) return VisitKind::round;
  // Four weeks after the round, and twice more before the next one.
  const bool is_between = of_round == 4 || of_round == 11 || of_round == 18;
  return is_between ? VisitKind::day_of_some : VisitKind::none;
}

std::vector<Coming> who_comes(const Herd& herd, const Farm& farm, VisitWeek visit,
                              const Complications& complications, RandomStream& draws) {
  // Where lame cows make no visit of their own they wait for their turn, but for a round.
  const bool lame_are_brought =
      visit.kind == VisitKind::round || complications.has(Complication::extra_visits_for_lame);
  std::vector<Coming> coming;
  for (const Cow& cow : herd.cows()) {
    const Luck luck = luck_drawn(draws);
    auto reason = reason_of(cow, visit.kind, lame_are_brought, visit.week, luck);
    if (!reason && farm.rhythm == Rhythm::part_of_herd) reason = whose_time_it_is(cow, visit.week);
    if (reason) coming.push_back({cow.number, *reason});
  }
  std::stable_sort(coming.begin(), coming.end(), [](const Coming& a, const Coming& b) {
    return rank_of(a.reason) < rank_of(b.reason);
  });
  return coming;
}

}  // namespace evenclaw::demo
