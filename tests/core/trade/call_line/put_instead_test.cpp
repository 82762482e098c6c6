#include "core/trade/call_line/put_instead.hpp"

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

struct PutRow {
  std::vector<std::string> lines;
  const char* turn;
};

void check_put(const std::vector<PutRow>& rows) {
  for (const PutRow& row : rows) {
    INFO(saying::joined(row.lines));
    CHECK(saying::printed(row.lines) == row.turn);
  }
}

}  // namespace

TEST_CASE("two claws mixed up are mended in one breath, and nothing is there twice") {
  check_put({{{"412 LH inside bruise, slight; outside SU middle", "no, outside bruise, inside SU"},
              "412 // LH outside bruise, slight; inside sole ulcer middle of the sole"},
             {{"412 LH inside bruise; outside SU", "no, bruise outside, SU inside"},
              "412 // LH outside bruise; inside sole ulcer"},
             {{"412 LH inside bruise; outside SU; no, outside bruise and inside SU, bad"},
              "412 // LH outside bruise; inside sole ulcer, bad"},
             {{"412 LH inside bruise; outside SU", "no, outside bruise; no, inside SU"},
              "412 // LH outside bruise; inside sole ulcer"}});
}

TEST_CASE("what nobody called again stands in the place of what lay on its claw") {
  check_put({{{"412 LH outside bruise; inside DS", "no, outside bruise, inside SU"},
              "412 // LH outside bruise; inside sole ulcer"},
             {{"412 LH outside DS; inside bruise", "no, outside bruise, inside SU"},
              "412 // LH outside bruise; inside sole ulcer"},
             {{"412 LH outside SU", "no, outside bruise, inside SU"},
              "412 // LH outside bruise; inside sole ulcer"}});
}

TEST_CASE("what nothing was said of in that breath stays, and skin is no claw") {
  check_put({{{"412 LH DD raw; inside bruise; outside SU", "no, outside bruise, inside SU"},
              "412 // LH DD raw; outside bruise; inside sole ulcer"},
             {{"412 LH outside SU; HHE", "no, inside SU, DD raw"},
              "412 // LH heel horn erosion; inside sole ulcer; DD raw"},
             {{"412 LH outside SU; block on inside", "no, inside SU; block outside"},
              "412 // LH inside sole ulcer; block on inside; block on outside"}});
}

TEST_CASE("both stand in the place of nothing found") {
  check_put({{{"412 LH nothing found", "no, outside bruise, inside SU"},
              "412 // LH outside bruise; inside sole ulcer"}});
}

TEST_CASE("where it cannot be known what they take the place of it is asked") {
  const Faults faults = saying::refusal_of(
      {"412 LH outside SU; inside DS; inside bruise", "no, inside SU, outside WLA"});
  REQUIRE(faults.size() == 1);
  CHECK(faults.front().message ==
        "of what was called on {LH} it is not clear what these take the place of");
  CHECK(faults.front().remedy ==
        "take back what was wrong, such as \"{LH no, no double sole}\", and say what was found");
}

TEST_CASE("two that were called so already are refused, and so is a foot of which nothing was") {
  CHECK_FALSE(
      saying::refusal_of({"412 LH outside SU; inside bruise", "no, outside SU, inside bruise"})
          .empty());
  CHECK_FALSE(saying::refusal_of({"412 LH", "no, outside SU, inside bruise"}).empty());
}

TEST_CASE("what was mended goes with its foot when that was wrong too") {
  check_put(
      {{{"412 LH inside bruise; outside SU", "no, outside bruise, inside SU", "no, right hind"},
        "412 // RH outside bruise; inside sole ulcer"}});
}

TEST_CASE("no wait, actually and scrap mend as no does") {
  check_put({{{"412 LH SU", "no wait, RH"}, "412 // RH sole ulcer"},
             {{"412 LH SU", "actually RH"}, "412 // RH sole ulcer"},
             {{"412 LH SU", "actually, right hind"}, "412 // RH sole ulcer"},
             {{"412 LH DD raw; wrap on", "scrap the wrap"}, "412 // LH DD raw"},
             {{"412 LH DD raw; bruise outside", "scrap the bruise"}, "412 // LH DD raw"},
             {{"412 LH DD raw", "actually chronic"}, "412 // LH DD chronic"}});
}
