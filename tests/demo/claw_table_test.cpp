#include "demo/claw_table.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace evenclaw::demo {

namespace {

ClawColumns whole_table(const ClawTableWanted& wanted) {
  ClawTable table(wanted);
  ClawColumns columns;
  REQUIRE(table.next(columns, wanted.rows));
  return columns;
}

double log_odds(double count, double of) {
  return std::log(count / (of - count));
}

}  // namespace

TEST_CASE("a table has the rows that were wanted, whichever parts it is given in") {
  const ClawTableWanted wanted{3, 5'001};
  ClawTable table(wanted);
  ClawColumns part;
  std::uint64_t rows = 0;
  std::vector<std::uint8_t> lesions;
  while (table.next(part, 700)) {
    rows += part.size();
    lesions.insert(lesions.end(), part.lesion.begin(), part.lesion.end());
  }
  CHECK(rows == wanted.rows);
  CHECK(lesions == whole_table(wanted).lesion);
}

TEST_CASE("a longer table begins with the shorter one, and another seed is another table") {
  const ClawColumns shorter = whole_table({3, 2'000});
  ClawColumns longer = whole_table({3, 9'000});
  longer.cut_to(2'000);
  CHECK(shorter.lesion == longer.lesion);
  CHECK(shorter.date == longer.date);
  CHECK(shorter.lesion != whole_table({4, 2'000}).lesion);
}

TEST_CASE("no rows are wanted and none are given") {
  ClawTable table({1, 0});
  ClawColumns columns;
  CHECK(!table.next(columns, 100));
}

TEST_CASE("values stay within what the format says, and only a lesion has zone and severity") {
  const ClawColumns columns = whole_table({5, 20'000});
  for (std::size_t row = 0; row < columns.size(); ++row) {
    const bool has_lesion = columns.lesion[row] > 0;
    const bool is_within = columns.foot[row] <= 3 && columns.claw[row] <= 1 &&
                           columns.parity[row] >= 1 && columns.parity[row] <= 9 &&
                           columns.lesion[row] <= 7 && columns.zone[row] <= 12 &&
                           columns.severity[row] <= 3 && columns.dim[row] >= 1;
    const bool fits =
        has_lesion == (columns.zone[row] > 0) && has_lesion == (columns.severity[row] > 0);
    if (is_within && fits) continue;
    CAPTURE(row);
    CHECK(is_within);
    CHECK(fits);
  }
}

TEST_CASE("hind and outside claws have lesions as much more often as the truth says") {
  const ClawColumns columns = whole_table({5, 400'000});
  double of_foot[4] = {};
  double of_claw[2] = {};
  for (std::size_t row = 0; row < columns.size(); ++row) {
    if (columns.lesion[row] == 0) continue;
    of_foot[columns.foot[row]] += 1;
    of_claw[columns.claw[row]] += 1;
  }
  const double rows = static_cast<double>(columns.size());
  // Over cows of all kinds an odds ratio is nearer to none than within one cow: by the usual factor
  // of sqrt(1 + 0.346 x variance), here 1.19 (Zeger 1988, from memory).
  const double shrunk = std::sqrt(1 + 0.346 * (0.6 * 0.6 + 0.9 * 0.9));
  const double hind =
      log_odds(of_foot[2] + of_foot[3], rows / 2) - log_odds(of_foot[0] + of_foot[1], rows / 2);
  const double outside = log_odds(of_claw[0], rows / 2) - log_odds(of_claw[1], rows / 2);
  CHECK(hind * shrunk == doctest::Approx(ClawTableTruth{}.hind).epsilon(0.08));
  CHECK(outside * shrunk == doctest::Approx(ClawTableTruth{}.outside).epsilon(0.12));
}

}  // namespace evenclaw::demo
