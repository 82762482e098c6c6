#include "core/trade/call_line/detail_corrected.hpp"

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

struct Row {
  std::vector<std::string> lines;
  const char* turn;
};

void check(const std::vector<Row>& rows) {
  for (const Row& row : rows) {
    INFO(saying::joined(row.lines));
    CHECK(saying::printed(row.lines) == row.turn);
  }
}

}  // namespace

TEST_CASE("no, chronic mends the stage, no, slight the degree, no, heel the place") {
  check({{{"69 RH DD raw behind", "no, chronic"}, "69 // RH DD chronic behind"},
         {{"69 RH DD raw behind", "no, chronic", "RH DD chronic behind"},
          "69 // RH DD chronic behind"},
         {{"69 LH outside bruise toe bad", "no, slight"}, "69 // LH outside bruise toe, slight"},
         {{"69 LH outside SU middle", "no, heel"}, "69 // LH outside sole ulcer heel"},
         {{"69 LH outside WL heel", "no, toe"}, "69 // LH outside white line toe"},
         {{"69 both hinds DD raw", "no, chronic"}, "69 // LH DD chronic // RH DD chronic"}});
}

TEST_CASE("what is mended is the last finding it can be said of, with the foot named again too") {
  check({{{"69 RH DD raw; outside bruise, bad", "no, chronic"},
          "69 // RH DD chronic; outside bruise, bad"},
         {{"69 RH outside bruise, bad; DD raw", "no, slight"},
          "69 // RH outside bruise, slight; DD raw"},
         {{"69 RH DD raw; spray", "LH nothing found", "RH no, chronic"},
          "69 // RH DD chronic; spray // LH nothing found"}});
}

TEST_CASE("a foot corrected afterwards takes the mended finding along") {
  check({{{"69 RH DD raw behind; spray", "no, chronic", "no, left hind"},
          "69 // LH DD chronic behind; spray"}});
}

TEST_CASE("a finding mended to one that was called already is kept once") {
  check({{{"69 RH DD raw behind; DD chronic behind", "no, raw"}, "69 // RH DD raw behind"}});
}

TEST_CASE("with nothing to mend, or nothing new, the correction is refused") {
  for (const std::vector<std::string>& lines :
       std::vector<std::vector<std::string>>{{"69", "no, chronic"},
                                             {"69 RH outside SU", "no, chronic"},
                                             {"69 RH nothing found", "no, slight"},
                                             {"69 RH DD raw", "no, raw"},
                                             {"69 RH outside SU middle", "no, between"}}) {
    INFO(saying::joined(lines));
    const Faults faults = saying::refusal_of(lines);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().slug == "call-impossible");
  }
}
