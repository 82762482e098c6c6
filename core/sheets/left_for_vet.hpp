// What is left alone until the vet has seen it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// What not to do on that foot until the vet has seen it, in the words of the checks made beside
/// the crush; of the whole cow when no foot is given. Nothing that was not called is warned of.
std::vector<std::string> left_for_vet(const VisitView& view, const CowSeen& cow,
                                      std::optional<Foot> foot);

}  // namespace evenclaw
