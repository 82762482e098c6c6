#include "core/trade/call_line/said_date.hpp"

#include <string>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

std::string remedy_for_time(std::string_view line) {
  const Faults faults = saying::faults_of(line);
  REQUIRE(faults.size() == 1);
  return faults.front().remedy;
}

}  // namespace

TEST_CASE("a day with its month is refused with the date to say, this year or the next") {
  CHECK(remedy_for_time("see again 10 Dec") == "say \"2026-12-10\"");
  CHECK(remedy_for_time("LH SU; wrap on, off 3 January") == "say \"2027-01-03\"");
  CHECK(remedy_for_time("see again 31 June").empty());
  CHECK(saying::printed({"412 see again 2026-12-10"}) == "412 see again 2026-12-10");
}

TEST_CASE("a look asked for today is refused with what can be said") {
  CHECK(remedy_for_time("see again today") ==
        "say \"see again tomorrow\"; what is to be done today in words: \"note\" and the words");
}

TEST_CASE("a date before the visit is out of reach") {
  CHECK(saying::faults_of("see again 2026-11-01").front().slug == "call-impossible");
}
