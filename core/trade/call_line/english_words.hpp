// The parts of the English table, by what they speak of; english() joins them.
#pragma once

#include <span>

#include "core/trade/call_line/language.hpp"

namespace evenclaw {

/// Claws, lesions, places, degrees and stages.
std::span<const Phrase> english_findings();

/// What is done to a foot or for a cow, without the times.
std::span<const Phrase> english_acts();

}  // namespace evenclaw
