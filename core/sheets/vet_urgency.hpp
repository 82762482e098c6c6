// Which cows the vet is told of, and in which order.
#pragma once

#include <vector>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// How soon the vet is needed; the vet's box tells of them in this order.
enum class VetUrgency { at_once, today, later };

struct CowForVet {
  CowId cow;
  VetUrgency urgency = VetUrgency::later;
};

/// Every cow whose vet was asked for, and whose Stop for the vet nobody answered, each once: the
/// most urgent first, alike ones by number.
std::vector<CowForVet> cows_for_vet(const VisitView& view);

}  // namespace evenclaw
