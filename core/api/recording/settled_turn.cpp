#include "core/api/recording/settled_turn.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "core/trade/call_line/known_of_her.hpp"
#include "core/trade/call_line/recalled.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

/// Her call before may be on record of another cow still, whose number is put right now.
bool was_spoken_of_before(const InCrush& cow, Foot foot) {
  const FootCall* first = cow.earlier ? find_foot(cow.earlier->turn.body.turn, foot) : nullptr;
  if (first != nullptr && first->state != FootState::not_lifted) return true;
  const CowPast& past = cow.past;
  return std::any_of(past.rows.feet.begin(), past.rows.feet.end(), [&](const FootRow& row) {
    const bool same_visit = std::any_of(past.same_visit.begin(), past.same_visit.end(),
                                        [&](const TurnRow& turn) { return turn.turn == row.turn; });
    return same_visit && row.foot == foot && row.state != FootState::not_lifted;
  });
}

/// Only what became of a wrap or block was said of this foot.
bool tells_of_fixtures_only(const FootCall& call) {
  return std::all_of(call.actions.begin(), call.actions.end(), [](const Action& action) {
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    return said && (is_off_after(said->step) || said->step == FixtureStep::left_on ||
                    said->step == FixtureStep::not_known);
  });
}

/// A stump that is healed is no finding: "rest fine" speaks of that foot as well.
bool tells_of_its_stump_only(const FootCall& call, const Language& language) {
  return call.measures.empty() && tells_of_a_stump_only(call.note, language) &&
         std::all_of(call.actions.begin(), call.actions.end(),
                     [](const Action& action) { return action.kind == ActionKind::claw_missing; });
}

}  // namespace

FootSet left_open(const VisitBook& book, const InCrush& cow) {
  FootSet open;
  for (const RefusedLine& line : cow.refused) {
    open.add(line.left_open(cow.draft.turn, book.visit.todays_feet));
  }
  return open;
}

Turn as_settled(const VisitBook& book, const InCrush& cow) {
  const FootSet open = left_open(book, cow);
  FootSet feet = cow.filled_then.value_or(book.visit.todays_feet);
  for (const Foot foot : all_feet) {
    if (open.has(foot) || was_spoken_of_before(cow, foot)) feet.remove(foot);
  }
  Turn turn = settled(cow.draft.turn, feet);
  for (FootCall& call : turn.feet) {
    const bool is_meant = cow.draft.turn.rest_fine && feet.has(call.foot);
    if (!is_meant || call.state != FootState::unsaid) continue;
    const bool was_fine = cow.fine_before_named.has(call.foot) && tells_of_fixtures_only(call);
    const bool is_fine = was_fine || tells_of_its_stump_only(call, book.language);
    if (is_fine) call.state = FootState::nothing_found;
  }
  for (const Foot foot : all_feet) {
    const bool is_there = find_foot(turn, foot) != nullptr;
    if (!open.has(foot) || is_there || was_spoken_of_before(cow, foot)) continue;
    FootCall call;
    call.foot = foot;
    turn.feet.push_back(std::move(call));
  }
  return with_medicines(std::move(turn), book.medicine, book.visit.day);
}

bool looks_finished(const VisitBook& book, const InCrush& cow) {
  const Turn& turn = cow.draft.turn;
  if (turn.rest_fine || turn.end != TurnEnd::done) return true;
  if (book.visit.todays_feet.empty()) return false;
  const Turn so_far = as_settled(book, cow);
  return std::all_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
    const FootCall* call = find_foot(so_far, foot);
    return !book.visit.todays_feet.has(foot) ||
           (call != nullptr && call->state != FootState::unsaid);
  });
}

}  // namespace evenclaw
