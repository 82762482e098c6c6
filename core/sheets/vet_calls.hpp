// What the vet is called to of one cow: each place, why, by when, and whether he was asked for.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// One place of a cow that the vet is to see: asked for, or only stopped for.
struct VetCall {
  std::optional<Foot> foot;  // of the whole cow when none
  std::string why;
  std::string when;
  bool is_of_today = true;    // made at this visit
  std::string status = {};    // whether he was asked for
  bool is_to_see_her = true;  // not only asked for pain relief
  VetUrgency urgency = VetUrgency::today;
  bool is_only_asked = false;  // words nobody has read as a call may tell of a sign
};

/// The most urgent first. What was found at this visit stands before what he was asked for at an
/// earlier one, which is told with its day, with what was there then, and that nobody said whether
/// he came.
std::vector<VetCall> vet_calls(const VisitView& view, CowId cow);

/// The sign itself is told: what the check said beside it would say it twice.
bool is_told_by_sign(const VisitView& view, const CowSeen& cow, const Warning& stop);

}  // namespace evenclaw
