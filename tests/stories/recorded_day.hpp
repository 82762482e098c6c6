// What a visit left on record, one line a turn, in the codes of the rows.
#pragma once

#include <string>
#include <vector>

#include "core/base/id.hpp"
#include "core/ports/store.hpp"

namespace evenclaw::test {

/// "412 recheck | RH DD behind scab; spray | fine LH | cow: vet", in the order the turns were
/// recorded: what was found and done on each foot, the feet with nothing found and nothing done,
/// those that were not lifted, what was done to all of her, the note, how an unfinished turn ended.
std::vector<std::string> recorded_day(Store& store, HerdId herd, VisitId visit);

}  // namespace evenclaw::test
