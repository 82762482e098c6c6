#include "core/api/recording/foot_of_fixture.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

Rows with(std::initializer_list<Foot> feet, Fixture fixture) {
  Rows past;
  for (const Foot foot : feet) {
    OnFootRow row;
    row.foot = foot;
    row.fixture = fixture;
    past.on_feet.push_back(row);
  }
  return past;
}

}  // namespace

TEST_CASE("a wrap told of without its foot is offered with the foot that carries it") {
  CHECK(remedy_with_foot(with({Foot::rh}, Fixture::wrap), "wrap off", english()) ==
        "say the foot first: \"RH wrap off\"");
}

TEST_CASE("with wraps on two feet both are offered") {
  CHECK(remedy_with_foot(with({Foot::lh, Foot::rh}, Fixture::wrap), "wraps off", english()) ==
        "say the foot first: \"LH wraps off\", \"RH wraps off\"");
}

TEST_CASE("of what she does not carry it is said that none is known on her") {
  CHECK(remedy_with_foot(with({Foot::rh}, Fixture::wrap), "block gone", english()) ==
        "no block is known on her; was it another cow? Else say the foot first: LF, RF, LH, RH");
}

TEST_CASE("no foot is offered for what is put on") {
  CHECK(remedy_with_foot(with({Foot::rh}, Fixture::wrap), "wrap on", english()).empty());
  CHECK(remedy_with_foot(with({Foot::rh}, Fixture::wrap), "spray", english()).empty());
}
