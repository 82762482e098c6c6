#include "report/pdf/strip.hpp"

#include <doctest/doctest.h>

namespace evenclaw {
namespace {

Strip bare_strip(double height, double gap_before = 0) {
  Strip strip;
  strip.height = height;
  strip.gap_before = gap_before;
  strip.pieces.emplace_back(line({0, height}, {10, height}, {}));
  return strip;
}

double bottom_of(const Piece& piece) {
  return extent_of(piece).bottom;
}

}  // namespace

TEST_CASE("High columns whose lines end together are cut between them") {
  const Strips strips =
      beside({{bare_strip(40), bare_strip(40)}, {bare_strip(40), bare_strip(40)}});
  REQUIRE(strips.size() == 2);
  CHECK(strips[0].pieces.size() == 2);
  CHECK(strips[1].height == doctest::Approx(40));
}

TEST_CASE("Low columns are one strip") {
  const Strips strips = beside({{bare_strip(4), bare_strip(4)}, {bare_strip(4), bare_strip(4)}});
  REQUIRE(strips.size() == 1);
  CHECK(strips[0].height == doctest::Approx(8));
  CHECK(beside({}).empty());
  CHECK(beside({{}, {}}).empty());
}

TEST_CASE("A line beside two others holds them together") {
  const Strips strips = beside({{bare_strip(80)}, {bare_strip(40), bare_strip(40)}});
  REQUIRE(strips.size() == 1);
  CHECK(strips[0].height == doctest::Approx(80));
  CHECK(bottom_of(strips[0].pieces[1]) == doctest::Approx(40));
  CHECK(bottom_of(strips[0].pieces[2]) == doctest::Approx(80));
}

TEST_CASE("What shares a strip is read column by column") {
  const Strips strips = beside({{bare_strip(9, 1)}, {bare_strip(4), bare_strip(5)}});
  REQUIRE(strips.size() == 1);
  CHECK(bottom_of(strips[0].pieces[0]) == doctest::Approx(10));
  CHECK(bottom_of(strips[0].pieces[2]) == doctest::Approx(9));
}

TEST_CASE("Room between lines stays where no column has anything") {
  const Strips strips = beside({{bare_strip(40), bare_strip(40, 3)}, {bare_strip(40)}});
  REQUIRE(strips.size() == 2);
  CHECK(strips[1].gap_before == doctest::Approx(3));
}

TEST_CASE("Columns whose lines never end together are put side by side line by line") {
  const Strips long_words(100, bare_strip(5));
  const Strips long_label(60, bare_strip(9.37));
  const Strips strips = beside({long_label, long_words});
  REQUIRE(strips.size() == 100);
  CHECK(strips[0].height == doctest::Approx(9.37));
  CHECK(strips[99].pieces.size() == 1);
}

TEST_CASE("Room above and below belongs to the first and the last strip") {
  const Strips strips = padded({bare_strip(4), bare_strip(4)}, 1, 2);
  CHECK(strips[0].height == doctest::Approx(5));
  CHECK(bottom_of(strips[0].pieces[0]) == doctest::Approx(5));
  CHECK(strips[1].height == doctest::Approx(6));
  CHECK(padded({}, 1, 2).empty());
}

TEST_CASE("Of two gaps that meet the wider one counts") {
  Strip first = bare_strip(4);
  first.gap_after = 2;
  CHECK(height_of({first, bare_strip(4, 5)}) == doctest::Approx(13));
  CHECK(height_of({first, bare_strip(4, 1)}) == doctest::Approx(10));
}

}  // namespace evenclaw
