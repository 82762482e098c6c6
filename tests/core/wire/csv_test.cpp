#include "core/wire/csv.hpp"

#include <doctest/doctest.h>

#include <ostream>

#include "tests/core/wire/sample_types.hpp"

namespace evenclaw {

namespace {

std::string line_of(std::string text) {
  return csv_line({std::move(text)});
}

}  // namespace

TEST_CASE("rows are written below a line of column names") {
  FlatRow row;
  row.name = "Even";
  row.height = Length{-5};
  CHECK(csv_of(std::vector<FlatRow>{row}) ==
        "herd,day,name,weekday,is_open,count,halves,height,remark,until\r\n"
        "00000000-0000-0000-0000-000000000000,1970-01-01,Even,monday,0,0,0+0,-5,,\r\n");
}

TEST_CASE("no rows give the line of names alone") {
  CHECK(csv_of(std::vector<FlatRow>{}) ==
        "herd,day,name,weekday,is_open,count,halves,height,remark,until\r\n");
}

TEST_CASE("text with commas, quotes or line ends is quoted") {
  CHECK(line_of("heel") == "heel\r\n");
  CHECK(line_of("heel, bad") == "\"heel, bad\"\r\n");
  CHECK(line_of("the \"good\" claw") == "\"the \"\"good\"\" claw\"\r\n");
  CHECK(line_of("two\nlines") == "\"two\nlines\"\r\n");
  CHECK(line_of("two\rlines") == "\"two\rlines\"\r\n");
  CHECK(line_of(" 412 ") == " 412 \r\n");
}

TEST_CASE("an empty text is told from an empty cell") {
  CHECK(csv_line({std::string(), Cell{}, std::int64_t{0}}) == "\"\",,0\r\n");
}

TEST_CASE("text that a spreadsheet would run is disarmed, numbers are not touched") {
  CHECK(line_of("=1+1") == "'=1+1\r\n");
  CHECK(line_of("+49") == "'+49\r\n");
  CHECK(line_of("-") == "'-\r\n");
  CHECK(line_of("@x") == "'@x\r\n");
  CHECK(line_of("\tx") == "'\tx\r\n");
  CHECK(line_of("=a,b") == "\"'=a,b\"\r\n");
  CHECK(line_of("a=1") == "a=1\r\n");
  CHECK(csv_line({std::int64_t{-412}}) == "-412\r\n");
}

}  // namespace evenclaw
