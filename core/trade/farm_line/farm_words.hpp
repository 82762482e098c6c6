// The words of lines about the farm: mobility scores, what a walk measures, changes. One table per
// language; a word of the call line that means the same in both (a leg, a month) is not repeated.
#pragma once

#include <span>
#include <string_view>

#include "core/trade/call_line/language.hpp"

namespace evenclaw {

enum class FarmWord {
  no,          // what follows holds instead of what was said before
  scrap,       // what follows was not so
  scale,       // "scale 0 to 3"
  to,          // between the lowest and the highest of a scale
  at,          // "40 at 0"
  not_scored,  // there, and not scored
  present,     // "132 present"
  watched,     // "watched at the parlour exit"
  group,       // "group high yielders": which animals
  lame,        // before or behind the legs, and of no other meaning here
  // a farm walk
  place,          // "place old shed": what follows was measured there
  topic,          // FarmTopic
  dimension,      // FarmDimension
  unit,           // FarmUnit
  by,             // "3 m by 50": length by width
  of,             // "3 of 10"
  looked_at,      // how many were
  not_looked_at,  // nobody did
  every,          // "every 2 h"
  a_day,
  a_week,
  times_said,  // "twice": how often
  through,     // cows through a footbath since it was filled
  grip_is,     // a floor by how it holds: "slippery"
  product,     // of a footbath
  // a change
  driver,  // ChangeDriver, where it is no topic of a walk
  why,     // ChangeWhy
  because,
  decided,
  finished,
  going_on,
  whole_herd,
  only,  // "only the dry cows"
  today,
  yesterday
};

/// What a walk measures, as it is named in front of its measures.
enum class FarmTopic { cow, cubicle, passage, turn, floor, grip, scraping, standing, footbath };

enum class FarmDimension { width, length, depth, height };

enum class FarmUnit { m, cm, mm, kg, percent, hours, minutes, times };

struct FarmPhrase {
  std::string_view words;  // lower case, single spaces
  FarmWord word;
  int value = 0;

  template <class E>
  [[nodiscard]] E as() const {
    return static_cast<E>(value);
  }
};

/// The phrases of that language first, then the English ones it has no use of its own for.
std::span<const FarmPhrase> farm_phrases(const Language& language);

/// The first phrase of that meaning, as it is said; "" when there is none.
std::string_view say(FarmWord word, const Language& language, int value = 0);

std::span<const FarmPhrase> english_farm_phrases();
std::span<const FarmPhrase> german_farm_phrases();

}  // namespace evenclaw
