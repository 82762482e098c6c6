// The words in which it is told how a cow left the herd, in the languages of lists and of speech.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/trade/life.hpp"

namespace evenclaw {

struct LeavingWord {
  std::string_view words;  // folded
  LeavingWay way;
};

/// English, German, Dutch and French, from memory. Who is culled goes for slaughter: common
/// practice, no source.
std::span<const LeavingWord> leaving_words();

/// The way these words stand for as a whole, folded; nothing for any other.
std::optional<LeavingWay> leaving_way(std::string_view folded);

}  // namespace evenclaw
