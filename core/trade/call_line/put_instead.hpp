// What is right is said in the place of what was called: "no, outside sole ulcer" of one that was
// called inside, "no, outside bruise, inside sole ulcer" of two whose claws were mixed up.
#pragma once

#include <optional>

#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// Puts what is said instead on the one foot that is spoken of. Of several each takes the place of
/// what has its lesion, else of what lay on its claw; where that cannot be known it is refused with
/// how to say it, and the draft is as it was. Nothing where the clause is of another kind, or one
/// lesion is said that was not called once on that foot.
std::optional<Outcome> put_instead(TurnDraft& draft, const TurnClause& clause);

}  // namespace evenclaw
