// A wrap or block from last time that nobody mentioned: forgotten, it cuts in or tips the claw.
#include <algorithm>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

bool in_this_visit(const CowPast& past, EntryId turn) {
  return std::any_of(past.same_visit.begin(), past.same_visit.end(),
                     [&](const TurnRow& row) { return row.turn == turn; });
}

/// A block put on one claw tells nothing of the one that was on the other.
bool speaks_of(ActionKind kind, Claw claw, const OnFootRow& row) {
  const std::optional<FixtureSaid> said = fixture_said(kind);
  return said && said->fixture == row.fixture &&
         (row.fixture == Fixture::wrap || claws_agree(claw, row.claw));
}

/// Said by an earlier turn of this same visit, when she went through the crush twice.
bool spoken_of_this_visit(const CowPast& past, const OnFootRow& on) {
  return std::any_of(past.rows.actions.begin(), past.rows.actions.end(), [&](const ActionRow& row) {
    return speaks_of(row.action, row.claw, on) && row.foot == on.foot &&
           in_this_visit(past, row.turn);
  });
}

bool is_mentioned(const Situation& situation, const OnFootRow& row) {
  const FootCall* call = find_foot(situation.turn, row.foot);
  const bool is_said_now =
      call != nullptr &&
      std::any_of(call->actions.begin(), call->actions.end(),
                  [&](const Action& act) { return speaks_of(act.kind, act.claw, row); });
  return is_said_now || spoken_of_this_visit(situation.past, row);
}

/// One of its kind, on whatever claw.
bool is_any_mentioned(const Situation& situation, Foot foot, Fixture fixture) {
  OnFootRow any;
  any.foot = foot;
  any.fixture = fixture;
  any.claw = Claw::not_called;
  return is_mentioned(situation, any);
}

/// Nobody mentioned the block, and one is put on the other claw.
bool is_beside_a_new_one(const Situation& situation, const OnFootRow& row) {
  const FootCall* call = find_foot(situation.turn, row.foot);
  return row.fixture == Fixture::block && call != nullptr && put_on_today(*call, Fixture::block);
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
  what += (row.only_seen ? " seen " : " since ") + spoken(row.since) + " (" +
          std::to_string(situation.today - row.since) + " d)";
  firing.warning.words =
      is_over ? sentence(what) + ": still on?" : "Not finished; was the " + what + " seen?";
  firing.warning.answers = still_on_answers(row, name_claw, situation.language);
  firing.causes = {
      {row.foot, is_beside_a_new_one(situation, row) ? About::old_block : about(row.fixture)}};
  return firing;
}

void ask_about(std::vector<Firing>& firings, const Situation& situation, Foot foot,
               Fixture fixture) {
  const Rows& past = situation.past.rows;
  const bool one_each_claw = fixture == Fixture::block && blocked_before(past, foot).both();
  for (const OnFootRow& row : fixtures_left(past, foot, fixture)) {
    if (is_mentioned(situation, row)) continue;
    const bool is_one_of_two = one_each_claw || is_beside_a_new_one(situation, row);
    const bool name_claw = is_one_of_two && is_called(row.claw);
    firings.push_back(asked_about(row, name_claw, situation));
  }
}

/// It was told to be on her, of no foot.
void ask_where(std::vector<Firing>& firings, const Situation& situation, Fixture fixture) {
  const Rows& past = situation.past.rows;
  const auto task = std::find_if(past.tasks.begin(), past.tasks.end(), [&](const TaskRow& each) {
    return each.open && is_somewhere_on_her(fixture, each) && each.made_on < situation.today;
  });
  const bool is_told = std::any_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
    return is_any_mentioned(situation, foot, fixture);
  });
  if (task == past.tasks.end() || is_told) return;
  Firing firing;
  firing.warning.claw = fixture == Fixture::block ? Claw::not_called : Claw::none;
  firing.warning.words = sentence(std::string(name_of(fixture))) + " told on her " +
                         spoken(task->made_on) + ", of no foot: on which is it?";
  const bool is_wrap = fixture == Fixture::wrap;
  for (const Foot foot : {Foot::lh, Foot::rh, Foot::lf, Foot::rf}) {
    firing.warning.answers.push_back(
        offered_act(foot, is_wrap ? ActionKind::wrap_still_on : ActionKind::block_still_on,
                    Claw::none, situation.language));
  }
  firing.warning.answers.push_back(offered_go_ahead(situation.language));
  firings.push_back(std::move(firing));
}

}  // namespace

std::vector<Firing> still_on_not_mentioned(const Situation& situation) {
  std::vector<Firing> firings;
  if (!situation.finished || situation.turn.end == TurnEnd::not_done) return firings;
  for (const Foot foot : all_feet) {
    ask_about(firings, situation, foot, Fixture::wrap);
    ask_about(firings, situation, foot, Fixture::block);
  }
  ask_where(firings, situation, Fixture::wrap);
  ask_where(firings, situation, Fixture::block);
  return firings;
}

}  // namespace evenclaw
