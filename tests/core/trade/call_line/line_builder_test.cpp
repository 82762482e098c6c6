// Whom a detail belongs to: the rules for claws, places and degrees between two lesions.
#include "core/trade/call_line/line_builder.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

struct Row {
  const char* said;
  const char* read_back;
};

void check_each(const std::vector<Row>& rows) {
  for (const Row& row : rows) {
    CAPTURE(row.said);
    CHECK(saying::printed({std::string("412 LH ") + row.said}) ==
          std::string("412 // LH ") + row.read_back);
  }
}

}  // namespace

TEST_CASE("details belong to the lesion they stand with") {
  check_each({
      {"outside SU, bad", "outside sole ulcer, bad"},
      {"SU outside, bad", "outside sole ulcer, bad"},
      {"bad outside SU", "outside sole ulcer, bad"},
      {"SU; bad; outside", "outside sole ulcer, bad"},
      {"heel outside bruise", "outside bruise heel"},
      {"raw DD behind bad", "DD raw behind, bad"},
      {"outside SU bad opened block on inside wrap on",
       "outside sole ulcer, bad; opened; block on inside; wrap on"},
  });
}

TEST_CASE("between two lesions the separator tells whose a detail is") {
  check_each({
      {"SU, bad DD raw", "sole ulcer; DD raw, bad"},
      {"SU bad, DD raw", "sole ulcer, bad; DD raw"},
      {"SU bad DD raw", "sole ulcer, bad; DD raw"},
      {"SH, outside SU", "bruise; outside sole ulcer"},
      {"SH outside, SU", "outside bruise; sole ulcer"},
      {"outside SH inside SU", "outside bruise; inside sole ulcer"},
      {"SU outside DD", "outside sole ulcer; DD"},
      {"outside SH, SU", "outside bruise; sole ulcer"},
  });
}

TEST_CASE("a claw that could be of either lesion is asked about") {
  for (const char* text :
       {"LH SH outside SU", "LH SH outside block on", "LH SH outside length 78mm"}) {
    CAPTURE(text);
    const Faults faults = saying::faults_of(text);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().token == "outside");
  }
}

TEST_CASE("an act takes the claw right behind it or, after a separator, right before it") {
  check_each({
      {"block on inside", "block on inside"},
      {"inside block on", "block on inside"},
      {"SU, inside block on", "sole ulcer; block on inside"},
      {"SU, bad, inside blocked again", "sole ulcer, bad; blocked again inside"},
      {"opened outside", "opened outside"},
      {"block on inside SH slight", "bruise, slight; block on inside"},
  });
}

TEST_CASE("the white line is a place behind a bruise and a lesion elsewhere") {
  check_each({
      {"SH white line at the heel", "bruise white line at the heel"},
      {"outside white line at the heel", "outside white line heel"},
      {"white line side", "white line side"},
      {"SH; white line heel", "bruise; white line heel"},
      {"WLA toe", "white line abscess toe"},
  });
  CHECK_FALSE(saying::faults_of("LH SH white line heel").empty());
  CHECK_FALSE(saying::faults_of("LH SH, white line at the heel").empty());
}

TEST_CASE("a thing to measure is named or is the place it is measured at") {
  check_each({
      {"length 78mm", "length 78 mm"},
      {"toe 7.8 cm long", "length 78 mm"},
      {"outside heel 42 mm high", "outside heel height 42 mm"},
      {"sole 6.5mm thick", "sole thickness 6.5 mm"},
      {"SU bad, middle 6mm", "sole ulcer, bad; sole thickness 6 mm"},
  });
  for (const char* text :
       {"LH behind 42 mm", "LH length 0mm", "LH length 301mm", "LH length 7.85cm"}) {
    CAPTURE(text);
    CHECK_FALSE(saying::faults_of(text).empty());
  }
}

TEST_CASE("times are days, weeks, weekdays or words, behind an act that takes one") {
  check_each({
      {"see again 28d", "see again 28d"},
      {"see again in 4 weeks", "see again 28d"},
      {"look again, 2w", "see again 14d"},
      {"see again on Monday", "see again Mon"},
      {"see again a fortnight", "see again 14d"},
      {"wrap; off tomorrow", "wrap on, off 1d"},
      {"wrap still on, off Fri", "wrap still on, off Fri"},
  });
  for (const char* text :
       {"LH off Thu", "LH wrap off, off Thu", "LH see again 2.5d", "LH spray, off Thu",
        "LH see again 0d", "LH wrap on, off Thu, off Fri"}) {
    CAPTURE(text);
    CHECK_FALSE(saying::faults_of(text).empty());
  }
}

TEST_CASE("the leg she is lame on does not name the foot that is talked about") {
  CHECK(saying::printed({"412 lame LH and RH; RF SU"}) == "412 lame both hinds // RF sole ulcer");
  CHECK(saying::printed({"412 lame, LH SU"}) == "412 lame // LH sole ulcer");
  CHECK_FALSE(saying::faults_of("412 lame LH; SU").empty());
}
