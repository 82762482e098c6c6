// A scab of digital dermatitis tells of a treatment; where none is known somebody else gave it.
#include <algorithm>
#include <utility>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// Our judgement: a scab is weeks old at most.
constexpr int treatment_shows_days = 60;

bool is_treatment(ActionKind kind) {
  return takes_product(kind) || kind == ActionKind::wrap_on;
}

bool was_treated(const Situation& situation, Foot foot) {
  const std::vector<ActionRow>& acts = situation.past.rows.actions;
  return std::any_of(acts.begin(), acts.end(), [&](const ActionRow& row) {
    const int days = situation.today - row.day;
    return is_treatment(row.action) && row.foot == foot && days <= treatment_shows_days;
  });
}

bool has_scab(const FootCall& call) {
  return std::any_of(call.findings.begin(), call.findings.end(), [](const Finding& finding) {
    return finding.stage == DdStage::scab || finding.stage == DdStage::m3;
  });
}

/// Of a cow that was never here nothing can be missing.
bool was_here_before(const Situation& situation) {
  const std::vector<TurnRow>& turns = situation.past.rows.turns;
  return std::any_of(turns.begin(), turns.end(),
                     [&](const TurnRow& row) { return row.day < situation.today; });
}

}  // namespace

std::vector<Firing> scab_without_treatment(const Situation& situation) {
  std::vector<Firing> firings;
  if (!situation.finished || !was_here_before(situation)) return firings;
  for (const FootCall& call : situation.turn.feet) {
    if (!has_scab(call) || was_treated(situation, call.foot)) continue;
    Firing firing;
    firing.warning.foot = call.foot;
    firing.warning.words = sentence(std::string(spoken(call.foot))) +
                           ": a scab, but no treatment is known here. Who treated it?";
    firing.causes = {{call.foot, About::finding}};
    firings.push_back(std::move(firing));
  }
  return firings;
}

}  // namespace evenclaw
