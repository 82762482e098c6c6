// Stops for the vet of earlier visits that were not settled and nobody has looked at since.
#pragma once

#include <vector>

#include "core/sheets/visit_sheet.hpp"

namespace evenclaw {

/// A Stop that was answered with "go ahead", and whose sign lasts: what was seen or found is no
/// less there for it. Blood and a fall are over by the next visit, one way or the other; where only
/// a check tells of it, who goes ahead decides that no vet is needed (our judgement).
bool lasts_though_gone_past(const WarningShown& shown);

/// Those of `unsettled` that still call for the vet on the day of the visit, by cow and day. A
/// Stop is over once something, or that there is nothing, was found on its foot (on any foot, when
/// it was of the whole cow), for then that speaks in its stead: that it was lifted is not enough;
/// and once the vet was asked for her or came, for then a task tells of it (our judgement). A sign
/// of a disease the law wants reported is over only once he came: looked at or asked for it stays,
/// settled alone.
/// `turns`, `feet` and `vet_tasks`: of the herd up to that day, the tasks open or closed.
std::vector<EarlierStop> stops_left_open(const VisitRow& visit,
                                         const std::vector<EarlierStop>& unsettled,
                                         const std::vector<TurnRow>& turns,
                                         const std::vector<FootRow>& feet,
                                         const std::vector<TaskRow>& vet_tasks);

/// Puts beside each Stop what was found in its turn on its foot; what was only seen tells it
/// itself.
void tell_found_then(std::vector<EarlierStop>& stops, const std::vector<FindingRow>& findings,
                     const Wording& wording);

}  // namespace evenclaw
