// Lesions that are there or not: heel horn erosion, growths, foul and the like.
#pragma once

#include <span>
#include <string_view>

#include "core/base/random.hpp"
#include "core/trade/place.hpp"
#include "demo/episode.hpp"
#include "demo/foot_state.hpp"

namespace evenclaw::demo {

struct OnOffFacts {
  OnOff which;
  Lesion lesion;
  Place place;
  bool has_claw;         // kept on the outside claw behind, the inside one in front
  bool follows_dirt;     // its rate goes with wet floors, else with the horn of that farm
  double begins;         // a hind foot and week
  double front;          // times the hind foot
  double heals;          // a week, left alone
  double heals_treated;  // a week, once it was found
  std::string_view source;
};

std::span<const OnOffFacts> all_on_off_lesions();
const OnOffFacts& facts_of(OnOff which);

struct OnOffWeek {
  int cow = 0;
  int week = 0;
  Foot foot = Foot::lh;
};

/// With a degree that is drawn; nothing where it is there.
void begin_lesion(FootState& foot, const OnOffFacts& facts, const OnOffWeek& week,
                  RandomStream& draws, Episodes& episodes);

/// What is there of them on one foot heals or stays; episodes are kept.
void pass_week(FootState& foot, const OnOffWeek& week, RandomStream& draws, Episodes& episodes);

}  // namespace evenclaw::demo
