#include "demo/dermatitis.hpp"

#include <cmath>

#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

/// Where a draw takes a foot that has it: into `first` with its chance, else into `second` with
/// its.
struct Way {
  DdStage to = DdStage::m0;
  double chance = 0;
};

DdStage taken(DdStage from, Way first, Way second, double u) {
  if (u < first.chance) return first.to;
  return u < first.chance + second.chance ? second.to : from;
}

DdStage stage_after(DdStage stage, double u) {
  using P = Parameter;
  switch (stage) {
    case DdStage::m1:
      return taken(stage, {DdStage::m2, value_of(P::dd_early_grows)},
                   {DdStage::m4, value_of(P::dd_early_settles)}, u);
    case DdStage::m2:
      return taken(stage, {DdStage::m4, value_of(P::dd_raw_settles)}, {}, u);
    case DdStage::m3:
      return taken(stage, {DdStage::m4, value_of(P::dd_scab_settles)},
                   {DdStage::m0, value_of(P::dd_treated_heals)}, u);
    case DdStage::m4:
      return taken(stage, {DdStage::m4_1, value_of(P::dd_chronic_flares)},
                   {DdStage::m0, value_of(P::dd_chronic_heals)}, u);
    case DdStage::m4_1:
      return taken(stage, {DdStage::m4, value_of(P::dd_flare_settles)},
                   {DdStage::m2, value_of(P::dd_flare_opens)}, u);
    case DdStage::m0:
    case DdStage::not_called:
    case DdStage::raw:
    case DdStage::scab:
    case DdStage::chronic:
      return stage;
  }
  return stage;
}

}  // namespace

double chance_of_infection(double share, bool spreads) {
  // One foot infects as many as the reproduction number says while it has the disease, the end of
  // which is mostly M4 healing; the share of its time that is spent in M4 makes up for the rest.
  constexpr double share_of_time_in_m4 = 0.7;
  const double weeks_ill = 1.0 / (value_of(Parameter::dd_chronic_heals) * share_of_time_in_m4);
  // What a herd of the mean farm comes to.
  constexpr double usual_share = 0.35;
  const double force =
      value_of(Parameter::dd_reproduction) / weeks_ill * (spreads ? share : usual_share);
  return 1.0 - std::exp(-force) + value_of(Parameter::dd_from_outside);
}

void infect(FootState& foot, const SkinWeek& week, RandomStream& draws, Episodes& episodes) {
  if (is_infected(foot.dd)) return;
  foot.dd = draws.chance(value_of(Parameter::dd_first_chronic)) ? DdStage::m4 : DdStage::m1;
  foot.dd_episode = begin_episode(
      episodes, {.cow = week.cow, .foot = week.foot, .lesion = Lesion::dd, .began = week.week});
}

void pass_week(FootState& foot, const SkinWeek& week, RandomStream& draws, Episodes& episodes) {
  if (!is_infected(foot.dd)) return;
  foot.dd = stage_after(foot.dd, draws.uniform());
  if (is_infected(foot.dd)) return;
  end_episode(episodes, foot.dd_episode, week.week, EpisodeEnd::healed);
}

void treat_sore(FootState& foot, bool treatment_resets, RandomStream& draws) {
  if (!treatment_resets || !is_raw(foot.dd)) return;
  if (draws.chance(value_of(Parameter::dd_treated_raw_closes))) foot.dd = DdStage::m3;
}

}  // namespace evenclaw::demo
