#include "core/trade/call_line/known_of_her.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"
#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

/// A block or wrap from before, as the picture would hold it.
OnFootRow on(Foot foot, Fixture fixture, Day since) {
  OnFootRow row;
  row.foot = foot;
  row.fixture = fixture;
  row.since = since;
  return row;
}

FootRow with_missing(Foot foot, Claw claw) {
  FootRow row;
  row.foot = foot;
  row.missing = claw;
  row.day = first_of_november - 60;
  return row;
}

/// The turn after the words, or why not and what to say instead.
std::string plainly(KnownOfHer what, const Rows& rows, const std::string& before = "412") {
  TurnDraft draft;
  call_out(draft, before, first_of_november);
  const VisitId now{uuid_derived("this visit")};
  const auto plain = put_plainly(draft, {what, "it"}, {rows, now, first_of_november}, english());
  if (!plain) return plain.faults().front().message + " / " + plain.faults().front().remedy;
  for (const TurnClause& clause : plain->clauses) CHECK(add_clause(draft, clause).ok());
  return saying::joined(print_turn(draft.turn, english()));
}

}  // namespace

TEST_CASE("a wrap is on the one foot that carries it, and asked about when two do") {
  Rows rows;
  CHECK(plainly(KnownOfHer::wrapped_foot, rows) ==
        "no wrap of hers is known to be on / say the foot it is on: \"LH it\"");
  rows.on_feet.push_back(on(Foot::rh, Fixture::wrap, first_of_november - 14));
  CHECK(plainly(KnownOfHer::wrapped_foot, rows) == "412 // RH");
  rows.on_feet.push_back(on(Foot::lh, Fixture::wrap, first_of_november - 14));
  CHECK(plainly(KnownOfHer::wrapped_foot, rows) ==
        "she carries more than one wrap / say the foot first: \"LH it\", \"RH it\"");
  CHECK(plainly(KnownOfHer::wrapped_foot, rows, "412 LF") == "412 // LF");
}

TEST_CASE("a block is no wrap") {
  Rows rows;
  rows.on_feet.push_back(on(Foot::lh, Fixture::block, first_of_november - 14));
  CHECK(plainly(KnownOfHer::blocked_foot, rows) == "412 // LH");
  CHECK(plainly(KnownOfHer::wrapped_foot, rows).find("no wrap") == 0);
}

TEST_CASE("beside a stump the other claw is the one that was trimmed") {
  Rows rows;
  CHECK(plainly(KnownOfHer::other_claw, rows) ==
        "no claw of hers is known to be missing / say first which one: \"LH inside claw missing\"");
  rows.feet.push_back(with_missing(Foot::rh, Claw::outside));
  CHECK(plainly(KnownOfHer::stump, rows) == "412 // RH note: it");
  CHECK(plainly(KnownOfHer::other_claw, rows) == "412 // RH trimmed; note: it (inside)");
  CHECK(plainly(KnownOfHer::other_claw, rows, "412 LH inside claw missing") ==
        "412 // LH claw missing inside; trimmed; note: it (outside)");
  rows.feet.push_back(with_missing(Foot::lf, Claw::not_called));
  CHECK(plainly(KnownOfHer::stump, rows) ==
        "a claw is missing on more than one foot / say the foot first: \"LF it\", \"RH it\"");
}

TEST_CASE("what is known to be on a foot is told with its age and how late it is") {
  Rows rows;
  rows.on_feet.push_back(on(Foot::rh, Fixture::wrap, first_of_november - 14));
  TaskRow task;
  task.kind = TaskKind::wrap_off;
  task.foot = Foot::rh;
  task.due = first_of_november - 9;
  rows.tasks.push_back(task);
  const KnownPast past{rows, {}, first_of_november};
  CHECK(told_of_fixture(past, Foot::rh, Fixture::wrap, english()) ==
        "RH: wrap on since 18 Oct, 14 days, 9 late");
  CHECK(told_of_fixture(past, Foot::lh, Fixture::wrap, english()).empty());
}

TEST_CASE("an act that tells of a wrap or block from before finds its foot, a new one does not") {
  Rows rows;
  rows.on_feet.push_back(on(Foot::lh, Fixture::block, first_of_november - 14));
  const KnownPast past{rows, {}, first_of_november};
  ActionSaid said{act(ActionKind::block_came_off, Claw::not_called), false};
  CHECK(feet_that_carry_it({}, said, past) == FootSet{Foot::lh});
  said.action.kind = ActionKind::block_on;
  CHECK(feet_that_carry_it({}, said, past).empty());
  said.action.kind = ActionKind::wrap_off;
  CHECK(feet_that_carry_it({}, said, past).empty());
}

TEST_CASE("\"wraps off\" is of all that were on before today, \"wrap off\" of none of several") {
  Rows rows;
  rows.on_feet.push_back(on(Foot::lh, Fixture::wrap, first_of_november - 14));
  rows.on_feet.push_back(on(Foot::rh, Fixture::wrap, first_of_november - 14));
  rows.on_feet.push_back(on(Foot::lf, Fixture::wrap, first_of_november));
  const KnownPast past{rows, {}, first_of_november};
  ActionSaid said{act(ActionKind::wrap_off, Claw::none), false};
  CHECK(feet_that_carry_it({}, said, past).empty());
  said.all = true;
  CHECK(feet_that_carry_it({}, said, past) == hind_feet);
}

TEST_CASE("a wrap told off today is the one that is told off once more") {
  Rows rows;
  rows.on_feet.push_back(on(Foot::rh, Fixture::wrap, first_of_november - 14));
  rows.on_feet.back().ended = FixtureEnd::taken_off;
  rows.on_feet.back().ended_on = first_of_november;
  CHECK(plainly(KnownOfHer::wrapped_foot, rows) == "412 // RH");
  rows.on_feet.push_back(on(Foot::lh, Fixture::wrap, first_of_november - 14));
  CHECK(plainly(KnownOfHer::wrapped_foot, rows) == "412 // LH");
}

TEST_CASE("words that were kept are known again by their meaning") {
  constexpr int stinks = static_cast<int>(KeptWord::stinks);
  CHECK(holds_phrase("kicks; It stinks", TermKind::kept_word, stinks, english()));
  CHECK_FALSE(holds_phrase("nothing much", TermKind::kept_word, stinks, english()));
}

TEST_CASE("a note that only tells of a stump is told from one that tells more") {
  CHECK(tells_of_a_stump_only("stump's healed; square up the other one (inside)", english()));
  CHECK_FALSE(tells_of_a_stump_only("stump's healed; it stinks", english()));
  CHECK_FALSE(tells_of_a_stump_only("inside", english()));
  CHECK_FALSE(tells_of_a_stump_only("", english()));
}
