// Days as other programs write them: in which style a whole column is written, and the day of a
// cell.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// Which part stands first. Where the month is written as a word nothing is in doubt.
enum class DayOrder { year_month_day, day_month_year, month_day_year };

template <>
struct EnumWords<DayOrder> {
  static constexpr EnumWord<DayOrder> table[] = {{DayOrder::year_month_day, "ymd"},
                                                 {DayOrder::day_month_year, "dmy"},
                                                 {DayOrder::month_day_year, "mdy"}};
};

/// A style of writing: "2026-09-01" and "20260901" are two, "1.9.26" and "01.09.2026" are one.
struct DayStyle {
  char separator = '-';  // 0 when there is none
  DayOrder order = DayOrder::year_month_day;
  bool month_in_words = false;

  friend bool operator==(const DayStyle&, const DayStyle&) = default;
};

/// "day/month/year, as 31/12/2026".
std::string told_of(const DayStyle& style);

/// The style of a column, from all its cells; empty ones and what is no day in any style do not
/// count, and without a day there is no style. Year first where four digits stand first, or eight
/// without separator. With dots the day stands first (common practice in every language that writes
/// dots, no source). With a stroke, a hyphen or a blank either may: a number above 12 tells it,
/// else `hint`, which is what was said or what other columns of the file are. Faults
/// "date-unreadable" about the whole column: nothing tells day from month, or cells are in several
/// styles, each named with its first line. `lines` are the lines of the cells.
Result<std::optional<DayStyle>> day_style_of(std::span<const std::string_view> cells,
                                             std::span<const int> lines,
                                             std::optional<DayOrder> hint);

/// The day in that style; a time behind it is left out. Nothing when it is none. A year of two
/// digits is the one nearest to `today` that is not more than five years ahead (our judgement: what
/// is told of cows lies behind, or within a lactation ahead). Months in English, German, French and
/// Dutch, whole or shortened (from memory).
std::optional<Day> day_written(std::string_view cell, const DayStyle& style, Day today);

/// Whether it could be a day in any style, for telling what a column holds.
bool is_written_as_day(std::string_view cell);

}  // namespace evenclaw
