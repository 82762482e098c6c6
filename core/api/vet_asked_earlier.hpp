// For what the vet was asked at earlier visits, where nobody said since that he came.
#pragma once

#include <vector>

#include "core/base/result.hpp"
#include "core/ports/store.hpp"
#include "core/sheets/visit_sheet.hpp"

namespace evenclaw {

/// One for each open task of the vet among `rows.tasks` that another visit than this one made;
/// `rows.cases` tells what is gone since.
Result<std::vector<VetAskedBefore>> vet_asked_earlier(Store& store, const VisitRow& visit,
                                                      const Rows& rows);

}  // namespace evenclaw
