#include "core/sheets/batch_words.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

BatchRow heifers() {
  BatchRow row;
  row.animals = AnimalKind::heifers;
  row.place = "far yard";
  row.counted = 12;
  row.together = 12;
  row.nothing_found = 12;
  row.lifted = four_feet;
  return row;
}

}  // namespace

TEST_CASE("a count says how many of what, where, which feet and what was found") {
  const BatchRow row = heifers();
  CHECK(batch_name(row, english_wording()) == "12 heifers, far yard");
  CHECK(batch_words(row, english_wording()) == "all four feet lifted, nothing found on 12");
}

TEST_CASE("who is apart is named and not among those nothing was found on") {
  BatchRow row = heifers();
  row.apart = 1;
  row.together = 11;
  row.nothing_found = 11;
  row.apart_words = "little black one";
  CHECK(batch_words(row, english_wording()) ==
        "all four feet lifted, nothing found on 11; called on her own: little black one");
}

TEST_CASE("trimmed is never told as nothing found, nor feet nobody said as lifted") {
  BatchRow row = heifers();
  row.nothing_found = 0;
  row.trimmed = Trimmed::yes;
  row.lifted = {};
  CHECK(batch_words(row, english_wording()) == "nobody said which feet were lifted, 12 trimmed");
}

TEST_CASE("where nobody was counted nothing is said of it") {
  CHECK(counted_together({}, english_wording()).empty());
  CHECK(counted_together({heifers()}, english_wording()).size() == 2);
}
