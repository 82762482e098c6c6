#include "core/trade/call_line/act_facts.hpp"

#include <doctest/doctest.h>

#include "core/trade/call_line/language.hpp"

using namespace evenclaw;

TEST_CASE("every act stands in the table at its own row and has words") {
  CHECK(all_acts().size() == std::size(EnumWords<ActionKind>::table));
  for (const ActFacts& facts : all_acts()) {
    CHECK(&facts_of(facts.kind) == &facts);
    CHECK_FALSE(english().say(facts.said_as, facts.kind).empty());
  }
}

TEST_CASE("what is put on can come off, what came off cannot") {
  CHECK(facts_of(ActionKind::wrap_on).time == ActTime::comes_off);
  CHECK(facts_of(ActionKind::block_again).time == ActTime::comes_off);
  CHECK(facts_of(ActionKind::wrap_off).time == ActTime::none);
  CHECK(facts_of(ActionKind::block_came_off).time == ActTime::none);
}

TEST_CASE("a lost block or wrap is seen without lifting the foot, putting one on needs it") {
  CHECK_FALSE(facts_of(ActionKind::block_came_off).needs_lifting);
  CHECK_FALSE(facts_of(ActionKind::wrap_still_on).needs_lifting);
  CHECK(facts_of(ActionKind::block_on).needs_lifting);
  CHECK(facts_of(ActionKind::spray).needs_lifting);
}

TEST_CASE("only the vet, telling the farmer, seeing again and her walk concern the whole cow") {
  for (const ActFacts& facts : all_acts()) {
    const bool concerns_cow =
        facts.kind == ActionKind::vet || facts.kind == ActionKind::told_farmer ||
        facts.kind == ActionKind::see_again || facts.kind == ActionKind::watch_her_walk;
    CHECK(facts.on_whole_cow == concerns_cow);
  }
}

TEST_CASE("a foot counts as lifted when something was found, done, measured or trimmed") {
  FootCall call;
  CHECK_FALSE(was_lifted(call));
  call.note = "she kicks";
  CHECK_FALSE(was_lifted(call));
  call.trimmed = Trimmed::yes;
  CHECK(was_lifted(call));
  call.trimmed = Trimmed::no;
  call.measures.push_back({MeasureKind::toe_length, Claw::outside, Length{750}});
  CHECK(was_lifted(call));
  call.state = FootState::not_lifted;
  CHECK_FALSE(was_lifted(call));
}

TEST_CASE("a foot named for the vet or for a wrap that came off was not lifted for it") {
  FootCall call;
  Action act;
  for (const ActionKind kind : {ActionKind::vet, ActionKind::wrap_came_off}) {
    act.kind = kind;
    call.actions.push_back(act);
  }
  CHECK_FALSE(was_lifted(call));
  act.kind = ActionKind::spray;
  call.actions.push_back(act);
  CHECK(was_lifted(call));
}
