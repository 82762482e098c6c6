// A wrap or block from last time that nobody mentioned: forgotten, it cuts in or tips the claw.
#include <algorithm>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

bool in_this_visit(const CowPast& past, EntryId turn) {
  return std::any_of(past.same_visit.begin(), past.same_visit.end(),
                     [&](const TurnRow& row) { return row.turn == turn; });
}

/// Said by an earlier turn of this same visit, when she went through the crush twice.
bool spoken_of_this_visit(const CowPast& past, Foot foot, Fixture fixture) {
  return std::any_of(past.rows.actions.begin(), past.rows.actions.end(), [&](const ActionRow& row) {
    const std::optional<FixtureSaid> said = fixture_said(row.action);
    return said && said->fixture == fixture && row.foot == foot && in_this_visit(past, row.turn);
  });
}

bool is_mentioned(const Situation& situation, Foot foot, Fixture fixture) {
  const FootCall* call = find_foot(situation.turn, foot);
  return (call != nullptr && speaks_of(*call, fixture)) ||
         spoken_of_this_visit(situation.past, foot, fixture);
}

std::vector<std::string> still_on_answers(const OnFootRow& row, bool name_claw,
                                          const Language& language) {
  using A = ActionKind;
  constexpr A of_wrap[] = {A::wrap_still_on, A::wrap_came_off, A::wrap_off, A::wrap_unknown};
  constexpr A of_block[] = {A::block_still_on, A::block_came_off, A::block_off, A::block_unknown};
  std::vector<std::string> answers;
  for (const A act : row.fixture == Fixture::wrap ? of_wrap : of_block) {
    answers.push_back(offered_act(row.foot, act, name_claw ? row.claw : Claw::none, language));
  }
  return answers;
}

Firing asked_about(const OnFootRow& row, bool name_claw, const Situation& situation) {
  Firing firing;
  firing.warning.foot = row.foot;
  firing.warning.claw = row.claw;
  const bool is_over = situation.turn.end == TurnEnd::done;
  std::string what = std::string(name_of(row.fixture)) + " on " + std::string(spoken(row.foot));
  if (name_claw) what += ' ' + std::string(spoken(row.claw));
  what +=
      " since " + spoken(row.since) + " (" + std::to_string(situation.today - row.since) + " d)";
  firing.warning.words =
      is_over ? sentence(what) + ": still on?" : "Not finished; was the " + what + " seen?";
  firing.warning.answers = still_on_answers(row, name_claw, situation.language);
  firing.causes = {{row.foot, about(row.fixture)}};
  return firing;
}

void ask_about(std::vector<Firing>& firings, const Situation& situation, Foot foot,
               Fixture fixture) {
  if (is_mentioned(situation, foot, fixture)) return;
  const Rows& past = situation.past.rows;
  const bool one_each_claw = fixture == Fixture::block && blocked_before(past, foot).both();
  for (const OnFootRow& row : fixtures_left(past, foot, fixture)) {
    const bool name_claw = one_each_claw && is_called(row.claw);
    firings.push_back(asked_about(row, name_claw, situation));
  }
}

}  // namespace

std::vector<Firing> still_on_not_mentioned(const Situation& situation) {
  std::vector<Firing> firings;
  if (!situation.finished || situation.turn.end == TurnEnd::not_done) return firings;
  for (const Foot foot : all_feet) {
    ask_about(firings, situation, foot, Fixture::wrap);
    ask_about(firings, situation, foot, Fixture::block);
  }
  return firings;
}

}  // namespace evenclaw
