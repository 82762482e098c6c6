#include "core/trade/call_line/time_corrected.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

/// An act of hers with a time; without a foot it is of the whole cow.
struct Timed {
  std::optional<Foot> foot;
  Action act;
};

/// "Wrap off 5d" is said of the wrap that was put on.
bool is_named(const TimeCorrected& said, ActionKind kind) {
  if (!said.act || *said.act == kind) return true;
  const std::optional<FixtureSaid> meant = fixture_said(*said.act);
  const std::optional<FixtureSaid> done = fixture_said(kind);
  return meant && done && meant->fixture == done->fixture;
}

/// "Off Fri" is of a wrap or block, "till Fri" of milk or meat.
bool may_be_led_in_so(TimeLead lead, const Action& act) {
  const ActFacts& facts = facts_of(act.kind);
  if (lead == TimeLead::off) return facts.time == ActTime::comes_off;
  return lead == TimeLead::any || facts.said_as == TermKind::withheld_act;
}

/// Named, it may be one of which no time was called.
bool is_meant(const TimeCorrected& said, const Action& act) {
  if (!may_be_led_in_so(said.lead, act)) return false;
  const bool has_time = act.when.said() || (said.act && facts_of(act.kind).time != ActTime::none);
  return has_time && is_named(said, act.kind) && claws_agree(said.claw, act.claw);
}

const Action* said_last(const TurnDraft& draft, const TimeCorrected& said) {
  const std::vector<TurnClause>& since = draft.since_naming;
  for (auto clause = since.rbegin(); clause != since.rend(); ++clause) {
    const auto* act = std::get_if<ActionSaid>(&*clause);
    if (act != nullptr && is_meant(said, act->action)) return &act->action;
  }
  return nullptr;
}

std::vector<Timed> all_meant(const TurnDraft& draft, const TimeCorrected& said) {
  std::vector<Timed> all;
  const auto add = [&](std::optional<Foot> foot, const std::vector<Action>& acts) {
    for (const Action& act : acts) {
      if (is_meant(said, act)) all.push_back({foot, act});
    }
  };
  add(std::nullopt, draft.turn.actions);
  for (const FootCall& call : draft.turn.feet) add(call.foot, call.actions);
  const auto is_on_named = [&draft](const Timed& timed) {
    return timed.foot && draft.feet_named.has(*timed.foot);
  };
  if (std::any_of(all.begin(), all.end(), is_on_named)) {
    std::erase_if(all, [&](const Timed& timed) { return !is_on_named(timed); });
  }
  return all;
}

/// Said at once of several feet it is one.
bool are_said_at_once(const std::vector<Timed>& all) {
  return std::all_of(all.begin(), all.end(),
                     [&all](const Timed& timed) { return timed.act == all.front().act; });
}

Refusal of_several(const std::vector<Timed>& all) {
  const Timed& one = all.front();
  const std::string act(english().say(facts_of(one.act.kind).said_as, one.act.kind));
  const std::string foot = one.foot ? "{" + std::string(word_of(*one.foot)) + "} " : "";
  const std::string claw =
      is_called(one.act.claw) ? " {" + std::string(word_of(one.act.claw)) + "}" : "";
  return impossible("several things were said with a time, and it is not clear which is meant",
                    "say which: \"" + foot + "{no, " + act + "}" + claw + " {off 5d}\"");
}

/// What holds milk or meat back may have been said twice, and then both ends are put right.
bool has_the_wrong_time(const Action& act, const Action& wrong) {
  const bool is_withheld = facts_of(act.kind).said_as == TermKind::withheld_act;
  return act.kind == wrong.kind && claws_agree(act.claw, wrong.claw) &&
         (is_withheld || act.when == wrong.when);
}

void mend(std::vector<Action>& acts, const Action& wrong, const TimeSaid& when) {
  std::vector<Action> kept;
  for (Action act : acts) {
    const bool is_mended = has_the_wrong_time(act, wrong);
    if (is_mended) act.when = when;
    const bool is_there = std::find(kept.begin(), kept.end(), act) != kept.end();
    if (!is_mended || !is_there) kept.push_back(std::move(act));
  }
  acts = std::move(kept);
}

void mend(Turn& turn, const Action& wrong, const TimeSaid& when, FootSet feet) {
  if (feet.empty()) mend(turn.actions, wrong, when);
  for (FootCall& call : turn.feet) {
    if (feet.has(call.foot)) mend(call.actions, wrong, when);
  }
}

void mend(TurnDraft& draft, const Action& wrong, const TimeSaid& when, FootSet feet) {
  mend(draft.turn, wrong, when, feet);
  mend(draft.before_naming, wrong, when, feet);
  for (TurnClause& clause : draft.since_naming) {
    auto* act = std::get_if<ActionSaid>(&clause);
    if (act != nullptr && has_the_wrong_time(act->action, wrong)) act->action.when = when;
  }
}

bool is_of_the_cow(const TurnDraft& draft, const Action& act) {
  return draft.feet_named.empty() || is_always_of_the_cow(act.kind);
}

}  // namespace

Outcome correct_time(TurnDraft& draft, const TimeCorrected& said) {
  Action wrong;
  FootSet feet;
  if (const Action* last = said_last(draft, said)) {
    wrong = *last;
    if (!is_of_the_cow(draft, wrong)) feet = draft.feet_named;
  } else {
    const std::vector<Timed> all = all_meant(draft, said);
    if (all.empty()) {
      return fault_of(impossible("nothing of that kind was said with a time",
                                 "say what comes off or is to happen, and when: \"{wrap on, off "
                                 "5d}\", \"{see again 28d}\""));
    }
    if (!are_said_at_once(all)) return fault_of(of_several(all));
    wrong = all.front().act;
    for (const Timed& timed : all) {
      if (timed.foot) feet.add(*timed.foot);
    }
  }
  TurnDraft mended = draft;
  mend(mended, wrong, said.when, feet);
  if (mended.turn == draft.turn) return fault_of(impossible("that is what was said"));
  draft = std::move(mended);
  return Done{};
}

}  // namespace evenclaw
