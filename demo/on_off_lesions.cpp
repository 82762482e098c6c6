#include "demo/on_off_lesions.hpp"

#include <cstddef>

#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

// How often each begins is fitted to the figures named; how it heals is invented.
constexpr OnOffFacts table[] = {
    {OnOff::heel_erosion, Lesion::hhe, Place::heel, false, true, 0.00187, 0.15, 0.03, 0.08,
     "1 to 2 % of cows (Solano 2016) to 41 % (Manske 2002, from memory)"},
    {OnOff::skin_between, Lesion::id, Place::between, false, true, 0.0008, 0.3, 0.08, 0.15,
     "1 to 2 % of cows (Solano 2016) to 27 % (Manske 2002, all dermatitis, from memory)"},
    {OnOff::growth, Lesion::ih, Place::between, false, true, 0.00014, 0.15, 0.004, 0.006,
     "1 to 2 % of cows (Solano 2016)"},
    {OnOff::foul, Lesion::ip, Place::between, false, true, 0.0012, 0.5, 0.25, 0.7,
     "0.2 to 5 % of cows (Finnish survey 2017)"},
    {OnOff::double_sole, Lesion::ds, Place::sole_middle, true, false, 0.00058, 0.15, 0.08, 0.2,
     "1 to 2 % of cows (Solano 2016)"},
    {OnOff::toe_ulcer, Lesion::tu, Place::toe, true, false, 0.00030, 0.3, 0.03, 0.06,
     "1 to 2 % of cows (Solano 2016)"}};

static_assert(std::size(table) == static_cast<std::size_t>(on_off_lesions));

Claw claw_of(const OnOffFacts& facts, Foot foot) {
  if (!facts.has_claw) return Claw::none;
  return is_hind(foot) ? Claw::outside : Claw::inside;
}

Degree degree_drawn(double u) {
  if (u < 0.5) return Degree::slight;
  return u < 0.85 ? Degree::plain : Degree::bad;
}

}  // namespace

std::span<const OnOffFacts> all_on_off_lesions() {
  return table;
}

const OnOffFacts& facts_of(OnOff which) {
  return table[static_cast<std::size_t>(which)];
}

void begin_lesion(FootState& foot, const OnOffFacts& facts, const OnOffWeek& week,
                  RandomStream& draws, Episodes& episodes) {
  OnOffState& state = foot.others[static_cast<std::size_t>(facts.which)];
  if (state.is_there) return;
  state.is_there = true;
  state.degree = degree_drawn(draws.uniform());
  state.episode = begin_episode(episodes, {.cow = week.cow,
                                           .foot = week.foot,
                                           .claw = claw_of(facts, week.foot),
                                           .lesion = facts.lesion,
                                           .began = week.week});
}

void pass_week(FootState& foot, const OnOffWeek& week, RandomStream& draws, Episodes& episodes) {
  for (const OnOffFacts& facts : table) {
    OnOffState& state = foot.others[static_cast<std::size_t>(facts.which)];
    if (!state.is_there) continue;
    if (!draws.chance(state.was_treated ? facts.heals_treated : facts.heals)) continue;
    end_episode(episodes, state.episode, week.week, EpisodeEnd::healed);
    state = {};
  }
}

}  // namespace evenclaw::demo
