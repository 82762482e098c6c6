#include "core/base/date.hpp"

#include <doctest/doctest.h>

#include <ostream>

namespace evenclaw {

namespace {

struct KnownDay {
  const char* text;
  int since_epoch;
  Weekday weekday;
};

// The proleptic Gregorian calendar as an independent calendar program gives it.
constexpr KnownDay known_days[] = {
    {"0001-01-01", -719162, Weekday::monday},  {"1582-10-15", -141427, Weekday::friday},
    {"1899-12-31", -25568, Weekday::sunday},   {"1900-02-28", -25509, Weekday::wednesday},
    {"1900-03-01", -25508, Weekday::thursday}, {"1969-12-31", -1, Weekday::wednesday},
    {"1970-01-01", 0, Weekday::thursday},      {"1972-02-29", 789, Weekday::tuesday},
    {"2000-02-29", 11016, Weekday::tuesday},   {"2000-03-01", 11017, Weekday::wednesday},
    {"2023-02-28", 19416, Weekday::tuesday},   {"2024-02-29", 19782, Weekday::thursday},
    {"2026-11-24", 20781, Weekday::tuesday},   {"2100-02-28", 47540, Weekday::sunday},
    {"2100-03-01", 47541, Weekday::monday},    {"9999-12-31", 2932896, Weekday::friday},
};

bool is_leap_by_the_rule(int year) {
  if (year % 400 == 0) return true;
  if (year % 100 == 0) return false;
  return year % 4 == 0;
}

CivilDate day_after(CivilDate date) {
  constexpr int lengths[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const bool leap_february = date.month == 2 && is_leap_by_the_rule(date.year);
  if (date.day < lengths[date.month - 1] + (leap_february ? 1 : 0)) {
    return {date.year, date.month, date.day + 1};
  }
  return date.month == 12 ? CivilDate{date.year + 1, 1, 1}
                          : CivilDate{date.year, date.month + 1, 1};
}

Day day(const char* text) {
  const std::optional<Day> found = day_from_text(text);
  REQUIRE(found.has_value());
  return *found;
}

}  // namespace

TEST_CASE("known days have their number, weekday and text") {
  for (const KnownDay& known : known_days) {
    CAPTURE(known.text);
    const std::optional<Day> found = day_from_text(known.text);
    REQUIRE(found.has_value());
    CHECK(found->since_epoch == known.since_epoch);
    CHECK(weekday_of(*found) == known.weekday);
    CHECK(to_text(*found) == known.text);
  }
}

TEST_CASE("every day of 200 years follows the one before and reads back") {
  CivilDate date{1900, 1, 1};
  const Day first = day("1900-01-01");
  const Day end = day("2100-01-01");
  int faults = 0;
  for (Day at = first; at < end; at = at + 1) {
    const bool fits =
        civil_of(at) == date && day_of(date) == at && day_from_text(to_text(at)) == at &&
        (static_cast<int>(weekday_of(at)) + 1) % 7 == static_cast<int>(weekday_of(at + 1));
    faults += fits ? 0 : 1;
    date = day_after(date);
  }
  CHECK(faults == 0);
  CHECK(date == CivilDate{2100, 1, 1});
  CHECK(end - first == 73049);
}

TEST_CASE("a date that does not exist is no day") {
  constexpr CivilDate impossible[] = {{2023, 2, 29}, {2100, 2, 29}, {2026, 4, 31}, {2026, 0, 1},
                                      {2026, 13, 1}, {2026, 1, 0},  {2026, 1, 32}, {0, 12, 31},
                                      {10000, 1, 1}, {-1, 1, 1}};
  for (const CivilDate& date : impossible) {
    CAPTURE(date.year);
    CAPTURE(date.month);
    CAPTURE(date.day);
    CHECK_FALSE(day_of(date).has_value());
  }
}

TEST_CASE("only year-month-day with all its digits is read as a day") {
  for (const char* text :
       {"", "2026-11-2", "2026-11-024", "26-11-24", "2026/11/24", "24-11-2026", "2026-11-24 ",
        " 2026-11-24", "2026-1a-24", "+026-11-24", "2026-02-30", "2026-11-24T00:00", "20261124"}) {
    CAPTURE(text);
    CHECK_FALSE(day_from_text(text).has_value());
  }
}

TEST_CASE("the next weekday lies one to seven days ahead") {
  const Day tuesday = day("2026-11-24");
  CHECK(to_text(next_weekday(tuesday, Weekday::thursday)) == "2026-11-26");
  CHECK(to_text(next_weekday(tuesday, Weekday::monday)) == "2026-11-30");
  CHECK(to_text(next_weekday(tuesday, Weekday::tuesday)) == "2026-12-01");
  CHECK(to_text(next_weekday(tuesday, Weekday::wednesday)) == "2026-11-25");
}

TEST_CASE("an instant is told in the time of its place") {
  CHECK(to_text(Instant{0, 0}) == "1970-01-01T00:00:00.000+00:00");
  CHECK(to_text(Instant{0, -90}) == "1969-12-31T22:30:00.000-01:30");
  CHECK(to_text(Instant{1'795'507'923'120, 60}) == "2026-11-24T09:12:03.120+01:00");
  CHECK(to_text(Instant{-1, 0}) == "1969-12-31T23:59:59.999+00:00");
}

TEST_CASE("an instant reads back exactly") {
  for (const std::int64_t ms :
       {std::int64_t{0}, std::int64_t{-1}, std::int64_t{951'868'799'999},
        std::int64_t{1'795'507'923'120}, std::int64_t{-2'208'988'800'001}}) {
    for (const std::int32_t offset : {0, 60, -60, 330, 345, -210, 840, -720, 1439, -1439}) {
      const Instant instant{ms, offset};
      CAPTURE(to_text(instant));
      CHECK(instant_from_text(to_text(instant)) == instant);
    }
  }
}

TEST_CASE("what is no instant is not read as one") {
  for (const char* text : {"", "2026-11-24T09:12:03+01:00", "2026-11-24T09:12:03.12+01:00",
                           "2026-11-24 09:12:03.120+01:00", "2026-11-24T24:00:00.000+01:00",
                           "2026-11-24T09:60:03.120+01:00", "2026-11-24T09:12:60.120+01:00",
                           "2026-11-31T09:12:03.120+01:00", "2026-11-24T09:12:03.120+24:00",
                           "2026-11-24T09:12:03.120+01:60", "2026-11-24T09:12:03.120-00:00",
                           "2026-11-24T09:12:03.120+0100", "2026-11-24T09:12:03.120+01:00 ",
                           "2026-11-24T09:1x:03.120+01:00", "2026-11-24T09:12:03.120 01:00"}) {
    CAPTURE(text);
    CHECK_FALSE(instant_from_text(text).has_value());
  }
}

TEST_CASE("the day of an instant is the day where the device was") {
  const Instant late_evening{day("2026-11-24").since_epoch * 86'400'000LL + 23 * 3'600'000LL, 0};
  CHECK(to_text(day_of(late_evening)) == "2026-11-24");
  CHECK(to_text(day_of(Instant{late_evening.ms, 120})) == "2026-11-25");
  CHECK(to_text(day_of(Instant{0, -1})) == "1969-12-31");
}

}  // namespace evenclaw
