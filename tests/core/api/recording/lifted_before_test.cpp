#include "core/api/recording/lifted_before.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

std::string kept(const std::string& text, const FootSet& lifted) {
  const Line line = read_line(text, saying::in_crush(true), english()).value();
  TurnDraft draft;
  draft.turn.cow.number = "412";
  for (const Clause& clause : with_lifted_kept(line, text, lifted, english()).clauses) {
    const auto* said = std::get_if<TurnClause>(&clause);
    if (said != nullptr) CHECK(add_clause(draft, *said).ok());
  }
  return saying::joined(print_turn(draft.turn, english()));
}

}  // namespace

TEST_CASE("just the fronts does not put down hinds that were lifted before") {
  CHECK(kept("412 just the fronts", {}) == "412 // LH not lifted // RH not lifted // LF // RF");
  CHECK(kept("412 just the fronts", {Foot::lh}) == "412 // RH not lifted // LF // RF");
  CHECK(kept("412 just the fronts", hind_feet) == "412 // LF // RF");
  CHECK(kept("just the fronts", hind_feet) == "412 // LF // RF");
}

TEST_CASE("not lifted said in as many words stays and is asked about") {
  CHECK(kept("412 hinds not lifted; fronts fine", hind_feet) ==
        "412 // LH not lifted // RH not lifted // LF nothing found // RF nothing found");
}

TEST_CASE("a foot was lifted when something was found or done on it, or nothing found") {
  CHECK(lifted_feet(saying::turn_of({"412 LH SU; RH nothing found; LF not lifted; RF spray"})) ==
        FootSet{Foot::lh, Foot::rh, Foot::rf});
}
