#include "core/base/date.hpp"

#include <array>
#include <cstddef>

namespace evenclaw {

namespace {

constexpr std::int64_t ms_per_minute = 60'000;
constexpr std::int64_t ms_per_day = 86'400'000;
constexpr std::int64_t days_per_era = 146'097;  // 400 Gregorian years
constexpr std::int64_t epoch_from_march_0000 = 719'468;

constexpr std::int64_t floor_div(std::int64_t a, std::int64_t b) {
  return a / b - (a % b < 0 ? 1 : 0);
}

constexpr std::int64_t floor_mod(std::int64_t a, std::int64_t b) {
  return a - floor_div(a, b) * b;
}

bool is_leap(int year) {
  return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
}

int days_in_month(int year, int month) {
  constexpr std::array<int, 12> days = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return month == 2 && is_leap(year) ? 29 : days[static_cast<std::size_t>(month - 1)];
}

// A year that starts in March ends with its leap day, so month lengths follow one line:
// March, April, ... begin at day (153 m + 2) / 5.
std::int64_t day_of_march_year(int month, int day) {
  const int months_after_march = month > 2 ? month - 3 : month + 9;
  return (153 * months_after_march + 2) / 5 + day - 1;
}

void append_digits(std::string& out, std::int64_t value, std::size_t width) {
  const std::string digits = std::to_string(value);
  if (digits.size() < width) out.append(width - digits.size(), '0');
  out += digits;
}

// The number in text[from, from + width), or -1 when a character is no digit.
int digits_at(std::string_view text, std::size_t from, std::size_t width) {
  int value = 0;
  for (const char c : text.substr(from, width)) {
    if (c < '0' || c > '9') return -1;
    value = value * 10 + (c - '0');
  }
  return value;
}

// Every `shape` character that is no 'd' must stand in the text as it is.
bool has_shape(std::string_view text, std::string_view shape) {
  if (text.size() != shape.size()) return false;
  for (std::size_t i = 0; i < shape.size(); ++i) {
    const bool fits = shape[i] == 'd' ? text[i] >= '0' && text[i] <= '9' : text[i] == shape[i];
    if (!fits) return false;
  }
  return true;
}

// Milliseconds since midnight of "09:12:03.120", or nothing.
std::optional<std::int64_t> time_of_day(std::string_view text) {
  if (!has_shape(text, "dd:dd:dd.ddd")) return std::nullopt;
  const int hour = digits_at(text, 0, 2);
  const int minute = digits_at(text, 3, 2);
  const int second = digits_at(text, 6, 2);
  if (hour > 23 || minute > 59 || second > 59) return std::nullopt;
  return ((hour * 60 + minute) * 60 + second) * std::int64_t{1000} + digits_at(text, 9, 3);
}

// Minutes east of UTC of "+01:00"; "-00:00" would be a second spelling of zero and is refused.
std::optional<std::int32_t> offset_from_text(std::string_view text) {
  if (!has_shape(text, "+dd:dd") && !has_shape(text, "-dd:dd")) return std::nullopt;
  const int hours = digits_at(text, 1, 2);
  const int minutes = digits_at(text, 4, 2);
  if (hours > 23 || minutes > 59) return std::nullopt;
  const int size = hours * 60 + minutes;
  if (text[0] == '+') return size;
  return size == 0 ? std::nullopt : std::optional<std::int32_t>(-size);
}

std::int64_t local_ms(Instant instant) {
  return instant.ms + instant.offset_min * ms_per_minute;
}

}  // namespace

std::optional<Day> day_of(CivilDate date) {
  if (date.year < 1 || date.year > 9999 || date.month < 1 || date.month > 12) return std::nullopt;
  if (date.day < 1 || date.day > days_in_month(date.year, date.month)) return std::nullopt;
  const std::int64_t march_year = date.month > 2 ? date.year : date.year - 1;
  const std::int64_t era = floor_div(march_year, 400);
  const std::int64_t year_of_era = march_year - era * 400;
  const std::int64_t day_of_era = year_of_era * 365 + year_of_era / 4 - year_of_era / 100 +
                                  day_of_march_year(date.month, date.day);
  return Day{static_cast<std::int32_t>(era * days_per_era + day_of_era - epoch_from_march_0000)};
}

CivilDate civil_of(Day day) {
  const std::int64_t from_march_0000 = day.since_epoch + epoch_from_march_0000;
  const std::int64_t era = floor_div(from_march_0000, days_per_era);
  const std::int64_t day_of_era = from_march_0000 - era * days_per_era;
  // Take the leap days out (one in 4 years, none in 100, one in 400); what is left are 365s.
  const std::int64_t year_of_era =
      (day_of_era - day_of_era / 1'460 + day_of_era / 36'524 - day_of_era / 146'096) / 365;
  const std::int64_t day_of_year =
      day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
  const std::int64_t months_after_march = (5 * day_of_year + 2) / 153;
  const int month =
      static_cast<int>(months_after_march < 10 ? months_after_march + 3 : months_after_march - 9);
  const std::int64_t year = era * 400 + year_of_era + (month <= 2 ? 1 : 0);
  return {static_cast<int>(year), month,
          static_cast<int>(day_of_year - (153 * months_after_march + 2) / 5 + 1)};
}

Weekday weekday_of(Day day) {
  constexpr std::int64_t weekday_of_epoch = 3;  // 1970-01-01 was a Thursday
  return static_cast<Weekday>(floor_mod(day.since_epoch + weekday_of_epoch, 7));
}

std::string to_text(Day day) {
  const CivilDate date = civil_of(day);
  std::string text;
  append_digits(text, date.year, 4);
  text += '-';
  append_digits(text, date.month, 2);
  text += '-';
  append_digits(text, date.day, 2);
  return text;
}

std::optional<Day> day_from_text(std::string_view text) {
  if (!has_shape(text, "dddd-dd-dd")) return std::nullopt;
  return day_of(CivilDate{digits_at(text, 0, 4), digits_at(text, 5, 2), digits_at(text, 8, 2)});
}

Day next_weekday(Day from, Weekday weekday) {
  const int ahead = static_cast<int>(weekday) - static_cast<int>(weekday_of(from));
  return from + (ahead > 0 ? ahead : ahead + 7);
}

std::string to_text(Instant instant) {
  const std::int64_t in_day = floor_mod(local_ms(instant), ms_per_day);
  std::string text = to_text(day_of(instant)) + 'T';
  append_digits(text, in_day / 3'600'000, 2);
  text += ':';
  append_digits(text, in_day / 60'000 % 60, 2);
  text += ':';
  append_digits(text, in_day / 1'000 % 60, 2);
  text += '.';
  append_digits(text, in_day % 1'000, 3);
  const std::int32_t offset = instant.offset_min;
  text += offset < 0 ? '-' : '+';
  append_digits(text, (offset < 0 ? -offset : offset) / 60, 2);
  text += ':';
  append_digits(text, (offset < 0 ? -offset : offset) % 60, 2);
  return text;
}

std::optional<Instant> instant_from_text(std::string_view text) {
  constexpr std::size_t full_length = 29;
  if (text.size() != full_length || text[10] != 'T') return std::nullopt;
  const std::optional<Day> day = day_from_text(text.substr(0, 10));
  const std::optional<std::int64_t> in_day = time_of_day(text.substr(11, 12));
  const std::optional<std::int32_t> offset = offset_from_text(text.substr(23));
  if (!day || !in_day || !offset) return std::nullopt;
  return Instant{day->since_epoch * ms_per_day + *in_day - *offset * ms_per_minute, *offset};
}

Day day_of(Instant instant) {
  return {static_cast<std::int32_t>(floor_div(local_ms(instant), ms_per_day))};
}

}  // namespace evenclaw
