#include "core/trade/call_line/measure_reach.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>
#include <string>

#include "tests/core/trade/call_line/saying.hpp"
#include "tests/core/trade/call_line/worked_lines.hpp"

using namespace evenclaw;

TEST_CASE("a measure is taken up to both ends of what it can be and not beyond") {
  for (const MeasureKind kind :
       {MeasureKind::toe_length, MeasureKind::heel_height, MeasureKind::sole_thickness}) {
    const MeasureReach& reach = reach_of(kind);
    CAPTURE(static_cast<int>(kind));
    CHECK_FALSE(out_of_reach(kind, reach.least));
    CHECK_FALSE(out_of_reach(kind, reach.most));
    CHECK(out_of_reach(kind, Length{reach.least.tenths_mm - 1}));
    CHECK(out_of_reach(kind, Length{reach.most.tenths_mm + 1}));
    CHECK_FALSE(reach.source.empty());
  }
}

TEST_CASE("a measure out of reach is refused, and the slip of a factor ten is asked about") {
  struct Row {
    const char* line;
    const char* token;
    const char* remedy;
  };

  constexpr Row rows[] = {{"LH sole 60 mm", "60 mm", "was 6 mm meant?"},
                          {"LH sole 6 cm", "6 cm", "was 6 mm meant?"},
                          {"LH outside length 12 mm", "12 mm", "was 120 mm meant?"},
                          {"LH outside length 7.5 mm", "7.5 mm", "was 75 mm meant?"},
                          {"LH length 75 cm", "75 cm", ""},
                          {"LH heel 2 mm high", "2 mm", "was 20 mm meant?"},
                          {"LH heel 42 cm high", "42 cm", ""},
                          {"LH sole 0.5 mm", "0.5 mm", "was 5 mm meant?"},
                          {"LH sole 200 mm", "200 mm", "was 20 mm meant?"},
                          {"LH length 780mm", "780mm", "was 78 mm meant?"}};
  for (const Row& row : rows) {
    CAPTURE(row.line);
    const Faults faults = saying::faults_of(row.line);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().slug == "call-impossible");
    CHECK(faults.front().token == row.token);
    if (*row.remedy != '\0') CHECK(faults.front().remedy == row.remedy);
  }
}

TEST_CASE("what was measured and is wrong can be taken back, whatever it was") {
  CHECK(saying::faults_of("LH no, not 48 mm").empty());
  CHECK(saying::faults_of("LH no, no sole 60 mm").empty());
}

TEST_CASE("the page says how far each measure reaches") {
  std::ifstream file(saying::page);
  const std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
  for (const MeasureKind kind :
       {MeasureKind::toe_length, MeasureKind::heel_height, MeasureKind::sole_thickness}) {
    const MeasureReach& reach = reach_of(kind);
    const std::string row = "| " + to_text(reach.least) + " | " + to_text(reach.most) + " | " +
                            std::string(reach.source) + " |";
    CAPTURE(row);
    CHECK(text.find(row) != std::string::npos);
  }
}
