// Which cows the vet is told of, and in which order.
#pragma once

#include <vector>

#include "core/sheets/signs_for_vet.hpp"

namespace evenclaw {

struct CowForVet {
  CowId cow;
  VetUrgency urgency = VetUrgency::later;
};

/// Every cow whose vet was asked for, who shows a sign he does not know of, or whose check for the
/// vet nobody answered, each once: the most urgent first, alike ones by number.
std::vector<CowForVet> cows_for_vet(const VisitView& view);

}  // namespace evenclaw
