// Why she came, when one of the reasons said was wrong.
#pragma once

#include <optional>

#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/turn_clause.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// Nothing may speak against it. "No, lame LH": not on the legs that were said, and not sound.
void add_reason(Turn& turn, const ReasonSaid& said);

/// Why a reason cannot be taken back: she was not said to come for it.
std::optional<Refusal> why_not_taken_back(const Turn& turn, const ReasonTakenBack& said);

/// The turn without that reason; the next one said becomes the first. Of several legs she is lame
/// on only the ones said are taken back. Nothing may speak against it.
void take_back_reason(Turn& turn, const ReasonTakenBack& said);

}  // namespace evenclaw
