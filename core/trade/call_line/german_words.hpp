// The parts of the German table, by what they speak of; german() joins them. All of its words are
// from memory, without a source; one that was not sure was left out.
#pragma once

#include <span>

#include "core/trade/call_line/language.hpp"

namespace evenclaw {

/// Claws, lesions, places, degrees and stages.
std::span<const Phrase> german_findings();

/// What is done to a foot or for a cow, without the times.
std::span<const Phrase> german_acts();

}  // namespace evenclaw
