#include "core/trade/checks/situation.hpp"

#include <algorithm>
#include <utility>

#include "core/trade/lesion.hpp"

namespace evenclaw {

namespace {

/// As "rest fine" leaves a foot that nobody spoke of.
bool is_only_fine(const FootCall& call) {
  return call.state == FootState::nothing_found && call.findings.empty() && call.actions.empty() &&
         call.measures.empty() && call.note.empty();
}

}  // namespace

About about(Fixture fixture) {
  return fixture == Fixture::block ? About::block : About::wrap;
}

std::string_view name_of(Fixture fixture) {
  return fixture == Fixture::block ? "block" : "wrap";
}

bool hurts(const Finding& finding) {
  if (finding.lesion == Lesion::sh) return finding.degree == Degree::bad;
  return facts_of(finding.lesion).painful_horn;
}

const Finding* painful_finding(const FootCall& call, Claw claw) {
  const auto found =
      std::find_if(call.findings.begin(), call.findings.end(), [&](const Finding& finding) {
        return hurts(finding) && (finding.claw == claw || finding.claw == Claw::both);
      });
  return found == call.findings.end() ? nullptr : &*found;
}

std::string spoken_name(const Finding& finding) {
  if (finding.lesion == Lesion::other && !finding.words.empty()) return finding.words;
  return std::string(facts_of(finding.lesion).name);
}

std::vector<std::string> corrections(const Turn& turn, Foot spoken_of, std::string words) {
  const auto said = std::find_if(turn.feet.rbegin(), turn.feet.rend(), [&](const FootCall& call) {
    return !(turn.rest_fine && is_only_fine(call));
  });
  if (said == turn.feet.rend() || said->foot != spoken_of) return {};
  return {std::move(words)};
}

}  // namespace evenclaw
