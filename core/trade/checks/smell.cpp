// A foot that stinks: something rots there, and what nobody named is asked about.
#include <algorithm>
#include <iterator>

#include "core/trade/call_line/known_of_her.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// Lesions that are known to smell; named, the smell needs no other reason.
bool smells_by_itself(const Finding& finding) {
  constexpr Lesion lesions[] = {Lesion::ip, Lesion::tn, Lesion::hhe, Lesion::dd, Lesion::id};
  return finding.dd_infected ||
         std::find(std::begin(lesions), std::end(lesions), finding.lesion) != std::end(lesions);
}

}  // namespace

std::vector<Firing> it_stinks(const Situation& situation) {
  std::vector<Firing> firings;
  if (vet_called(situation.turn)) return firings;
  for (const FootCall& call : situation.turn.feet) {
    const bool stinks = holds_phrase(call.note, TermKind::kept_word,
                                     static_cast<int>(KeptWord::stinks), situation.language);
    const bool is_explained =
        std::any_of(call.findings.begin(), call.findings.end(), smells_by_itself);
    if (!stinks || is_explained) continue;
    Firing firing;
    firing.warning.foot = call.foot;
    firing.warning.words = "It stinks (" + std::string(spoken(call.foot)) + "): dead tissue? Vet?";
    firing.warning.answers = vet_or_go_ahead(call.foot, situation.language);
    firing.causes = {{call.foot, About::smell}};
    firings.push_back(std::move(firing));
  }
  return firings;
}

}  // namespace evenclaw
