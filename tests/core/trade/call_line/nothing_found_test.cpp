// "Nothing found" and a finding of the same foot: one of them is wrong, and nobody guesses which.
#include "core/trade/call_line/nothing_found.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;
using saying::printed;
using saying::refusal_of;

namespace {

struct Row {
  std::vector<std::string> lines;
  std::string remedy;  // what it holds
};

void check_each_refused(const std::vector<Row>& rows) {
  for (const Row& row : rows) {
    INFO("last line: ", row.lines.back());
    const Faults faults = refusal_of(row.lines);
    REQUIRE(faults.size() == 1);
    INFO("remedy: ", faults.front().remedy);
    CHECK(faults.front().slug == "call-impossible");
    CHECK(faults.front().remedy.find(row.remedy) != std::string::npos);
  }
}

}  // namespace

TEST_CASE("a lesion on a foot that was said to have nothing found is asked about") {
  check_each_refused({
      {{"412 LH nothing found", "DD raw behind"}, "LH no}, {DD}"},
      {{"412 LH nothing found", "LH DD raw behind"}, "LH no}, {DD}"},
      {{"412 LH and RH nothing found", "LH SU outside"}, "LH no}, {sole ulcer}"},
      {{"412 LH SU", "nothing after all", "bruise"}, "LH no}, {bruise}"},
      {{"412 LH nothing found", "LH long toe"}, "never mind"},
  });
}

TEST_CASE("one line that calls both is asked about, and both are pointed at") {
  const Faults faults = saying::faults_of("412 LH nothing found; SU outside heel, bad; RH DD raw");
  REQUIRE(faults.size() == 1);
  CHECK(faults.front().token == "nothing found; SU outside heel, bad");
  CHECK(faults.front().remedy == "say which holds: \"LH nothing found\", or what was found");
  for (const char* line : {"412 LH and RH nothing found, SU outside",
                           "412 lame LH and nothing found; DD raw behind"}) {
    CAPTURE(line);
    CHECK(saying::faults_of(line).size() == 1);
  }
}

TEST_CASE("said as a correction the lesion takes the place of nothing found") {
  CHECK(printed({"412 LH nothing found", "no, SU outside"}) == "412 // LH outside sole ulcer");
  CHECK(printed({"412 LH nothing found", "RH SU", "LH no, DD raw behind"}) ==
        "412 // LH DD raw behind // RH sole ulcer");
  CHECK(printed({"412 LH nothing found, no, bruise slight"}) == "412 // LH bruise, slight");
  CHECK(printed({"412 both hinds nothing found", "no, DD raw"}) == "412 // LH DD raw // RH DD raw");
  CHECK(printed({"412 nothing found", "LH no, DD raw"}) == "412 rest fine // LH DD raw");
}

TEST_CASE("no, and a lesion, where a lesion stands is right or was wrong") {
  for (const std::vector<std::string>& lines : std::vector<std::vector<std::string>>{
           {"412 LH SU", "no, bruise"}, {"412 LH bruise; no, sole ulcer"}, {"412 LH", "no, SU"}}) {
    INFO("last line: ", lines.back());
    const Faults faults = refusal_of(lines);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().slug == "call-not-understood");
  }
}

TEST_CASE("without the comma there may be no such lesion, and nothing is taken") {
  CHECK(refusal_of({"412 LH nothing found", "no SU"}).size() == 1);
  CHECK(saying::faults_of("412 LH nothing found, no SU").size() == 1);
}

TEST_CASE("a nick of the knife goes with nothing found in either order") {
  CHECK(printed({"412 RH nothing found, nicked it"}) == "412 // RH blood drawn");
  CHECK(printed({"412 RH nicked it, nothing found"}) == "412 // RH blood drawn");
}

TEST_CASE("a finding moved to a foot was found there, whatever was said of that foot") {
  CHECK(printed({"412 RH nothing found", "LH SU", "no, right hind"}) == "412 // RH sole ulcer");
}

TEST_CASE("just the feet that were lifted leaves no rest that could be fine") {
  for (const std::string line :
       {"301 just LH DD raw; rest fine", "412 just RH, rest nothing found", "412 just RH, all good",
        "412 only LH SU; others fine", "412 just the backs: LH SU; RH DD; rest fine",
        "412 just the backs, nothing found; rest fine"}) {
    CAPTURE(line);
    const Faults faults = saying::faults_of(line);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().slug == "call-impossible");
  }
  CHECK(saying::refusal_of({"301 just LH", "DD raw", "rest fine"}).size() == 1);
}

TEST_CASE("the rest of the feet that were lifted may be fine") {
  for (const std::string line :
       {"412 just the backs, rest fine", "412 just the backs: LH SU; rest fine",
        "412 RH not lifted; LH SU; rest fine", "412 hinds not lifted, rest fine",
        "412 LH SU; rest fine"}) {
    CAPTURE(line);
    CHECK(saying::faults_of(line).empty());
  }
}
