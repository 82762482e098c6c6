// What calls for the vet though no task says so: Stops that nobody answered, and signs seen.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// The checks that stop and ask for the vet, by their slugs.
std::span<const std::string_view> vet_stop_rules();

/// The Stops of hers that ask for the vet and that nobody answered. None once she left the herd, or
/// once the vet came for what was found at this visit.
std::vector<const Warning*> open_vet_stops(const VisitView& view, const CowSeen& cow);

/// Seen of a foot or of her, and for a vet to know: pus, bone, blood, a fall, sores, fever.
bool is_vet_sign(ActionKind kind);

/// The signs of that foot, or of the whole cow when no foot is given, each once.
std::vector<std::string> signs_of(const VisitView& view, const CowSeen& cow,
                                  std::optional<Foot> foot);

}  // namespace evenclaw
