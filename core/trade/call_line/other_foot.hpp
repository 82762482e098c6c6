// "Her other back", "both wrapped": which feet these are.
#pragma once

#include <optional>

#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// Of the two feet the one that was not spoken of yet; when both were, the one that is not spoken
/// of now. Nothing when that leaves none or both.
std::optional<Foot> other_foot_named(const TurnDraft& draft, const OtherFootNamed& said);

/// The two feet that are spoken of; else the only two of which anything was said. Nothing when they
/// are not two, and where the two claws of the foot spoken of may be meant.
std::optional<FootSet> both_feet_named(const TurnDraft& draft, const BothFeetNamed& said);

/// The feet a clause of these means; nothing for any other clause, and where that is not clear.
std::optional<FootSet> feet_meant(const TurnDraft& draft, const TurnClause& clause);

/// Names the feet such a clause means. That they were named as "both" is remembered with what is
/// said since: what was found on them is not called anew by that.
Outcome name_feet_meant(TurnDraft& draft, FootSet feet, const TurnClause& clause);

/// Why a clause that means no feet is refused.
Refusal unclear_feet(const OtherFootNamed& said);
Refusal unclear_feet(const BothFeetNamed& said);

/// "No, only RH" of two feet of which the same was called one by one: it is taken off the other
/// ones. False when the clause does not say that, or nothing there is the same.
bool take_off_the_others(TurnDraft& draft, const FootCorrected& said);

/// "No, RH" of what was called of that foot: it mends nothing. What was called of another one is
/// taken back there.
Refusal foot_is_what_was_said(const Turn& turn, Foot foot);

}  // namespace evenclaw
