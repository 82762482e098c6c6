// What a visit's sheet is made from, gathered from the store.
#pragma once

#include "core/api/ports.hpp"
#include "core/api/visits.hpp"
#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/sheets/visit_sheet.hpp"

namespace evenclaw {

/// What the visit said, with the visit it can be set beside. What came after its day is left out,
/// but its tasks that were closed since are told as such; the version is left to who makes the
/// page. Fault "visit-not-found".
Result<VisitSheetInput> sheet_input(const Ports& ports, const Visit& visit, Day today);

}  // namespace evenclaw
