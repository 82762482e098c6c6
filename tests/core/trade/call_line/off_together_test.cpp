#include "core/trade/call_line/off_together.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

struct Same {
  const char* line;
  const char* in_full;
};

}  // namespace

TEST_CASE("what became of a wrap and a block that are named together holds for both") {
  constexpr Same rows[] = {{"LH wrap and block off", "LH wrap off; block off"},
                           {"LH block and wrap off", "LH block off; wrap off"},
                           {"LH wrap and block taken off", "LH wrap off; block off"},
                           {"LH wrap and block gone", "LH wrap came off; block came off"},
                           {"LH wrap and block still on", "LH wrap still on; block still on"},
                           {"LH wrap & block don't know", "LH wrap don't know; block don't know"},
                           {"LH inside block and wrap off", "LH inside block off; wrap off"},
                           {"LH wrap and inside block off", "LH wrap off; inside block off"},
                           {"LH bandage and shoe off", "LH wrap off; block off"},
                           {"LH wraps and blocks off", "LH wrap off; block off"},
                           {"412, 513 wrap and block off", "news 412, 513 wrap off, block off"},
                           {"news 412 LH wrap, block off", "news 412 LH wrap off, LH block off"}};
  for (const Same& row : rows) {
    CAPTURE(row.line);
    const auto read = read_line(row.line, saying::in_crush(), english());
    const auto in_full = read_line(row.in_full, saying::in_crush(), english());
    REQUIRE(in_full);
    REQUIRE(read);
    CHECK(read->clauses == in_full->clauses);
  }
}

TEST_CASE("it is asked whether the first is off too where it may be put on today") {
  for (const char* line : {"LH wrap, block off", "LH DD raw; block, wrap still on",
                           "LH block inside and wrap off", "LH wrap, and inside block off"}) {
    CAPTURE(line);
    const Faults faults = saying::faults_of(line);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().slug == "call-not-understood");
  }
  CHECK(saying::faults_of("LH block inside and wrap off").front().remedy ==
        "of both: \"block taken off inside; wrap off\"; put on today: \"block on inside; wrap "
        "off\"");
}

TEST_CASE("what is said to be put on today is not off with the other") {
  constexpr Same rows[] = {{"LH DD raw; wrap on, block off", "LH DD raw; wrap on; block off"},
                           {"LH DD raw; wrap; block off", "LH DD raw; wrap on; block off"},
                           {"LH wrapped and block off", "LH wrap on; block off"},
                           {"LH wrap 3d and block off", "LH wrap on, off 3d; block off"},
                           {"LH wrap and block on inside", "LH wrap on; block on inside"},
                           {"LH wrap off and block on", "LH wrap off; block on"}};
  for (const Same& row : rows) {
    CAPTURE(row.line);
    CHECK(saying::printed({"412", row.line}) == saying::printed({"412", row.in_full}));
  }
}

TEST_CASE("in another language a wrap and a block are off together as well") {
  CHECK(saying::faults_of("HL Verband und Klotz ab", true, german()).empty());
  CHECK_FALSE(saying::faults_of("HL Verband, Klotz ab", true, german()).empty());
}
