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
