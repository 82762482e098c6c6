// Taking away the contents of a record, and with them what it asked of people.
#include <doctest/doctest.h>

#include <string>

#include "tests/cli/one_cow.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

namespace {

/// The id of the entry that holds the turn of 412.
std::string turn_of(const Workshop& workshop) {
  const Ran log = workshop.run({"log"});
  const std::size_t turn = log.out.find("\"kind\":\"turn\"");
  REQUIRE(turn != std::string::npos);
  const std::size_t line = log.out.rfind('\n', turn) + 1;
  const std::string lead = "\"id\":\"";
  const std::size_t id = log.out.find(lead, line);
  REQUIRE(id != std::string::npos);
  return log.out.substr(id + lead.size(), 36);
}

}  // namespace

TEST_CASE("the farmer's task does not vanish without a word with the record that made it") {
  const OneCowRecorded recorded;
  const Workshop& workshop = recorded.workshop;
  const std::string turn = turn_of(workshop);
  const Ran asked = workshop.run({"redact", turn, "--why", "another herd's cow"});
  CHECK(asked.exit == 1);
  CHECK(has(asked.err, "412: wrap off left hind (farmer, by "));
  CHECK(has(workshop.run({"due"}).out, "wrap off left hind"));

  const Ran sure = workshop.run({"redact", turn, "--why", "another herd's cow", "--sure"});
  CHECK(sure.exit == 0);
  CHECK(has(sure.out, "no longer due: 412 wrap off left hind (farmer, by "));
  CHECK_FALSE(has(workshop.run({"due"}).out, "wrap off left hind"));
}

TEST_CASE(
    "a wrap that the record told off is said to be open again, and the second time nothing is") {
  const OneCowRecorded recorded;
  const Workshop& workshop = recorded.workshop;
  REQUIRE(workshop.run({"told", "412 wrap off", "--today", "2099-01-01"}).exit == 0);
  const std::string log = workshop.run({"log"}).out;
  const std::size_t told = log.find("\"kind\":\"task_closed\"");
  REQUIRE(told != std::string::npos);
  const std::string id = log.substr(log.find("\"id\":\"", log.rfind('\n', told)) + 6, 36);
  CHECK(has(workshop.run({"redact", id, "--why", "another cow"}).err,
            "What it closed is open again: 412: wrap off left hind (farmer, by "));
  CHECK(has(workshop.run({"redact", id, "--why", "another cow", "--sure"}).out,
            "open again: 412 wrap off left hind (farmer, by "));
  const Ran again = workshop.run({"redact", id, "--why", "another cow", "--sure"});
  CHECK(again.exit == 1);
  CHECK(has(again.err, "nothing-to-do"));
}

TEST_CASE("a cow whose record was taken away still shows on the sheet and when she is asked for") {
  const OneCowRecorded recorded;
  const Workshop& workshop = recorded.workshop;
  REQUIRE(
      workshop.run({"redact", turn_of(workshop), "--why", "another herd's cow", "--sure"}).exit ==
      0);
  const Ran sheet = workshop.run({"sheet", "--text"});
  CHECK(has(sheet.out, "412 was there; a record of her was removed on "));
  const Ran cow = workshop.run({"show", "cow", "412"});
  CHECK(has(cow.out, "what was recorded of her was removed on "));
  CHECK(has(cow.out, ": another herd's cow"));
}
