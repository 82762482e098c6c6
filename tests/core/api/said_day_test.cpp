#include "core/api/said_day.hpp"

#include <doctest/doctest.h>

namespace evenclaw {
namespace {

Day day(const char* text) {
  return *day_from_text(text);
}

}  // namespace

TEST_CASE("A day of this year is said with weekday, day and month") {
  CHECK(said_day(day("2026-11-26"), day("2026-11-25")) == "Thu 26 Nov");
  CHECK(said_day(day("2026-01-01"), day("2026-12-31")) == "Thu 1 Jan");
}

TEST_CASE("A day of another year names that year") {
  CHECK(said_day(day("2027-01-01"), day("2026-12-31")) == "Fri 1 Jan 2027");
  CHECK(said_day(day("2025-12-31"), day("2026-01-01")) == "Wed 31 Dec 2025");
}

}  // namespace evenclaw
