#include "demo/herd.hpp"

#include <algorithm>
#include <cmath>

#include "demo/dermatitis.hpp"
#include "demo/horn.hpp"
#include "demo/on_off_lesions.hpp"
#include "demo/parameters.hpp"
#include "demo/streams.hpp"

namespace evenclaw::demo {

namespace {

constexpr double weeks_a_year = 52.18;

/// The middle of a calving season, and how far from it heifers calve.
double season_week(Season season) {
  return season == Season::spring ? 10.0 : 38.0;
}

constexpr double season_reach = 5.0;

/// Weeks from `week_of_year` to the nearest middle of the season, before or after.
double from_season(double week_of_year, Season season) {
  return std::remainder(week_of_year - season_week(season), weeks_a_year);
}

void end_all_episodes(Cow& cow, int week, Episodes& episodes) {
  const auto end = [&](EpisodeIndex& episode) {
    if (episode >= 0) end_episode(episodes, episode, week, EpisodeEnd::cow_left);
  };
  for (FootState& foot : cow.feet) {
    end(foot.dd_episode);
    for (ClawState& claw : foot.claws) {
      for (HornState& horn : claw.horn) end(horn.episode);
    }
    for (OnOffState& other : foot.others) end(other.episode);
  }
}

bool is_bad_horn(const HornState& horn) {
  return horn.stage == HornStage::late && horn.degree == Degree::bad;
}

std::size_t lactation_class(const Cow& cow) {
  return static_cast<std::size_t>(std::min(lactation_of(cow), 3) - 1);
}

}  // namespace

Herd::Herd(std::uint64_t seed, const Farm& farm, const Complications& complications,
           double week_of_year)
    : seed_(seed),
      farm_(farm),
      complications_(complications),
      week_of_year_(week_of_year),
      draws_(stream_for(seed, DrawnFor::farm, farm.index, 2)) {
  settle_first_cows();
}

double Herd::week_of_year(int week) const {
  return std::fmod(week_of_year_ + week, weeks_a_year);
}

int Herd::entry_week_drawn(RandomStream& draws) const {
  // Nobody is older than that at the beginning.
  constexpr double years_back = 8;
  const double week = -years_back * 52.0 * draws.uniform();
  if (farm_.calves == Season::all_year) return static_cast<int>(week) - 1;
  const double spread = season_reach * (2.0 * draws.uniform() - 1.0);
  const double moved = week - from_season(week_of_year_ + week, farm_.calves) + spread;
  return std::min(static_cast<int>(std::floor(moved)), -1);
}

/// Cows that came in at any time and are still there: so the lactations are those of a herd that
/// has been going for years.
void Herd::settle_first_cows() {
  while (static_cast<int>(cows_.size()) < farm_.cows) {
    Cow cow = first_calved(seed_, farm_, next_number_++, entry_week_drawn(draws_));
    while (cow.next_calving <= 0 && cow.leaves > 0) calve(cow, farm_, cow.next_calving);
    if (cow.leaves > 0) cows_.push_back(std::move(cow));
  }
}

bool Herd::is_time_to_calve(int week) const {
  if (farm_.calves == Season::all_year) return true;
  return std::abs(from_season(week_of_year(week), farm_.calves)) <= season_reach;
}

Cow* Herd::find(int number) {
  const auto at = std::lower_bound(cows_.begin(), cows_.end(), number,
                                   [](const Cow& cow, int wanted) { return cow.number < wanted; });
  return at == cows_.end() || at->number != number ? nullptr : &*at;
}

void Herd::let_leave(int week) {
  for (Cow& cow : cows_) {
    const double lame = value_of(Parameter::leaves_lame) * bad_lesions(cow);
    if (lame > 0 && cow.leaves > week && cow.life.chance(lame)) {
      cow.leaves = week;
      cow.left = LeftBecause::lame;
    }
    if (cow.leaves > week) continue;
    end_all_episodes(cow, week, episodes_);
    gone_.push_back({cow.number, cow.born, cow.calvings, week, cow.left});
  }
  std::erase_if(cows_, [&](const Cow& cow) { return cow.leaves <= week; });
}

void Herd::take_in_heifers(int week) {
  if (!is_time_to_calve(week)) return;
  constexpr double a_week = 0.3;
  const int missing = farm_.cows - static_cast<int>(cows_.size());
  for (int place = 0; place < missing; ++place) {
    if (!draws_.chance(a_week)) continue;
    cows_.push_back(first_calved(seed_, farm_, next_number_++, week));
    bring_infection(cows_.back(), week);
  }
}

void Herd::bring_infection(Cow& heifer, int week) {
  const double chance = value_of(Parameter::dd_in_heifers) * share_infected();
  for (const Foot foot : {Foot::lh, Foot::rh}) {
    if (!heifer.steps.chance(chance)) continue;
    infect(heifer.feet[index_of(foot)], {heifer.number, week, foot}, heifer.steps, episodes_);
  }
}

double Herd::share_infected() const {
  int infected = 0;
  for (const Cow& cow : cows_) {
    infected += is_infected(cow.feet[index_of(Foot::lh)].dd) ? 1 : 0;
    infected += is_infected(cow.feet[index_of(Foot::rh)].dd) ? 1 : 0;
  }
  return cows_.empty() ? 0.0 : infected / (2.0 * static_cast<double>(cows_.size()));
}

/// What is there on that foot goes on.
void Herd::pass_week_of(Cow& cow, Foot foot, int week) {
  FootState& state = cow.feet[index_of(foot)];
  OnFoot& on = state.on;
  const bool is_blocked = on.block_since >= 0 && !on.block_was_lost;
  for (std::size_t claw = 0; claw < state.claws.size(); ++claw) {
    const bool is_unloaded = is_blocked && on.block_claw == partner(claw_of(claw));
    for (const HornSpot spot : {HornSpot::sole, HornSpot::white_line}) {
      demo::pass_week(state.claws[claw].horn[static_cast<std::size_t>(spot)],
                      HornWeek{cow.number, week, foot, claw_of(claw), spot, is_unloaded}, cow.steps,
                      episodes_);
    }
  }
  demo::pass_week(state, SkinWeek{cow.number, week, foot}, cow.steps, episodes_);
  demo::pass_week(state, OnOffWeek{cow.number, week, foot}, cow.steps, episodes_);
  if (is_blocked && cow.steps.chance(value_of(Parameter::block_comes_off))) {
    on.block_was_lost = true;
  }
}

void Herd::pass_week_of(Cow& cow, const HerdWeek& herd) {
  if (herd.week >= cow.next_calving) calve(cow, farm_, herd.week);
  for (const Foot foot : all_feet) pass_week_of(cow, foot, herd.week);
  perhaps_begin(cow, herd, episodes_);
  ++lived_.by_lactation[lactation_class(cow)];
}

void Herd::pass_week(int week, const Pressure& pressure) {
  let_leave(week);
  take_in_heifers(week);
  const bool spreads = complications_.has(Complication::dd_spreads);
  const HerdWeek herd{week, pressure, chance_of_infection(share_infected(), spreads)};
  for (Cow& cow : cows_) pass_week_of(cow, herd);
}

int bad_lesions(const Cow& cow) {
  int bad = 0;
  for (const FootState& foot : cow.feet) {
    for (const ClawState& claw : foot.claws) {
      bad += is_bad_horn(claw.horn[0]) ? 1 : 0;
      bad += is_bad_horn(claw.horn[1]) ? 1 : 0;
    }
  }
  return bad;
}

bool is_lame_on(const FootState& foot) {
  const bool horn = std::any_of(foot.claws.begin(), foot.claws.end(), [](const ClawState& claw) {
    return std::any_of(claw.horn.begin(), claw.horn.end(), [](const HornState& state) {
      return state.stage == HornStage::late && state.degree != Degree::slight;
    });
  });
  const auto& foul = foot.others[static_cast<std::size_t>(OnOff::foul)];
  return horn || foul.is_there || foot.dd == DdStage::m2;
}

}  // namespace evenclaw::demo
