#include "core/trade/call_line/foot_corrected.hpp"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/trade/call_line/claw_said_last.hpp"
#include "core/trade/call_line/kept_once.hpp"
#include "core/trade/call_line/nothing_found.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/other_foot.hpp"
#include "core/trade/call_line/recalled.hpp"

namespace evenclaw {

namespace {

// The claw of the clause, where it has or awaits one.
Claw* claw_in(TurnClause& clause) {
  Claw* claw = nullptr;
  if (auto* said = std::get_if<FindingSaid>(&clause)) claw = &said->finding.claw;
  if (auto* said = std::get_if<ActionSaid>(&clause)) claw = &said->action.claw;
  if (auto* said = std::get_if<MeasureSaid>(&clause)) claw = &said->measure.claw;
  return claw == nullptr || *claw == Claw::none ? nullptr : claw;
}

// Says again what was said since the feet were named, on these feet. Who she is stays: her number
// may have been put right since.
Outcome say_again(TurnDraft& draft, FootSet feet, const std::vector<TurnClause>& clauses) {
  TurnDraft trial = draft;
  trial.turn = ready_for(draft.before_naming, feet, clauses);
  trial.turn.cow = draft.turn.cow;
  Outcome named = add_clause(trial, FeetNamed{feet});
  if (!named.ok()) return named;
  for (const TurnClause& clause : clauses) {
    if (std::holds_alternative<BothFeetNamed>(clause)) continue;
    Outcome outcome = add_clause(trial, clause);
    if (!outcome.ok()) return outcome;
  }
  draft = std::move(trial);
  return Done{};
}

// "LH" on one line and "no, right hind" on the next.
Refusal name_or_all_called(Foot named, Foot right) {
  const std::string wrong(word_of(named));
  const std::string meant(word_of(right));
  return not_understood("it is unclear whether all that was called of {" + wrong + "} is of {" +
                            meant + "}, or {" + wrong + "} was a slip just now",
                        "all of it: \"{" + wrong + "} {no, " + meant +
                            "}\" in one line; a slip: \"{never mind}\", then {" + meant + "}");
}

// "LH no, right hind", where something was called of LH before.
Outcome correct_foot_named_anew(TurnDraft& draft, Foot named, const FootCorrected& said) {
  if (said.slip == FootSlip::unclear) return fault_of(name_or_all_called(named, said.foot));
  TurnDraft again = recalled(draft.turn, named);
  Outcome moved = correct_foot(again, said);
  if (!moved.ok()) return moved;
  again.words = std::move(draft.words);
  draft = std::move(again);
  return Done{};
}

bool calls_fine(const TurnClause& clause) {
  const auto* said = std::get_if<FootStateSaid>(&clause);
  return said != nullptr && said->state == FootState::nothing_found;
}

bool calls_rest_fine(const TurnClause& clause) {
  return std::holds_alternative<RestFineSaid>(clause);
}

// One of "the rest", or of "fronts", behind which it was said: then it may be that foot that was
// not fine.
bool was_said_to_be_fine_last(const TurnDraft& draft, Foot foot) {
  const std::vector<TurnClause>& since = draft.since_naming;
  const FootCall* call = find_foot(draft.turn, foot);
  if (draft.feet_named.has(foot)) {
    return draft.feet_named.count() > 1 && std::any_of(since.begin(), since.end(), calls_fine);
  }
  const bool is_of_the_rest =
      call == nullptr || (call->findings.empty() && call->state != FootState::not_lifted);
  return is_of_the_rest && std::any_of(since.begin(), since.end(), calls_rest_fine);
}

Refusal slip_or_not_fine(const TurnDraft& draft, Foot right) {
  const std::string meant(word_of(right));
  std::string remedy =
      "if it was not, say \"{" + meant + "}\" and what was found, without \"{no}\"";
  const bool is_one = draft.feet_named.count() == 1;
  for (const Foot foot : all_feet) {
    if (!is_one || !draft.feet_named.has(foot)) continue;
    const std::string named(word_of(foot));
    remedy += "; if what was called of {" + named + "} is of {" + meant + "}, \"{" + named +
              " no, " + meant + "}\"";
  }
  return impossible("{" + meant + "} was said to be fine just now", std::move(remedy));
}

}  // namespace

Outcome correct_foot(TurnDraft& draft, const FootCorrected& said) {
  if (take_off_the_others(draft, said)) return Done{};
  if (draft.feet_named == FootSet{said.foot}) {
    return fault_of(foot_is_what_was_said(draft.turn, said.foot));
  }
  const bool finds_there = said.slip == FootSlip::name;  // "no, right hind DD"
  if (finds_there && was_said_to_be_fine_last(draft, said.foot)) {
    return fault_of(slip_or_not_fine(draft, said.foot));
  }
  const std::optional<Foot> named = named_again(draft);
  if (named && said.slip != FootSlip::name) return correct_foot_named_anew(draft, *named, said);
  TurnDraft once = without_said_alike(draft, said.foot);
  Outcome moved = say_again(once, FootSet{said.foot}, once.since_naming);
  if (moved.ok()) draft = std::move(once);
  return moved;
}

Outcome correct_claw(TurnDraft& draft, const ClawCorrected& said) {
  if (const auto before = named_again(draft)) {
    TurnDraft again = recalled(draft.turn, before);
    Outcome outcome = correct_claw(again, said);
    if (!outcome.ok()) return outcome;
    draft.turn = again.turn;
    draft.before_naming = std::move(again.turn);
    return Done{};
  }
  std::vector<TurnClause> clauses = draft.since_naming;
  if (const auto unclear = why_claw_is_unclear(clauses, said.claw)) return fault_of(*unclear);
  const std::optional<std::size_t> last = claw_said_last(clauses);
  if (draft.feet_named.empty() || !last) {
    return fault_of(impossible("nothing was said of a claw that could be corrected"));
  }
  Claw& claw = *claw_in(clauses[*last]);
  if (claw == said.claw) {
    return fault_of(impossible(std::string(word_of(claw)) + " is what was said"));
  }
  TurnDraft once = draft;
  mend_claw_said_alike(once, clauses[*last], said.claw);
  claw = said.claw;
  Outcome mended = say_again(once, draft.feet_named, clauses);
  if (mended.ok()) draft = std::move(once);
  return mended;
}

}  // namespace evenclaw
