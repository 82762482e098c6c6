#include "core/trade/call_line/misplaced.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

std::string remedy_of(std::string_view line) {
  const Faults faults = saying::faults_of(line);
  INFO(line);
  REQUIRE_FALSE(faults.empty());
  return faults.front().remedy;
}

}  // namespace

TEST_CASE("a wrap that is to come off is put on today") {
  const std::string wrap =
      "put on today and to come off then: \"wrap on, off 5d\"; if it is off by now, leave out the "
      "time";
  CHECK(remedy_of("LH wrap off in 5 days") == wrap);
  CHECK(remedy_of("LH wrap off 5d") == wrap);
  CHECK(remedy_of("LH wrap off Thu") == wrap);
  CHECK(remedy_of("LH block off in 28 days").find("\"block on inside, off 28d\"") !=
        std::string::npos);
}

TEST_CASE("a time behind anything else follows what takes one") {
  CHECK(remedy_of("LH opened Thu").find("follows \"see again\"") != std::string::npos);
}

TEST_CASE("a place behind in is of the inside claw, or is said without in") {
  CHECK(remedy_of("LH WL in heel") ==
        "on the inside claw: \"inside heel\"; the place alone: \"heel\"");
  CHECK(saying::faults_of("LH WL inside heel").empty());
  CHECK(saying::faults_of("LH WL heel").empty());
}

TEST_CASE("what was not done is not said, and what was is taken back") {
  CHECK(remedy_of("no block") ==
        "what was not done is not said; if it was said and is wrong: \"no, no block\"");
}

TEST_CASE("two claws with one lesion are said as both, or one after the other") {
  CHECK(remedy_of("LH inside and outside bruise") ==
        "say \"both claws\", or each claw with its own lesion");
}

TEST_CASE("pain relief is given or asked for") {
  CHECK(remedy_of("pain relief by the farmer") ==
        "which is it: \"pain relief given by the vet\", or \"pain relief asked for\"?");
}

TEST_CASE("the same as on another foot is said in full") {
  CHECK(remedy_of("RH same again") ==
        "say what was found; nothing is taken over from another foot, cow or visit");
  CHECK(remedy_of("RH same") ==
        "say it behind the lesion: \"sole ulcer, same\"; all that was found there last: \"same as "
        "last time\"");
}

TEST_CASE("a cow in one number word is said in digits") {
  CHECK(remedy_of("seven LH SU") ==
        "say the number of a cow in digits, or all of it as in four twelve; a time with its unit");
}

TEST_CASE("a detail in front of its foot shows where it stands") {
  CHECK(remedy_of("LH SU; RH z4") ==
        "name the lesion or the act it belongs to, foot first: \"LH outside sole ulcer\"");
}

TEST_CASE("a range of cow numbers is refused, for those between may be meant") {
  for (const std::string line : {"301-303 wraps off", "301 - 303 wraps off", "news 301–303 gone",
                                 "412, 301-303 wraps off", "301-303 LH DD"}) {
    CAPTURE(line);
    const Faults faults = saying::faults_of(line);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().remedy == "say each number: 301, 302, 303");
  }
  CHECK(saying::faults_of("301, 303 wraps off").empty());
}
