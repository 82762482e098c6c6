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
  if (facts.usual_places.size() > 1 && finding.place == Place::not_called) {
    add_missing(missing, "place");
  }
  if (finding.lesion == Lesion::dd) {
    if (finding.stage == DdStage::not_called) add_missing(missing, "stage");
  } else if (finding.degree == Degree::not_called) {
    add_missing(missing, "degree");
  }
  return missing;
}

std::string name_of(const Finding& finding) {
  if (finding.lesion == Lesion::other && !finding.words.empty()) return finding.words;
  return std::string(facts_of(finding.lesion).name);
}

}  // namespace

std::vector<std::string> marks_of(const Turn& turn) {
  std::vector<std::string> marks;
  for (const FootCall& call : turn.feet) {
    for (const Finding& finding : call.findings) {
      const std::string missing = missing_of(finding);
      if (missing.empty()) continue;
      marks.push_back(missing + " not called (" + std::string(spoken(call.foot)) + " " +
                      name_of(finding) + ")");
    }
  }
  return marks;
}

}  // namespace evenclaw
