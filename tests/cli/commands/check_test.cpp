#include <doctest/doctest.h>

#include <string>

#include "store/sqlite/connection.hpp"
#include "tests/cli/one_cow.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

namespace {

/// Its file then changed by hand.
struct Recorded : OneCowRecorded {
  void change(const std::string& sql) const {
    Connection(workshop.records(), Access::write).run(sql);
  }
};

}  // namespace

TEST_CASE("a sound file is told to read back whole, and its entries to be verified") {
  const Recorded recorded;
  const Ran ran = recorded.workshop.run({"check"});
  CHECK(ran.exit == 0);
  CHECK(has(ran.out, "the file reads back whole\n"));
  CHECK(has(ran.out, "entries verified\nAll is well.\n"));
}

TEST_CASE("a changed column that only the file's own check sees is told") {
  const Recorded recorded;
  recorded.change("UPDATE entry SET kind = 'batch' WHERE kind = 'turn'");
  const Ran ran = recorded.workshop.run({"check"});
  CHECK(ran.exit == 4);
  CHECK(has(ran.out, "the file does not read back whole\n"));
  CHECK(has(ran.out, "What the entry is found by does not fit it."));
  CHECK(has(recorded.workshop.run({"check", "--json"}).out, "row-unreadable"));
}

TEST_CASE("an entry that cannot be read any more does not keep the rest from being checked") {
  const Recorded recorded;
  recorded.change("UPDATE entry SET body = '{}' WHERE kind = 'turn'");
  const Ran ran = recorded.workshop.run({"check"});
  CHECK(ran.exit == 4);
  CHECK(has(ran.out, "entries verified\n"));
  CHECK(has(ran.out, "(entry "));
  CHECK(has(ran.out, "Not as it should be"));
}
