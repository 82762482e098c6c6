#include "core/api/recording/new_one_off.hpp"

#include <doctest/doctest.h>

#include <initializer_list>

#include "core/trade/call_line/line.hpp"
#include "core/trade/call_line/turn_clause.hpp"

using namespace evenclaw;

namespace {

/// The turn these lines make.
Turn called(std::initializer_list<std::string_view> lines) {
  TurnDraft draft;
  for (const std::string_view line : lines) {
    const auto read = read_line(line, {Day{}, true, 1}, english());
    REQUIRE(read.ok());
    for (const Clause& clause : read->clauses) {
      REQUIRE(add_clause(draft, std::get<TurnClause>(clause)).ok());
    }
  }
  return draft.turn;
}

}  // namespace

TEST_CASE("wrap off in the same words after a new wrap is of the new one") {
  const Turn before = called({"LH wrap off; DD raw; wrap on"});
  CHECK(tells_the_new_one_off(before, called({"LH wrap off"})));
  CHECK_FALSE(tells_the_new_one_off(before, called({"RH wrap off"})));
  CHECK_FALSE(tells_the_new_one_off(before, called({"LH block off"})));
}

TEST_CASE("said in the other order the old one was meant both times") {
  CHECK_FALSE(tells_the_new_one_off(called({"LH wrap on; wrap off"}), called({"LH wrap off"})));
  CHECK_FALSE(tells_the_new_one_off(called({"LH DD raw; wrap on"}), called({"LH wrap off"})));
}

TEST_CASE("who says both again says nothing new") {
  const Turn before = called({"LH wrap off; DD raw; wrap on"});
  CHECK_FALSE(tells_the_new_one_off(before, called({"LH wrap off; wrap on"})));
}

TEST_CASE("told in another way it is no repetition") {
  const Turn before = called({"LH wrap off; DD raw; wrap on"});
  CHECK_FALSE(tells_the_new_one_off(before, called({"LH wrap came off"})));
}

TEST_CASE("a later turn put another one on where one was told off") {
  const Turn off = called({"LH wrap off"});
  CHECK(puts_on_what_was_told_off(off, called({"LH DD raw; wrap on"})));
  CHECK_FALSE(puts_on_what_was_told_off(off, called({"RH DD raw; wrap on"})));
  CHECK_FALSE(puts_on_what_was_told_off(off, called({"LH wrap still on"})));
}
