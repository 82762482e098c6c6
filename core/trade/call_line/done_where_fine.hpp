// A foot that has nothing found on it is not treated unless it is named for that.
#pragma once

#include <optional>

#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// Why that cannot go to a foot of the draft just because it was named last: nothing was found
/// there, so another foot may be meant. A vet, a plan or a look is asked about only where something
/// was found on another foot and nothing was done on this one: that of a lame foot with nothing to
/// see, or of one that carries a block, is no slip.
std::optional<Refusal> why_not_done(const TurnDraft& draft, const FootCall& call,
                                    const Action& said);

/// Something that is done to a foot, or put on it, because something is wrong there. What becomes
/// of a block or wrap of last time is none of it, nor is trimming.
bool treats(ActionKind kind);

/// What is planned because something is wrong: of the foot, or of her.
bool plans(ActionKind kind);

}  // namespace evenclaw
