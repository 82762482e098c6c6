// "No, right hind", "no, inside": the foot or claw of what was said was wrong.
#pragma once

#include "core/base/result.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// Moves what was said since the feet were named, or, "LH no, right hind", all that had been called
/// of the foot that was named anew. Fault "call-impossible" when that is the foot that was said,
/// when it could be the name alone that was wrong, when "no, right hind DD" is of a foot that was
/// said to be fine just now, or when what is moved cannot be there; the draft
/// is then as it was. Some foot must be named.
Outcome correct_foot(TurnDraft& draft, const FootCorrected& said);

/// Mends the claw said last since the feet were named, or of all that had been called of the one
/// foot that was named anew. Faults alike.
Outcome correct_claw(TurnDraft& draft, const ClawCorrected& said);

}  // namespace evenclaw
