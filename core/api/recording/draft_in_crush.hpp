// The half-entered turn, to the store and back.
#pragma once

#include <string>

#include "core/api/recording/crush.hpp"
#include "core/api/recording/in_crush.hpp"
#include "core/api/recording/kept_draft.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// What the store keeps of her in the crush; "" when nobody stands there.
std::string draft_text(const VisitBook& book, const Crush& crush);

/// She stands there as when the recording broke off. Her lines are read again; one that another
/// version of the program took stays and is asked about.
Result<InCrush> taken_up(const VisitBook& book, const KeptDraft& kept);

}  // namespace evenclaw
