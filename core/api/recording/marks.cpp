#include "core/api/recording/marks.hpp"

#include "core/trade/lesion.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

void add_missing(std::string& missing, std::string_view what) {
  if (!missing.empty()) missing += ", ";
  missing += what;
}

std::string missing_of(const Finding& finding) {
  const LesionFacts& facts = facts_of(finding.lesion);
  std::string missing;
  if (facts.kept_on == KeptOn::claw && finding.claw == Claw::not_called) {
    add_missing(missing, "claw");
  }
  const bool sits_at_one_place = facts.nowhere_else && facts.usual_places.size() == 1;
  if (finding.place == Place::not_called && !sits_at_one_place) add_missing(missing, "place");
  if (finding.lesion == Lesion::dd) {
    if (finding.stage == DdStage::not_called) add_missing(missing, "stage");
  } else if (finding.degree == Degree::not_called) {
    add_missing(missing, "degree");
  }
  return missing;
}

}  // namespace

std::vector<std::string> marks_of(const Turn& turn) {
  std::vector<std::string> marks;
  for (const FootCall& call : turn.feet) {
    for (const Finding& finding : call.findings) {
      const std::string missing = missing_of(finding);
      if (missing.empty() || finding.lesion == Lesion::other) continue;
      marks.push_back(missing + " not called (" + std::string(spoken(call.foot)) + " " +
                      std::string(facts_of(finding.lesion).name) + ")");
    }
  }
  return marks;
}

}  // namespace evenclaw
