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

/// The same of what was seen at earlier visits and is open still, and of what the vet was asked to
/// see then and nobody said that he came. Not of blood and a fall, which are over. None once she
/// left.
std::vector<std::string> left_from_before(const VisitView& view, CowId cow,
                                          std::optional<Foot> foot);

}  // namespace evenclaw
