// What each lesion is, in a sentence of our own, for people who learn the words.
#pragma once

#include <span>
#include <string_view>

#include "core/trade/lesion.hpp"

namespace evenclaw {

struct LesionDefinition {
  Lesion lesion;
  std::string_view words;
  std::string_view source;  // where the sentence comes from, and how sure that is
};

/// One for every lesion, in the order of Lesion.
std::span<const LesionDefinition> all_lesion_definitions();

}  // namespace evenclaw
