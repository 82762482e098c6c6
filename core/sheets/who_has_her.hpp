// Who has to be told of a cow that left the herd.
#pragma once

#include <string>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// "sold, Mon 23 Nov: tell the buyer": whoever has her now, by the words in which it was told.
/// `left` has a day on which she left.
std::string who_has_her(const CowRow& left, const VisitView& view);

/// The same with the authority, which is told of a dead one too: "died, Mon 23 Nov: tell the
/// authority" (our judgement).
std::string who_has_her_and_authority(const CowRow& left, const VisitView& view);

}  // namespace evenclaw
