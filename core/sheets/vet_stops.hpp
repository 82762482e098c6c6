// What calls for the vet by a check alone: warnings that nobody answered, toes far too short, acts
// that are his.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// A warning, more than a note unless a claw was blocked again, by a check of the table of signs
/// for the vet.
bool calls_for_vet(const Warning& warning);

/// Those warnings of hers that nobody answered. None once she left the herd, or once the vet came
/// for what was found at this visit.
std::vector<const Warning*> open_vet_stops(const VisitView& view, const CowSeen& cow);

/// Those of earlier visits that are still open; one that is settled by itself only while it is
/// reportable beside another. Once she left the herd only what is reportable:
/// whoever has her now and the authority have to know (our judgement).
std::vector<const EarlierStop*> open_earlier_stops(const VisitView& view, CowId cow);

/// Acts that the law keeps for the vet, as called on that foot: "claw amputated, outside claw"; of
/// the whole cow when none is given. Whoever did them: the vet has to know.
std::vector<std::string> reserved_acts_on(const VisitView& view, const CowSeen& cow,
                                          std::optional<Foot> foot);

/// Toes of the foot that a check called far too short, as measured: "outside claw, toe length 68
/// mm".
std::vector<std::string> short_toes_on(const VisitView& view, const CowSeen& cow, Foot foot);

}  // namespace evenclaw
