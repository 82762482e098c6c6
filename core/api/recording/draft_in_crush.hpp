// The half-entered turn, to the store and back.
#pragma once

#include <string>

#include "core/api/recording/crush.hpp"
#include "core/api/recording/in_crush.hpp"
#include "core/api/recording/kept_draft.hpp"
#include "core/api/recording/turns_let_out.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// What the store keeps of her in the crush and of what the last line left to the next; "" when
/// nobody stands there and nobody was let out.
std::string draft_text(const VisitBook& book, const Crush& crush, const TurnsLetOut& turns);

/// She stands there as when the recording broke off. Her lines are read again; one that another
/// version of the program took stays and is asked about.
Result<InCrush> taken_up(const VisitBook& book, const KeptDraft& kept);

/// She of a recorded turn as she came, with her past before it and what was asked of her in it;
/// nothing is called of her yet.
Result<InCrush> called_anew(const VisitBook& book, const RecordedTurn& turn);

/// She who was let out with that turn, as she stood there; nothing where her words read again make
/// another turn of it, as they do when it went on with one before.
Result<std::optional<InCrush>> stood_there(const VisitBook& book, const RecordedTurn& turn);

}  // namespace evenclaw
