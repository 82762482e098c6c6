// What the entry of a turn holds.
#pragma once

#include "core/api/recording/in_crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/id.hpp"
#include "core/log/bodies.hpp"

namespace evenclaw {

/// Her turn as it stands, the call before it included that it goes on with. The tasks of a
/// corrected turn stay the ones they were, whoever corrects it; `superseded` is null when it
/// corrects none.
TurnRecorded body_of(const VisitBook& book, const InCrush& cow, EntryId entry,
                     const RecordedTurn* superseded);

}  // namespace evenclaw
