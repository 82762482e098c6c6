// Signs for the vet of earlier visits that raised no Stop, and of which he does not know.
#pragma once

#include <string_view>
#include <vector>

#include "core/sheets/visit_sheet.hpp"

namespace evenclaw {

/// The rule of words that name the vet where he was not called.
inline constexpr std::string_view vet_named_rule = "vet-named";

/// What those rows of earlier visits tell of signs for the vet: called, found, that both claws of a
/// foot hurt, or told as the reason why she was not done. Of rank note is what only words tell that
/// nobody has read as a call: a refused line, a note, why she came. Not blood and a fall, which are
/// over by the next visit (our judgement).
std::vector<EarlierStop> signs_seen(const Rows& rows, const Wording& wording);

/// Those of `seen` that the vet was not told of at their visit, and signs of a disease the law
/// wants reported also where he was asked for, with whether they may be
/// notifiable; without those for which one of `stops` stands. `then` is that visit as it was.
std::vector<EarlierStop> signs_not_settled(const VisitSheetInput& then,
                                           const std::vector<EarlierStop>& seen,
                                           const std::vector<EarlierStop>& stops);

}  // namespace evenclaw
