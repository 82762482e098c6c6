// What calls for the vet though no task says so: Stops that nobody answered, and signs seen.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// The checks that stop for what a vet has to know, by their slugs.
std::span<const std::string_view> vet_stop_rules();

/// A Stop by one of these checks.
bool calls_for_vet(const Warning& warning);

/// Those Stops of hers that nobody answered. None once she left the herd, or
/// once the vet came for what was found at this visit.
std::vector<const Warning*> open_vet_stops(const VisitView& view, const CowSeen& cow);

/// Those of earlier visits that are still open. None once she left the herd.
std::vector<const EarlierStop*> open_earlier_stops(const VisitView& view, CowId cow);

/// Seen of a foot or of her, and for a vet to know: pus, bone, blood, a fall, sores, fever.
bool is_vet_sign(ActionKind kind);

/// The signs of that foot, or of the whole cow when no foot is given, each once.
std::vector<std::string> signs_of(const VisitView& view, const CowSeen& cow,
                                  std::optional<Foot> foot);

/// Acts that the law keeps for the vet, as called on that foot: "claw amputated, outside claw"; of
/// the whole cow when none is given. Whoever did them: the vet has to know.
std::vector<std::string> reserved_acts_on(const VisitView& view, const CowSeen& cow,
                                          std::optional<Foot> foot);

/// Toes of the foot that a check called far too short, as measured: "outside claw, toe length 68
/// mm".
std::vector<std::string> short_toes_on(const VisitView& view, const CowSeen& cow, Foot foot);

}  // namespace evenclaw
