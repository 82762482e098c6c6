// Wraps and blocks said to come off on a day that was asked about, and nobody answered.
#pragma once

#include <optional>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// The task as the sheet tells it: by the day that was said, or by the last good day of its rule
/// where that is sooner (our judgement), with what was said and that nobody answered. Nothing where
/// nobody asked, or somebody answered, be it only to go ahead. `cow` is who was seen at the visit.
std::optional<TaskRow> day_in_doubt(const VisitSheetInput& input, const CowSeen& cow,
                                    const TaskRow& task, const Wording& wording);

}  // namespace evenclaw
