#include "demo/story.hpp"

#include <algorithm>
#include <cstddef>
#include <set>
#include <utility>

#include "demo/coming.hpp"
#include "demo/parameters.hpp"
#include "demo/streams.hpp"

namespace evenclaw::demo {

namespace {

double week_of_year_of(Day day) {
  const CivilDate date = civil_of(day);
  const Day new_year = *day_of(CivilDate{date.year, 1, 1});
  return (day - new_year) / 7.0;
}

/// Half of the farms plan something by themselves; where changes do not come of bad visits, all do.
int planned_change(const BusinessWanted& wanted, RandomStream& draws) {
  const bool by_themselves_only = !wanted.complications.has(Complication::changes_after_bad_visits);
  const bool plans = draws.chance(by_themselves_only ? 0.7 : 0.25);
  const auto week = static_cast<int>(draws.below(static_cast<std::uint32_t>(wanted.weeks) + 1));
  return plans ? weeks_before_records + week : never_planned;
}

bool has_horn(const CalledTurn& turn) {
  return std::any_of(turn.feet.begin(), turn.feet.end(), [](const CalledFoot& foot) {
    return std::any_of(foot.findings.begin(), foot.findings.end(), [](const CalledFinding& found) {
      return facts_of(found.lesion).group == LesionGroup::horn;
    });
  });
}

bool has_skin(const CalledTurn& turn) {
  return std::any_of(turn.feet.begin(), turn.feet.end(), [](const CalledFoot& foot) {
    return std::any_of(foot.findings.begin(), foot.findings.end(),
                       [](const CalledFinding& found) { return found.lesion == Lesion::dd; });
  });
}

VisitCounts counts_of(const CalledVisit& visit) {
  VisitCounts counts;
  for (const CalledTurn& turn : visit.turns) {
    if (turn.reason == Reason::recheck || turn.reason == Reason::lame) continue;
    ++counts.cows;
    counts.with_horn += has_horn(turn) ? 1 : 0;
    counts.with_skin += has_skin(turn) ? 1 : 0;
  }
  return counts;
}

class StoryTeller {
 public:
  StoryTeller(const BusinessWanted& wanted, int index)
      : wanted_(wanted),
        callers_(callers_of(wanted)),
        farm_(invent_farm(wanted.seed, index, wanted.complications)),
        draws_(stream_for(wanted.seed, DrawnFor::crush, index, 1)),
        plans_(stream_for(wanted.seed, DrawnFor::changes, index, 0)),
        decisions_(wanted.complications, planned_change(wanted, plans_),
                   stream_for(wanted.seed, DrawnFor::changes, index, 1)),
        herd_(wanted.seed, farm_, wanted.complications,
              week_of_year_of(first_day_of_week(wanted, 0))) {}

  HerdStory told(const std::function<void(const Herd&, int week)>& each_week) {
    const int last = weeks_before_records + wanted_.weeks;
    for (int week = 0; week < last; ++week) {
      const Pressure pressure = pressure_of(farm_, herd_.week_of_year(week));
      herd_.pass_week(week, with_changes(pressure, decisions_.changes(), week));
      const VisitKind kind = visit_in(farm_, week);
      if (kind != VisitKind::none) hold_visit(kind, week);
      if (week >= weeks_before_records && each_week) each_week(herd_, week);
    }
    return {std::move(farm_), std::move(visits_), decisions_.changes(), std::move(looks_),
            std::move(herd_)};
  }

 private:
  /// A round of a herd takes days; each of them is a visit.
  void hold_visit(VisitKind kind, int week) {
    constexpr std::size_t cows_a_day = 60;
    const std::vector<Coming> coming =
        who_comes(herd_, farm_, {week, kind}, wanted_.complications, draws_);
    if (coming.empty()) return;
    const bool is_recorded = week >= weeks_before_records;
    const Talk talk = talk_at_gate(week);
    int days = 0;
    for (std::size_t from = 0; from < coming.size(); from += cows_a_day) {
      const auto first = coming.begin() + static_cast<std::ptrdiff_t>(from);
      const auto last =
          coming.begin() + static_cast<std::ptrdiff_t>(std::min(from + cows_a_day, coming.size()));
      CalledVisit visit = day_of_visit({first, last}, week, days);
      if (days == 0) visit.talk = talk;
      ++days;
      if (!is_recorded) continue;
      decisions_.hear(week, counts_of(visit));
      visits_.push_back(std::move(visit));
    }
  }

  CalledVisit day_of_visit(const std::vector<Coming>& coming, int week, int days) {
    const Caller& caller = caller_of(callers_, farm_.callers, week);
    CalledVisit visit;
    visit.week = week;
    visit.day = first_day_of_week(wanted_, week) + farm_.weekday + days;
    visit.caller = caller.name;
    visit.writer = caller.writer;
    visit.todays_feet = farm_.index % 4 == 3 ? hind_feet : four_feet;
    const AtCrush at{caller,
                     wanted_.complications,
                     week,
                     (week - weeks_before_records) / 52.0,
                     visit.todays_feet,
                     static_cast<std::int32_t>(visits_.size())};
    Looks looks;
    for (const Coming& cow : coming) {
      visit.turns.push_back(stand_in_crush(*herd_.find(cow.number), cow, at, draws_, looks));
    }
    if (week < weeks_before_records) return visit;
    looks_.insert(looks_.end(), looks.begin(), looks.end());
    for (const Coming& cow : coming) recorded_.insert(cow.number);
    return visit;
  }

  /// What became of wraps and blocks, and who is gone, since the trimmer was here.
  Talk talk_at_gate(int week) {
    Talk talk;
    for (Cow& cow : herd_.cows()) {
      tell_of_wraps(cow, week, talk);
      tell_of_block(cow, talk);
    }
    for (; told_until_ < herd_.gone().size(); ++told_until_) {
      const int number = herd_.gone()[told_until_].number;
      // Nobody can tell of one who was never recorded.
      const bool is_known = recorded_.count(number) > 0;
      if (is_known && farm_.tells_what_was_done) talk.gone.push_back(number);
    }
    return talk;
  }

  /// "Wraps off" is of all her feet. What nobody tells is seen in the crush.
  void tell_of_wraps(Cow& cow, int week, Talk& talk) {
    const bool carries = std::any_of(cow.feet.begin(), cow.feet.end(), [&](const FootState& foot) {
      return foot.on.wrap_since >= 0 && foot.on.wrap_since < week;
    });
    if (!carries) return;
    const bool was_done = draws_.chance(value_of(Parameter::farmer_takes_wrap_off));
    const bool is_told = draws_.chance(value_of(Parameter::farmer_tells));
    if (!was_done || !is_told || !farm_.tells_what_was_done) return;
    for (FootState& foot : cow.feet) foot.on.wrap_since = -1;
    if (recorded_.count(cow.number) > 0) talk.wraps_off.push_back(cow.number);
  }

  /// Of a cow with several blocks it would have to be asked which.
  void tell_of_block(Cow& cow, Talk& talk) {
    const auto carries = [](const FootState& foot) { return foot.on.block_since >= 0; };
    if (std::count_if(cow.feet.begin(), cow.feet.end(), carries) != 1) return;
    FootState& foot = *std::find_if(cow.feet.begin(), cow.feet.end(), carries);
    if (!foot.on.block_was_lost) return;
    const bool is_told = draws_.chance(value_of(Parameter::farmer_tells));
    if (!is_told || !farm_.tells_what_was_done) return;
    foot.on = OnFoot{.wrap_since = foot.on.wrap_since};
    if (recorded_.count(cow.number) > 0) talk.blocks_came_off.push_back(cow.number);
  }

  BusinessWanted wanted_;
  std::vector<Caller> callers_;
  Farm farm_;
  RandomStream draws_;
  RandomStream plans_;
  FarmDecisions decisions_;
  Herd herd_;
  std::vector<CalledVisit> visits_;
  Looks looks_;
  std::set<int> recorded_;      // numbers of cows that were in the crush while it was recorded
  std::size_t told_until_ = 0;  // of those gone
};

}  // namespace

Day first_day_of_week(const BusinessWanted& wanted, int week) {
  const int weeks = weeks_before_records + wanted.weeks;
  return wanted.last_day + 1 - 7 * (weeks - week);
}

std::vector<Caller> callers_of(const BusinessWanted& wanted) {
  return invent_callers(wanted.seed, wanted.complications, weeks_before_records, wanted.weeks);
}

HerdStory tell_story(const BusinessWanted& wanted, int index,
                     const std::function<void(const Herd&, int week)>& each_week) {
  return StoryTeller(wanted, index).told(each_week);
}

}  // namespace evenclaw::demo
