// Days, instants and weekdays without a clock, a locale or a time zone table.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/enum_words.hpp"

namespace evenclaw {

enum class Weekday { monday, tuesday, wednesday, thursday, friday, saturday, sunday };

template <>
struct EnumWords<Weekday> {
  static constexpr EnumWord<Weekday> table[] = {
      {Weekday::monday, "monday"},       {Weekday::tuesday, "tuesday"},
      {Weekday::wednesday, "wednesday"}, {Weekday::thursday, "thursday"},
      {Weekday::friday, "friday"},       {Weekday::saturday, "saturday"},
      {Weekday::sunday, "sunday"}};
};

struct CivilDate {
  int year;
  int month;  // 1-12
  int day;    // 1-31
  friend bool operator==(const CivilDate&, const CivilDate&) = default;
};

/// A calendar day in the herd's time zone: days since 1970-01-01 (proleptic Gregorian).
struct Day {
  std::int32_t since_epoch = 0;

  // NOLINTNEXTLINE(modernize-use-nullptr): the 0 of a rewritten a < b is no null pointer.
  friend auto operator<=>(const Day&, const Day&) = default;

  friend Day operator+(Day day, int days) { return {day.since_epoch + days}; }

  friend Day operator-(Day day, int days) { return {day.since_epoch - days}; }

  friend int operator-(Day a, Day b) { return a.since_epoch - b.since_epoch; }
};

/// Years 0001-9999; nothing when the date does not exist.
std::optional<Day> day_of(CivilDate date);
CivilDate civil_of(Day day);
Weekday weekday_of(Day day);

/// "2026-11-24"; reading accepts exactly this form (ISO 8601 extended calendar date).
std::string to_text(Day day);
std::optional<Day> day_from_text(std::string_view text);

/// The first day after `from` that falls on `weekday` (so 1 to 7 days ahead).
Day next_weekday(Day from, Weekday weekday);

/// Wall time as the device showed it: milliseconds since the epoch (UTC) and the offset in minutes.
struct Instant {
  std::int64_t ms = 0;
  std::int32_t offset_min = 0;

  friend bool operator==(const Instant&, const Instant&) = default;
};

/// RFC 3339 with milliseconds and offset, "2026-11-24T09:12:03.120+01:00"; reads back exactly.
std::string to_text(Instant instant);
std::optional<Instant> instant_from_text(std::string_view text);

/// The calendar day at the instant's own offset.
Day day_of(Instant instant);

}  // namespace evenclaw
