// The box for the vet: which cow, which leg, what and why, by when, and what to leave alone.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// Each cow once: whose vet was asked for, and whose Stop for the vet nobody answered. One sentence
/// instead of a box when no vet is asked for.
std::vector<Block> vet_box(const VisitView& view);

/// What not to do on that foot until the vet has seen it, in the words of the checks made beside
/// the crush; of the whole cow when no foot is given. Nothing that was not called is warned of.
std::vector<std::string> left_for_vet(const VisitView& view, const CowSeen& cow,
                                      std::optional<Foot> foot);

}  // namespace evenclaw
