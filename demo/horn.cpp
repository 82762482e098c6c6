#include "demo/horn.hpp"

#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

double chance_to_heal(const HornState& state, const HornWeek& week) {
  if (state.stage == HornStage::early) {
    return value_of(week.spot == HornSpot::sole ? Parameter::bruise_heals
                                                : Parameter::fissure_heals);
  }
  if (week.is_unloaded) return value_of(Parameter::late_heals_blocked);
  return value_of(state.was_trimmed ? Parameter::late_heals_trimmed : Parameter::late_heals_alone);
}

void turn_into_late_form(HornState& state, const HornWeek& week, Episodes& episodes) {
  state.stage = HornStage::late;
  state.was_trimmed = false;
  Episode& episode = episodes[static_cast<std::size_t>(state.episode)];
  episode.lesion = lesion_of(week.spot, HornStage::late);
  episode.worse_since = week.week;
}

void heal(HornState& state, const HornWeek& week, Episodes& episodes) {
  end_episode(episodes, state.episode, week.week, EpisodeEnd::healed);
  state.stage = HornStage::sound;
  state.degree = Degree::not_called;
  state.was_trimmed = false;
  state.was_there_before = true;
}

}  // namespace

double rate_of_claw(Foot foot, Claw claw) {
  const double inside = value_of(Parameter::inside_hind);
  if (is_hind(foot)) return claw == Claw::outside ? 1.0 : inside;
  const double front = value_of(Parameter::front_horn);
  return claw == Claw::inside ? front : front * inside;
}

void begin_lesion(HornState& state, const HornWeek& week, Episodes& episodes) {
  state.stage = HornStage::early;
  state.degree = Degree::slight;
  state.episode = begin_episode(episodes, {.cow = week.cow,
                                           .foot = week.foot,
                                           .claw = week.claw,
                                           .lesion = lesion_of(week.spot, HornStage::early),
                                           .began = week.week,
                                           .is_relapse = state.was_there_before});
}

void pass_week(HornState& state, const HornWeek& week, RandomStream& draws, Episodes& episodes) {
  if (state.stage == HornStage::sound) return;
  const double u = draws.uniform();
  // One draw decides: heal, else turn, else get worse.
  double passed = chance_to_heal(state, week);
  if (u < passed) return heal(state, week, episodes);
  if (state.stage == HornStage::early) {
    passed += value_of(week.spot == HornSpot::sole ? Parameter::bruise_becomes_ulcer
                                                   : Parameter::fissure_becomes_abscess);
    if (u < passed) return turn_into_late_form(state, week, episodes);
  }
  passed += week.is_unloaded ? 0.0 : value_of(Parameter::horn_worsens);
  if (u < passed) state.degree = worse(state.degree);
}

void trim_lesion(HornState& state, bool treatment_resets) {
  if (!treatment_resets || state.stage == HornStage::sound) return;
  state.was_trimmed = true;
  if (state.degree == Degree::bad) state.degree = Degree::plain;
}

}  // namespace evenclaw::demo
