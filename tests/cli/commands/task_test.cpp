// Closing and moving a task by its number in the list or by its words.
#include <doctest/doctest.h>

#include "tests/cli/program.hpp"

namespace evenclaw::test {
namespace {

/// 412 has a first look at her block, its check, a see again and a block off, in this order.
void block_412(const Workshop& workshop) {
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  REQUIRE(workshop
              .run({"record", "-"},
                   "412 LH outside sole ulcer middle, bad; block on inside; see again 28d\n"
                   "rest fine\ndone\n")
              .exit == 0);
}

}  // namespace

TEST_CASE("A task is closed by its number in the list, and told by its words") {
  const Workshop workshop;
  block_412(workshop);
  CHECK(has(workshop.run({"task", "412"}).out, "  1  by "));
  const Ran closed = workshop.run({"task", "412", "1", "--done", "looks well"});
  CHECK(closed.exit == 0);
  CHECK(has(closed.out, "closed 412: block still on? left hind"));
  CHECK_FALSE(has(workshop.run({"task", "412"}).out, "block still on?"));
}

TEST_CASE("A task is meant by the beginning of its words when only one begins so") {
  const Workshop workshop;
  block_412(workshop);
  const Ran unclear = workshop.run({"task", "412", "block", "--done", "off"});
  CHECK(unclear.exit == 2);
  CHECK(has(unclear.err, "which of her tasks?"));
  const Ran closed = workshop.run({"task", "412", "block off", "--done", "off"});
  CHECK(closed.exit == 0);
  CHECK(has(closed.out, "closed 412: block off"));
  CHECK(has(workshop.run({"task", "412"}).out, "block check"));
}

TEST_CASE("A number that is not in the list closes nothing") {
  const Workshop workshop;
  block_412(workshop);
  CHECK(workshop.run({"task", "412", "9", "--done", "off"}).exit == 2);
  CHECK(has(workshop.run({"task", "412"}).out, "  4  by "));
}

}  // namespace evenclaw::test
