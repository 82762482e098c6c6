// Work the vet did at this visit of which nobody said whether he gave anything with it.
#pragma once

#include <string>
#include <vector>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

struct VetWork {
  CowId cow;
  std::string words;  // "outside claw amputated (vet): ask the vet whether he gave anything, ..."
};

/// By number of the cow, each once. Nothing where something was put on or given at this
/// visit, or a withdrawal was told: then that is what is asked or known (our judgement). Nothing of
/// a cow whose milk and meat nobody has to ask of any more.
std::vector<VetWork> vet_work_to_ask(const VisitView& view);

}  // namespace evenclaw
