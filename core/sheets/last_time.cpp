#include "core/sheets/last_time.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "core/stats/proportion.hpp"

namespace evenclaw {

namespace {

// Our judgement.
constexpr std::size_t least_routine_in_100 = 80;
constexpr std::size_t fewest_cows = 10;
constexpr std::size_t hundred = 100;

bool is_routine(Reason reason) {
  switch (reason) {
    case Reason::routine:
    case Reason::dry_off:
    case Reason::heifer:
    case Reason::fresh:
      return true;
    case Reason::not_called:
    case Reason::lame:
    case Reason::recheck:
    case Reason::other:
      return false;
  }
  return false;
}

/// Nothing that was said of why she came is anything else than routine.
bool came_for_routine(const TurnRow& turn) {
  const bool for_more = turn.came_lame || turn.also.has(Reason::lame) ||
                        turn.also.has(Reason::recheck) || turn.also.has(Reason::other);
  return is_routine(turn.reason) && !for_more;
}

/// Most of her cows came for routine work, and there were enough of them.
bool is_routine_day(VisitId visit, std::span<const TurnRow> turns) {
  std::set<CowId> lifted;
  std::set<CowId> in_crush;
  std::set<CowId> not_routine;
  for (const TurnRow& turn : turns) {
    if (turn.visit != visit || turn.end == TurnEnd::not_done) continue;
    in_crush.insert(turn.cow);
    if (!turn.lifted.empty()) lifted.insert(turn.cow);
    if (!came_for_routine(turn)) not_routine.insert(turn.cow);
  }
  const std::size_t routine = in_crush.size() - not_routine.size();
  return lifted.size() >= fewest_cows &&
         hundred * routine >= least_routine_in_100 * in_crush.size();
}

struct DayCounted {
  std::set<CowId> lifted;
  Proportion found;
};

DayCounted counted(const VisitView& view) {
  DayCounted day;
  for (const CowSeen& cow : view.cows) {
    if (cow.lifted.empty()) continue;
    day.lifted.insert(cow.cow);
    day.found.k += has_something(cow) ? 1 : 0;
    day.found.n += is_known_what_was_found(cow) ? 1 : 0;
  }
  return day;
}

std::size_t in_both(const DayCounted& a, const DayCounted& b) {
  const auto n = std::count_if(a.lifted.begin(), a.lifted.end(),
                               [&](CowId cow) { return b.lifted.count(cow) > 0; });
  return static_cast<std::size_t>(n);
}

Saying what_it_shows(const Interval& difference) {
  if (difference.high < 0.0) return Saying::fewer_than_then;
  return difference.low > 0.0 ? Saying::more_than_then : Saying::no_difference_shown;
}

std::string of_hundred(double share) {
  return std::to_string(std::lround(100.0 * share));
}

}  // namespace

std::optional<VisitId> last_comparable(const VisitRow& visit, std::span<const VisitRow> visits,
                                       std::span<const TurnRow> turns) {
  if (!is_routine_day(visit.visit, turns)) return std::nullopt;
  const auto when = [](const VisitRow& row) { return std::tie(row.day, row.ordinal); };
  const VisitRow* last = nullptr;
  for (const VisitRow& other : visits) {
    const bool is_before = when(other) < when(visit) && visit.day - other.day <= longest_ago_days;
    if (!is_before || other.todays_feet != visit.todays_feet) continue;
    if (last != nullptr && when(other) < when(*last)) continue;
    if (is_routine_day(other.visit, turns)) last = &other;
  }
  if (last == nullptr) return std::nullopt;
  return last->visit;
}

AgainstLastTime against_last_time(const VisitView& view) {
  if (!view.input.before) return {};
  const Wording& wording = view.wording;
  VisitSheetInput input;
  input.visit = view.input.before->visit;
  input.rows = view.input.before->rows;
  const DayCounted then = counted(view_of(input, wording));
  const DayCounted now = counted(view);
  const auto difference = difference_interval(now.found, then.found);
  if (!difference) return {};
  const Saying shown = what_it_shows(*difference);
  // Of fewer the sizes are told, without the sign: the smaller first.
  const bool is_fewer = difference->high < 0.0;
  const std::string low = of_hundred(std::abs(is_fewer ? difference->high : difference->low));
  const std::string high = of_hundred(std::abs(is_fewer ? difference->low : difference->high));
  return {
      wording.say(shown, {{"date", wording.date(input.visit.day, view.input.visit.day)},
                          {"n_then", std::to_string(then.found.k)},
                          {"of_then", std::to_string(then.found.n)},
                          {"n_now", std::to_string(now.found.k)},
                          {"of_now", std::to_string(now.found.n)},
                          {"low", low},
                          {"high", high},
                          {"range", wording.say(Saying::from_to, {{"low", low}, {"high", high}})}}),
      wording.say(Saying::last_time_note, {{"n_both", std::to_string(in_both(now, then))}})};
}

}  // namespace evenclaw
