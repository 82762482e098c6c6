// Who called and who wrote at a visit, also when that changed in the middle of it.
#pragma once

#include <string>

#include "core/sheets/visit_sheet.hpp"

namespace evenclaw {

/// "Anna", or of several with the cows each judged: "Anna (23 cows) and Ben (4 cows)", whoever
/// began the visit first, then who judged most. A cow called by two counts for both. "" when nobody
/// was named.
std::string callers_of(const VisitSheetInput& input, const Wording& wording);

/// The same of who wrote.
std::string writers_of(const VisitSheetInput& input, const Wording& wording);

/// Who called this turn, when it was somebody else than the first of callers_of(); else "".
std::string other_caller(const VisitSheetInput& input, const TurnRow& turn, const Wording& wording);

}  // namespace evenclaw
