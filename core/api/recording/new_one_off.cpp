#include "core/api/recording/new_one_off.hpp"

#include <algorithm>
#include <string>
#include <variant>
#include <vector>

#include "core/api/recording/earlier_turn.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/put_on_here.hpp"

namespace evenclaw {

namespace {

bool is_new(FixtureStep step) {
  return step == FixtureStep::put_on || step == FixtureStep::renewed;
}

bool is_of_the_same(const Action& act, const Action& off) {
  const auto said = fixture_said(act.kind);
  return said && said->fixture == fixture_said(off.kind)->fixture &&
         claws_agree(act.claw, off.claw);
}

/// The last one that was put on behind the same words of the one before; nothing when there is
/// none.
std::optional<Action> put_on_behind(const std::vector<Action>& acts, const Action& off) {
  bool was_told = false;
  std::optional<Action> put_on;
  for (const Action& act : acts) {
    if (!is_of_the_same(act, off)) continue;
    was_told = was_told || act.kind == off.kind;
    if (was_told && is_new(fixture_said(act.kind)->step)) put_on = act;
  }
  return put_on;
}

bool puts_one_on(const FootCall& call, const Action& off) {
  return std::any_of(call.actions.begin(), call.actions.end(), [&](const Action& act) {
    return is_of_the_same(act, off) && is_new(fixture_said(act.kind)->step);
  });
}

/// What the call tells to be off and puts no other one on for.
std::vector<Action> told_off(const FootCall& call) {
  std::vector<Action> off;
  for (const Action& act : call.actions) {
    const std::optional<FixtureSaid> said = fixture_said(act.kind);
    if (said && is_off_after(said->step) && !puts_one_on(call, act)) off.push_back(act);
  }
  return off;
}

/// A foot of a turn, and what was put on it that is told off now.
struct NewOneOff {
  Foot foot;
  Action put_on;
};

/// Off, and not for another one that is put on behind it.
std::optional<NewOneOff> new_one_off(const FootCall& before, const FootCall& more) {
  std::vector<Action> acts = before.actions;
  for (auto act = more.actions.begin(); act != more.actions.end(); ++act) {
    const std::optional<FixtureSaid> said = fixture_said(act->kind);
    const bool is_replaced =
        said && std::any_of(act + 1, more.actions.end(), [&](const auto& next) {
          return is_of_the_same(next, *act) && is_new(fixture_said(next.kind)->step);
        });
    const bool is_off = said && is_off_after(said->step) && !is_replaced;
    if (const auto put_on = is_off ? put_on_behind(acts, *act) : std::nullopt)
      return NewOneOff{before.foot, *put_on};
    acts.push_back(*act);
  }
  return std::nullopt;
}

std::optional<NewOneOff> new_one_off(const Turn& before, const Turn& more) {
  for (const FootCall& call : more.feet) {
    const FootCall* then = find_foot(before, call.foot);
    const auto off = then == nullptr ? std::nullopt : new_one_off(*then, call);
    if (off) return off;
  }
  return std::nullopt;
}

/// The line by itself, said of the feet that are named. Nothing when it corrects.
std::optional<Turn> said_in(const Line& line, const TurnDraft& draft) {
  TurnDraft alone;
  alone.turn.cow = draft.turn.cow;
  if (!draft.feet_named.empty() && !add_clause(alone, FeetNamed{draft.feet_named}))
    return std::nullopt;
  for (const Clause& clause : line.clauses) {
    const auto* said = std::get_if<TurnClause>(&clause);
    if (said != nullptr && !add_clause(alone, *said)) return std::nullopt;
  }
  return alone.turn;
}

}  // namespace

bool tells_the_new_one_off(const Turn& before, const Turn& more) {
  return new_one_off(before, more).has_value();
}

bool puts_on_what_was_told_off(const Turn& before, const Turn& later) {
  return std::any_of(before.feet.begin(), before.feet.end(), [&](const FootCall& call) {
    const FootCall* now = find_foot(later, call.foot);
    const std::vector<Action> off = told_off(call);
    return now != nullptr && std::any_of(off.begin(), off.end(), [&](const Action& each) {
             return puts_one_on(*now, each);
           });
  });
}

CowPast without_replaced(CowPast past, const Turn& before) {
  std::erase_if(past.rows.on_feet, [&](const OnFootRow& row) {
    const FootCall* call = find_foot(before, row.foot);
    return call != nullptr &&
           std::any_of(call->actions.begin(), call->actions.end(), [&](const Action& act) {
             const std::optional<FixtureSaid> said = fixture_said(act.kind);
             return said && said->fixture == row.fixture && is_new(said->step) &&
                    claws_agree(act.claw, row.claw);
           });
  });
  return past;
}

std::optional<Fault> new_one_off_in_crush(const VisitBook& book, const Crush& crush,
                                          const Line& line) {
  if (!crush.cow) return std::nullopt;
  const TurnDraft& draft = crush.cow->draft;
  const std::optional<Turn> more = said_in(line, draft);
  const auto off =
      more ? new_one_off(whole_turn(book, *crush.cow).value_or(draft.turn), *more) : std::nullopt;
  if (!off) return std::nullopt;
  const std::string what(name_of(fixture_said(off->put_on.kind)->fixture));
  const std::string taken_back =
      offered_taking_back(off->foot, off->put_on.kind, off->put_on.claw, book.language);
  return Fault{
      .slug = "call-impossible",
      .message = "The " + what + " of before was told off, and a new one was put on since.",
      .remedy = "Say \"" + std::string(book.language.say(TermKind::never_mind)) +
                "\"; and if the new one is off again: \"" + taken_back + "\"."};
}

std::optional<std::string> asked_of_new_one(const Turn& turn, const NewsSaid& news,
                                            const CowPast& past) {
  const std::optional<FixtureSaid> off = fixture_said(news.news);
  if (!off || !is_off_after(off->step)) return std::nullopt;
  FootSet before = feet_carrying(off->fixture, past.rows);
  FootSet put_on;
  for (const FootCall& call : turn.feet) {
    for (const Action& act : call.actions) {
      const std::optional<FixtureSaid> said = fixture_said(act.kind);
      if (!said || said->fixture != off->fixture) continue;
      if (is_off_after(said->step)) before.remove(call.foot);
      if (is_new(said->step)) put_on.add(call.foot);
    }
  }
  const bool is_named = !news.feet.empty();
  FootSet meant;
  for (const Foot foot : all_feet) {
    const bool may_be_older = before.has(foot) && (!is_named || news.feet.has(foot));
    if (may_be_older) return std::nullopt;
    if (put_on.has(foot) && (!is_named || news.feet.has(foot))) meant.add(foot);
  }
  if (meant.empty()) return std::nullopt;
  return asked_of_put_on_now(off->fixture, meant, is_named);
}

}  // namespace evenclaw
