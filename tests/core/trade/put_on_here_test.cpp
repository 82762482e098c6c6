#include "core/trade/put_on_here.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

const VisitId now{uuid_derived("this visit")};
const VisitId before{uuid_derived("last visit")};

OnFootRow on(Fixture fixture, Foot foot, VisitId visit, Claw claw = Claw::none) {
  OnFootRow row;
  row.fixture = fixture;
  row.foot = foot;
  row.visit = visit;
  row.claw = claw;
  return row;
}

TaskRow to_do(TaskKind kind, Foot foot, VisitId visit, Claw claw = Claw::none) {
  TaskRow task;
  task.kind = kind;
  task.foot = foot;
  task.visit = visit;
  task.claw = claw;
  return task;
}

}  // namespace

TEST_CASE("a wrap put on at this visit is left out with its task, an older one is not") {
  Rows past;
  past.on_feet = {on(Fixture::wrap, Foot::lh, before), on(Fixture::wrap, Foot::rh, now)};
  past.tasks = {to_do(TaskKind::wrap_off, Foot::lh, before),
                to_do(TaskKind::wrap_off, Foot::rh, now)};
  const Rows older = without_put_on_at(past, Fixture::wrap, now, four_feet);
  REQUIRE(older.on_feet.size() == 1);
  CHECK(older.on_feet.front().foot == Foot::lh);
  REQUIRE(older.tasks.size() == 1);
  CHECK(older.tasks.front().foot == Foot::lh);
}

TEST_CASE("of two blocks on one foot the one put on now is left out") {
  Rows past;
  past.on_feet = {on(Fixture::block, Foot::lh, before, Claw::inside),
                  on(Fixture::block, Foot::lh, now, Claw::outside)};
  past.tasks = {to_do(TaskKind::block_off, Foot::lh, now, Claw::outside),
                to_do(TaskKind::block_off, Foot::lh, before, Claw::inside)};
  const Rows older = without_put_on_at(past, Fixture::block, now, four_feet);
  REQUIRE(older.on_feet.size() == 1);
  CHECK(older.on_feet.front().claw == Claw::inside);
  REQUIRE(older.tasks.size() == 1);
  CHECK(older.tasks.front().claw == Claw::inside);
}

TEST_CASE("the new day of a wrap that was left on stays to be done") {
  Rows past;
  past.on_feet = {on(Fixture::wrap, Foot::lh, before)};
  past.tasks = {to_do(TaskKind::wrap_off, Foot::lh, now)};
  CHECK(without_put_on_at(past, Fixture::wrap, now, four_feet).tasks.size() == 1);
}

TEST_CASE("one that was only seen to be there was not put on at this visit") {
  OnFootRow seen = on(Fixture::wrap, Foot::lh, now);
  seen.only_seen = true;
  CHECK_FALSE(is_put_on_at(seen, Fixture::wrap, now));
  seen.only_seen = false;
  CHECK(is_put_on_at(seen, Fixture::wrap, now));
  CHECK_FALSE(is_put_on_at(seen, Fixture::block, now));
}

TEST_CASE("only the feet that are named lose what was put on") {
  Rows past;
  past.on_feet = {on(Fixture::wrap, Foot::lh, now), on(Fixture::wrap, Foot::rh, now)};
  const Rows older = without_put_on_at(past, Fixture::wrap, now, {Foot::rh});
  REQUIRE(older.on_feet.size() == 1);
  CHECK(older.on_feet.front().foot == Foot::lh);
}
