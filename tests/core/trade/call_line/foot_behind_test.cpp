#include "core/trade/call_line/foot_behind.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

struct Row {
  const char* line;
  const char* token;
  const char* remedy;
};

}  // namespace

TEST_CASE("a foot said behind what belongs to it is refused, never given to the foot before") {
  constexpr Row rows[] = {
      {"LH DD raw behind; RH DD raw behind; wrap LH, spray RH", "LH", "LH wrap;"},
      {"fine LH; SU outside middle bad RH", "LH", "LH fine;"},
      {"DD raw RH", "RH", "RH DD;"},
      {"LH SU; block on inside RH", "RH", "RH block on;"},
      {"vet RH", "RH", "RH vet;"},
      {"opened RH", "RH", "RH opened;"},
      {"trimmed LH", "LH", "LH trimmed;"},
      {"LH DD; spray hinds", "hinds", "hinds spray;"},
      {"wrap off LH, wrap on RH", "LH", "LH wrap off;"},
      {"nothing found LH, RH SU outside", "LH", "LH nothing found;"},
      {"LH DD; wrap LH and RH", "LH and RH", "LH and RH wrap;"},
      {"LH DD; wrap LH and spray RH", "LH", "LH wrap;"},
      {"LH DD raw, RH; LF fine", "RH", "RH DD;"},
      {"LH DD, wrap RH, done", "RH", "RH wrap;"},
      {"LH DD, vet RH told the farmer", "RH", "RH vet;"}};
  for (const Row& row : rows) {
    CAPTURE(row.line);
    const Faults faults = saying::faults_of(row.line);
    REQUIRE_FALSE(faults.empty());
    CHECK(faults.front().slug == "call-not-understood");
    CHECK(faults.front().token == row.token);
    CHECK(faults.front().remedy.find(std::string("say the foot first: ") + row.remedy) == 0);
  }
}

TEST_CASE("a foot of which something is said is no foot behind") {
  for (const std::string line :
       {"LH", "LH and RH DD", "LH SU RH DD raw", "LH DD raw, RH, RF fine", "LH SU; RH",
        "LH DD raw behind RH wrap on, off Thu", "LH fine RH fine", "LH SU, RH: DD",
        "LH fine, RH unfinished, kicked", "413 lame LH, RH SU outside", "413 lame LH RH SU outside",
        "413 lame LH, LH", "413 heifer LH", "412, 513 wraps off LH", "77 still lame LH"}) {
    CAPTURE(line);
    CHECK(saying::faults_of(line).empty());
  }
}

TEST_CASE("a half line that names a foot last may still go on") {
  const Faults faults = saying::faults_of("LH SU RH");
  REQUIRE(faults.size() == 1);
  CHECK(faults.front().message == "is \"RH\" meant for what stands before it?");
  CHECK(saying::faults_of("LH SU RH DD").empty());
}

TEST_CASE("a second lame leg without \"and\" is asked about, never lost") {
  constexpr Row rows[] = {{"504 lame LH, RH; LH SU", "RH", "lame LH and RH;"},
                          {"504 lame LH RH", "RH", "lame LH and RH;"},
                          {"504 lame on LH, RH", "RH", "lame on LH and RH;"},
                          {"504 lame LH, RH, SU outside", "RH", "lame LH and RH;"}};
  for (const Row& row : rows) {
    CAPTURE(row.line);
    const Faults faults = saying::faults_of(row.line);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().token == row.token);
    CHECK(faults.front().remedy.find(std::string("say: ") + row.remedy) == 0);
  }
}
