#include "demo/change.hpp"

#include <numeric>

#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

/// Fewer cows than that tell a farmer nothing, nor do fewer visits. Invented.
constexpr int cows_that_tell = 8;
constexpr std::size_t visits_that_tell = 3;
constexpr std::size_t changes_a_farm = 2;
constexpr int weeks_between_changes = 40;

double effect_of(ChangeKind kind) {
  switch (kind) {
    case ChangeKind::rubber_at_the_turns:
      return value_of(Parameter::effect_rubber);
    case ChangeKind::regular_bath:
      return value_of(Parameter::effect_bath);
    case ChangeKind::more_scraping:
      return value_of(Parameter::effect_scraping);
  }
  return 1.0;
}

}  // namespace

Pressure with_changes(Pressure pressure, const std::vector<Change>& changes, int week) {
  for (const Change& change : changes) {
    if (week < change.done) continue;
    switch (change.kind) {
      case ChangeKind::rubber_at_the_turns:
        pressure.sole *= change.effect;
        pressure.white_line *= change.effect;
        break;
      case ChangeKind::regular_bath:
        pressure.skin *= change.effect;
        break;
      case ChangeKind::more_scraping:
        pressure.skin *= change.effect;
        pressure.dirt *= change.effect;
        break;
    }
  }
  return pressure;
}

double FarmDecisions::mean_share(const std::vector<double>& shares) {
  return std::accumulate(shares.begin(), shares.end(), 0.0) / static_cast<double>(shares.size());
}

void FarmDecisions::decide(int week, ChangeKind kind, ChangeReason reason) {
  constexpr int soonest = 3;
  const int takes = soonest + static_cast<int>(draws_.below(8));
  changes_.push_back({kind, reason, week, week + takes, effect_of(kind)});
}

void FarmDecisions::hear(int week, const VisitCounts& counts) {
  if (counts.cows < cows_that_tell) return;
  const double horn = static_cast<double>(counts.with_horn) / counts.cows;
  const double skin = static_cast<double>(counts.with_skin) / counts.cows;
  const bool may_decide =
      changes_.size() < changes_a_farm &&
      (changes_.empty() || week - changes_.back().decided >= weeks_between_changes);
  if (may_decide && week >= planned_in_) {
    planned_in_ = never_planned;
    const std::uint32_t which = draws_.below(3);
    decide(week, static_cast<ChangeKind>(which), ChangeReason::planned);
  } else if (may_decide && horn_shares_.size() >= visits_that_tell &&
             complications_.has(Complication::changes_after_bad_visits)) {
    const double bad = value_of(Parameter::bad_visit);
    const bool is_bad_horn = horn > bad * mean_share(horn_shares_);
    const bool is_bad_skin = skin > bad * mean_share(skin_shares_);
    const bool acts = draws_.chance(value_of(Parameter::change_after_bad_visit));
    const bool believes_in_scraping = draws_.chance(0.4);
    if (acts && is_bad_skin) {
      decide(week, believes_in_scraping ? ChangeKind::more_scraping : ChangeKind::regular_bath,
             ChangeReason::after_bad_visit);
    } else if (acts && is_bad_horn) {
      decide(week,
             believes_in_scraping ? ChangeKind::more_scraping : ChangeKind::rubber_at_the_turns,
             ChangeReason::after_bad_visit);
    }
  }
  horn_shares_.push_back(horn);
  skin_shares_.push_back(skin);
}

}  // namespace evenclaw::demo
