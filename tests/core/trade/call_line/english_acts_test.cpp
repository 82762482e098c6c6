// What is done beside knife and block, as it is called.
#include <doctest/doctest.h>

#include <string>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

struct Called {
  const char* said;
  const char* read_back;
};

void check_all(std::initializer_list<Called> rows) {
  for (const Called& row : rows) {
    CAPTURE(row.said);
    const std::string printed = saying::printed({"412", row.said});
    CHECK(printed == std::string("412") + row.read_back);
  }
}

}  // namespace

TEST_CASE("a block says what it is made of, a shoe and a glue-on say it by their name") {
  check_all({{"LH block on inside, wood", " // LH block on wood inside"},
             {"LH wooden block inside", " // LH block on wood inside"},
             {"LH inside rubber block", " // LH block on rubber inside"},
             {"LH shoe on inside, off in 4 weeks", " // LH shoe inside, off 28d"},
             {"LH inside glue-on", " // LH glue on inside"},
             {"LH block refitted inside plastic", " // LH block refitted plastic inside"},
             {"LH block left on", " // LH block still on"},
             {"LH shoe lost", " // LH block came off"}});
}

TEST_CASE("a bandage is a wrap") {
  check_all({{"RH bandage, off Thu", " // RH wrap on, off Thu"},
             {"RH bandage off", " // RH wrap taken off"},
             {"RH bandage lost", " // RH wrap came off by itself"},
             {"RH bandage left on", " // RH wrap still on"}});
}

TEST_CASE("knife work, powder and gel go with the foot and claw they are said of") {
  check_all({{"LH outside loose horn off; modelled inside",
              " // LH loose horn off outside; modelled inside"},
             {"LH powder with greendust; gel", " // LH powder with greendust; gel"},
             {"LH photo", " // LH photo"}});
}

TEST_CASE("what becomes of her is said of her, whatever foot was named last") {
  check_all({{"LH SU; to straw; near the parlour; short walks",
              " to straw; near the parlour; short walk // LH sole ulcer"},
             {"LH SU; marked with a leg band", " marked band // LH sole ulcer"},
             {"LH SU; marked, paint", " marked paint // LH sole ulcer"},
             {"LH SU; cull advised", " cull advised // LH sole ulcer"},
             {"pain relief given by the vet", " pain relief given by the vet"},
             {"pain relief asked for, from the farmer", " pain relief asked for by the farmer"}});
}

TEST_CASE("each of them can be taken back") {
  struct Row {
    const char* said;
    const char* back;
    const char* left;
  };

  constexpr Row rows[] = {
      {"LH SU; wooden block inside", "no, no block", "412 // LH sole ulcer"},
      {"LH SU; wooden block inside", "no, no shoe", ""},
      {"LH SU; shoe inside", "no, no shoe", "412 // LH sole ulcer"},
      {"LH SU; bandage", "no, no wrap", "412 // LH sole ulcer"},
      {"LH SU; modelled outside", "no, no modelled", "412 // LH sole ulcer"},
      {"LH SU; outside stump", "no, no stump", "412 // LH sole ulcer"},
      {"LH SU; powder with greendust", "no, no powder", "412 // LH sole ulcer"},
      {"LH SU; to straw", "no, no straw pen", "412 // LH sole ulcer"},
      {"LH SU; paint mark", "no, no paint mark", "412 // LH sole ulcer"},
      {"LH SU; pain relief given by the vet", "no, no pain relief given", "412 // LH sole ulcer"},
      {"LH SU; photo", "no, no photo", "412 // LH sole ulcer"}};
  for (const Row& row : rows) {
    CAPTURE(row.said);
    CAPTURE(row.back);
    const Faults faults = saying::refusal_of({"412", row.said, row.back});
    CHECK(faults.empty() == (row.left[0] != '\0'));
    if (faults.empty()) CHECK(saying::printed({"412", row.said, row.back}) == row.left);
  }
}

TEST_CASE("paint is no block, wood no mark, and nobody gives a wrap") {
  for (const char* said :
       {"LH block on inside, paint", "LH SU; marked, wood", "LH wrap on, rubber",
        "LH wrap on by the vet", "LH wrap on as the vet said", "LH SU; morning"}) {
    CAPTURE(said);
    CHECK_FALSE(saying::faults_of(said).empty());
  }
}

TEST_CASE("who gave it and on whose direction stand before the name or behind it") {
  check_all({{"LH DD; spray by the vet", " // LH DD; spray by the vet"},
             {"LH DD; paste with green stuff by the farmer, as the vet said",
              " // LH DD; paste by the farmer as the vet said with green stuff"},
             {"injection given by vet with \"two by the vet\"",
              " injected by the vet with \"two by the vet\""},
             {"given whitemix prescribed by the vet", " given as the vet said with whitemix"}});
}

TEST_CASE("a withdrawal told by mouth has a time, and a milking when one is named") {
  check_all({{"milk withheld until Thu evening milking", " milk withheld till Thu evening"},
             {"withdrawal 3 days", " withdrawal 3d"},
             {"milk and meat withheld till 2026-12-09", " withdrawal till 2026-12-09"},
             {"meat held back, 4 weeks", " meat withheld 28d"},
             {"no withdrawal", " no withdrawal"},
             {"milk withheld tomorrow morning", " milk withheld 1d morning"}});
  for (const char* said : {"milk withheld", "milk withheld evening", "milk withheld 4"}) {
    CAPTURE(said);
    CHECK_FALSE(saying::faults_of(said).empty());
  }
}

TEST_CASE("a medicine and a withdrawal are taken back by what they are") {
  CHECK(saying::printed({"412", "injected with a1 by the vet; milk withheld 4d",
                         "no, no injected; no, not milk withheld"}) == "412");
}

TEST_CASE("a missing claw is told with the claw, by whatever word") {
  check_all(
      {{"LH outside claw missing; inside SU", " // LH inside sole ulcer; claw missing outside"},
       {"LH outside stump", " // LH claw missing outside"},
       {"LH stump outside; nothing found", " // LH nothing found; claw missing outside"}});
}
