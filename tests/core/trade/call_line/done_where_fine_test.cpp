// What is done because something is wrong does not go to a foot only because "nothing found" was
// the last thing said: the foot with the ulcer may be meant.
#include "core/trade/call_line/done_where_fine.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;
using saying::printed;
using saying::refusal_of;

TEST_CASE("a treatment behind nothing found is asked about, and both feet are offered") {
  const struct {
    const char* said;
    const char* offered;
  } rows[] = {{"block on inside", "block on inside}"},
              {"wrap on, off 3d", "wrap on}"},
              {"opened", "opened}"},
              {"loose horn off", "loose horn off}"},
              {"spray", "spray}"},
              {"paste with bluemix", "paste}"},
              {"vet", "vet}"},
              {"see again 28d", "see again}"}};

  for (const auto& row : rows) {
    CAPTURE(row.said);
    const Faults faults = refusal_of({"412 LH SU outside", "RH nothing found", row.said});
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().slug == "call-impossible");
    CHECK(faults.front().message == "\"{" + std::string(row.offered) +
                                        "\" would go to {RH}, of which \"{nothing found}\" was "
                                        "said");
    CHECK(faults.front().remedy == "say the foot with it: \"{LH " + std::string(row.offered) +
                                       "\"; or, if it is meant, \"{RH " + row.offered + "\"");
  }
}

TEST_CASE("with no one foot that could be meant instead only this one is offered") {
  for (const std::vector<std::string>& lines : std::vector<std::vector<std::string>>{
           {"412 LH nothing found", "block on inside"},
           {"412 both hinds nothing found", "block on inside"},
           {"412 LF SU; RH DD raw; LH nothing found", "block on inside"},
           {"412 LH SU; nothing after all", "block on inside"}}) {
    INFO("first line: ", lines.front());
    const Faults faults = refusal_of(lines);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().remedy ==
          "say the foot with it: \"{LH block on inside}\", if that one is meant");
  }
}

TEST_CASE("one line that says both is asked about as well") {
  CHECK(saying::faults_of("412 LH SU outside; RH nothing found; block on inside").size() == 1);
  CHECK(saying::faults_of("412 LH SU outside; RH nothing found; vet").size() == 1);
}

TEST_CASE("named again with what is done there, the foot is meant") {
  CHECK(printed({"412 LH SU", "RH nothing found", "RH wrap on, off 3d", "see again 7d"}) ==
        "412 // LH sole ulcer // RH wrap on, off 3d; see again 7d; nothing found");
  CHECK(printed({"412 LH SU", "RH nothing found", "LH block on inside"}) ==
        "412 // LH sole ulcer; block on inside // RH nothing found");
}

TEST_CASE("a foot treated before nothing was found there stays treated") {
  CHECK(printed({"412 LH spray; nothing found"}) == "412 // LH spray; nothing found");
}

TEST_CASE("what becomes of a block or wrap of last time goes with nothing found") {
  for (const char* act : {"wrap off", "wrap came off by itself", "wrap still on", "block taken off",
                          "block came off by itself", "block still on", "block refitted inside",
                          "trimmed", "length 78 mm", "note: stands well", "told the farmer"}) {
    CAPTURE(act);
    CHECK(refusal_of({"412 LH SU", "RH nothing found", act}).empty());
  }
}

TEST_CASE("a foot with nothing to see is left to the vet when none has a finding") {
  CHECK(printed({"412 lame LH", "LH nothing found", "vet; see again 7d"}) ==
        "412 lame LH // LH vet; see again 7d; nothing found");
}

TEST_CASE("a foot that carries a block of last time is seen again though nothing is found there") {
  CHECK(printed({"412 LH SU", "RH block still on; nothing found; see again 14d"}) ==
        "412 // LH sole ulcer // RH block still on; see again 14d; nothing found");
}

TEST_CASE("what is done on both feet does not go to one where nothing was found") {
  const struct {
    const char* called;
    const char* done;
  } rows[] = {{"412 LH DD; RH fine", "both wrapped"},
              {"412 LH DD; RH fine", "spray both"},
              {"412 LH fine; RH DD", "both blocked"},
              {"412 LH nothing found; RH nothing found", "both wrapped"},
              {"412 both hinds nothing found", "both wrapped"}};

  for (const auto& row : rows) {
    CAPTURE(row.called);
    CAPTURE(row.done);
    REQUIRE(refusal_of({row.called}).empty());
    CHECK(refusal_of({row.called, row.done}).size() == 1);
    CHECK(saying::faults_of(std::string(row.called) + "; " + row.done).size() == 1);
  }
}

TEST_CASE("what is done on both feet goes to them when they are named for it or were called") {
  CHECK(printed({"412 LH fine; RH fine", "both hinds wrap on, off 3d"}) ==
        "412 // LH wrap on, off 3d; nothing found // RH wrap on, off 3d; nothing found");
  CHECK(printed({"412 LH DD; RH DD", "both wrapped, off 3d"}) ==
        "412 // LH DD; wrap on, off 3d // RH DD; wrap on, off 3d");
  CHECK(printed({"412 LH DD; RH fine", "both trimmed"}) ==
        "412 // LH DD; trimmed // RH nothing found; trimmed");
  CHECK(printed({"412 LH DD; RH DD", "both wrapped, off 3d", "no, only LH"}) ==
        "412 // LH DD; wrap on, off 3d // RH DD");
}
