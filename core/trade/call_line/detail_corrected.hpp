// "No, chronic": the stage, degree or place of a finding is put right by word of mouth.
#pragma once

#include "core/base/result.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// Mends the finding called last on each of the feet named: for a stage the last digital
/// dermatitis, for a degree or place the last finding of which one was called, else the last one.
/// Fault "call-impossible" when no foot is named, nothing was found there, that is what was said
/// already, or it cannot be of that lesion; the draft is then as it was.
Outcome correct_detail(TurnDraft& draft, const DetailCorrected& said);

}  // namespace evenclaw
