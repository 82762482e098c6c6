#include "core/exchange/written_days.hpp"

#include <doctest/doctest.h>

#include "core/base/random.hpp"

using namespace evenclaw;

namespace {

const Day today = day_from_text("2026-10-27").value();

/// The days of a column: "2026-09-01 2026-10-02", "-" for a cell that is none, or what is wrong.
std::string days_of(const std::vector<std::string_view>& cells,
                    std::optional<DayOrder> hint = std::nullopt) {
  std::vector<int> lines;
  for (std::size_t at = 0; at < cells.size(); ++at) lines.push_back(static_cast<int>(at) + 2);
  const auto style = day_style_of(cells, lines, hint);
  if (!style) {
    const Fault& fault = style.faults().front();
    CHECK(fault.slug == "date-unreadable");
    CHECK_FALSE(fault.remedy.empty());
    return std::to_string(fault.line) + " " + fault.message;
  }
  std::string days;
  for (const std::string_view cell : cells) {
    const auto day = *style ? day_written(cell, **style, today) : std::nullopt;
    days += (days.empty() ? "" : " ") + (day ? to_text(*day) : std::string("-"));
  }
  return days;
}

}  // namespace

TEST_CASE("one day is read in every style it is written in") {
  struct Row {
    std::string_view cell;
    std::string_view meant;
  };

  constexpr Row rows[] = {{"2026-09-21", "2026-09-21"},
                          {"2026/9/21", "2026-09-21"},
                          {"20260921", "2026-09-21"},
                          {"2026-09-21T06:30:00Z", "2026-09-21"},
                          {"21.09.2026", "2026-09-21"},
                          {"21.9.26", "2026-09-21"},
                          {"21.09.2026 00:00:00", "2026-09-21"},
                          {"21/09/2026", "2026-09-21"},
                          {"09/21/2026", "2026-09-21"},
                          {"21-09-2026", "2026-09-21"},
                          {"21 Sep 2026", "2026-09-21"},
                          {"21-Sept-26", "2026-09-21"},
                          {"21. September 2026", "2026-09-21"},
                          {"3. März 2026", "2026-03-03"},
                          {"3 mrt 2026", "2026-03-03"},
                          {"14 juil 2026", "2026-07-14"},
                          {"14 Okt 2026", "2026-10-14"},
                          {"21 Dez 98", "1998-12-21"}};
  for (const Row& row : rows) {
    CAPTURE(row.cell);
    CHECK(days_of({row.cell}) == row.meant);
  }
}

TEST_CASE("one cell with a number above 12 tells the whole column which part is the day") {
  CHECK(days_of({"01/09/2026", "13/09/2026"}) == "2026-09-01 2026-09-13");
  CHECK(days_of({"01/09/2026", "09/13/2026"}) == "2026-01-09 2026-09-13");
}

TEST_CASE("a column that leaves day and month open is refused unless somebody says") {
  CHECK(days_of({"", "01/09/2026", "02/09/2026"}) ==
        "3 nothing tells whether the day or the month stands first in 01/09/2026");
  CHECK(days_of({"01/09/2026"}, DayOrder::day_month_year) == "2026-09-01");
  CHECK(days_of({"01/09/2026"}, DayOrder::month_day_year) == "2026-01-09");
}

TEST_CASE("with dots the day stands first") {
  CHECK(days_of({"01.09.2026"}) == "2026-09-01");
}

TEST_CASE("days in several styles are refused, each named with its first line") {
  CHECK(days_of({"2026-09-01", "01.09.2026", "9/13/2026", "2026-09-02"}) ==
        "3 the days are written in 3 styles: 2026-09-01 in line 2, 01.09.2026 in line 3, 9/13/2026 "
        "in line 4");
  CHECK(days_of({"13/09/2026", "09/13/2026"}) ==
        "3 the days are written in 2 styles: 13/09/2026 in line 2, 09/13/2026 in line 3");
}

TEST_CASE("a cell that is no day, or one that does not exist, leaves the others") {
  CHECK(days_of({"2026-09-01", "soon", "2026-02-30", "2026-00-00"}) == "2026-09-01 - - -");
  CHECK(days_of({"", "soon"}) == "- -");
}

TEST_CASE("a year of two digits is the nearest that is not far ahead") {
  CHECK(days_of({"01.09.31"}) == "2031-09-01");
  CHECK(days_of({"01.09.32"}) == "1932-09-01");
}

TEST_CASE("every day reads back from every style") {
  RandomStream random(20261102, 0);
  for (int i = 0; i < 2000; ++i) {
    const Day day{static_cast<std::int32_t>(10'000 + random.below(11'000))};
    const CivilDate date = civil_of(day);
    const std::string iso = to_text(day);
    const std::string year = iso.substr(0, 4);
    const std::string month = std::to_string(date.month);
    const std::string of_month = std::to_string(date.day);
    CHECK(day_written(of_month + "." + month + "." + year, {'.', DayOrder::day_month_year, false},
                      today) == day);
    CHECK(day_written(month + "/" + of_month + "/" + year, {'/', DayOrder::month_day_year, false},
                      today) == day);
    CHECK(day_written(iso, {'-', DayOrder::year_month_day, false}, today) == day);
  }
}
