// Medicines told in free words at earlier visits, read from the store for a sheet.
#pragma once

#include "core/api/ports.hpp"
#include "core/base/result.hpp"
#include "core/sheets/visit_sheet.hpp"

namespace evenclaw {

/// Fills the names of the herd's list and what was told in words at visits before this one, up to
/// longest_asked_days ago, of cows of whom no withdrawal was told since. `input.visit` is known.
Outcome add_medicine_told(VisitSheetInput& input, Store& store);

}  // namespace evenclaw
