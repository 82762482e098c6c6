// "No, 5d", "no, wrap off 5d": when something comes off or is to happen is put right by mouth.
#pragma once

#include "core/base/result.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// Mends the act with a time that was said last since the feet were named, else the one act of her
/// that can be meant. Fault "call-impossible" when none has a time, several can be meant, or that
/// is what was said; the draft is then as it was.
Outcome correct_time(TurnDraft& draft, const TimeCorrected& said);

}  // namespace evenclaw
