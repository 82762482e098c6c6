// What cannot be, whoever says it: a lesion and a place, claw or stage that exclude each other.
#pragma once

#include <optional>
#include <string>

#include "core/trade/turn.hpp"

namespace evenclaw {

/// Why this finding cannot be, in words for the person who called it; nothing when it can.
/// What was not called excludes nothing.
std::optional<std::string> why_impossible(const Finding& finding);

/// Whether a finding of this lesion is kept with a claw.
bool is_of_a_claw(Lesion lesion);

/// True for a white line lesion of any kind: a place said with it is one of the white line.
bool is_of_the_white_line(Lesion lesion);

}  // namespace evenclaw
