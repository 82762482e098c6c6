#include "core/exchange/written_days.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <map>
#include <tuple>
#include <utility>

#include "core/base/ascii.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

constexpr int months_a_year = 12;
constexpr int years_ahead = 5;
constexpr int days_a_year_about = 365;

struct MonthWord {
  std::string_view begins;  // folded
  int month;
};

// A month is told by how its name begins; of two that fit the longer one is meant.
constexpr MonthWord month_words[] = {
    {"jan", 1},  {"feb", 2},  {"fév", 2},  {"fev", 2},  {"mar", 3}, {"mär", 3},
    {"mrz", 3},  {"maa", 3},  {"mrt", 3},  {"apr", 4},  {"avr", 4}, {"may", 5},
    {"mai", 5},  {"mei", 5},  {"jun", 6},  {"juin", 6}, {"jul", 7}, {"jui", 7},
    {"juil", 7}, {"aug", 8},  {"aoû", 8},  {"aou", 8},  {"sep", 9}, {"oct", 10},
    {"okt", 10}, {"nov", 11}, {"dec", 12}, {"dez", 12}, {"déc", 12}};

/// Three parts of a written day, and what stands between them.
struct Parts {
  std::array<std::string_view, 3> parts;
  char separator = 0;
};

bool is_all_digits(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), is_digit);
}

/// A time of day behind a day: "2026-09-01T06:30:00Z", "01.09.2026 00:00".
std::string_view without_time(std::string_view cell) {
  const std::size_t colon = cell.find(':');
  const std::size_t letter = cell.find('T');
  if (letter != std::string_view::npos && letter == 10) return cell.substr(0, letter);
  if (colon == std::string_view::npos) return cell;
  const std::size_t blank = cell.substr(0, colon).rfind(' ');
  return blank == std::string_view::npos ? cell : cell.substr(0, blank);
}

std::optional<Parts> compact(std::string_view cell) {
  constexpr std::size_t digits = 8;
  if (cell.size() != digits || !is_all_digits(cell)) return std::nullopt;
  return Parts{{cell.substr(0, 4), cell.substr(4, 2), cell.substr(6)}, 0};
}

std::optional<Parts> parts_of(std::string_view cell) {
  cell = trimmed(without_time(trimmed(cell)));
  if (const auto parts = compact(cell)) return parts;
  Parts found;
  std::size_t count = 0;
  while (true) {
    const std::size_t end = std::min(cell.find_first_of("-./ "), cell.size());
    if (count == found.parts.size()) return std::nullopt;
    found.parts.at(count++) = cell.substr(0, end);
    if (end == cell.size()) break;
    const char separator = cell[end];
    cell = trimmed(cell.substr(end + 1));
    // "1. Sep 2026": a blank behind a dot is none of its own.
    const bool is_other = found.separator != 0 && found.separator != separator;
    if (is_other && found.separator != '.' && separator != ' ') return std::nullopt;
    if (found.separator == 0) found.separator = separator;
  }
  const bool has_empty = std::any_of(found.parts.begin(), found.parts.end(),
                                     [](std::string_view part) { return part.empty(); });
  if (count != found.parts.size() || has_empty) return std::nullopt;
  return found;
}

std::optional<int> month_word(std::string_view part) {
  const std::string folded = fold_case(part);
  std::optional<MonthWord> best;
  for (const MonthWord& word : month_words) {
    const bool fits = folded.compare(0, word.begins.size(), word.begins) == 0;
    if (fits && (!best || word.begins.size() > best->begins.size())) best = word;
  }
  return best ? std::optional(best->month) : std::nullopt;
}

std::optional<int> number_in(std::string_view part) {
  constexpr std::size_t digits_of_a_year = 4;
  return whole_number(part, digits_of_a_year);
}

std::optional<DayStyle> style_by_words(const Parts& parts) {
  const auto& [first, second, third] = parts.parts;
  if (is_all_digits(first) && is_all_digits(third) && month_word(second)) {
    const bool is_year_first = first.size() == 4;
    return DayStyle{parts.separator,
                    is_year_first ? DayOrder::year_month_day : DayOrder::day_month_year, true};
  }
  return std::nullopt;
}

/// Every style in which the cell could be a day; which of day and month is meant stays open.
std::vector<DayStyle> styles_of(std::string_view cell) {
  const auto parts = parts_of(cell);
  if (!parts) return {};
  if (const auto style = style_by_words(*parts)) return {*style};
  const auto first = number_in(parts->parts[0]);
  const auto second = number_in(parts->parts[1]);
  const auto third = number_in(parts->parts[2]);
  if (!first || !second || !third) return {};
  if (parts->parts[0].size() == 4) {
    return {DayStyle{parts->separator, DayOrder::year_month_day, false}};
  }
  const bool has_year = parts->parts[2].size() == 4 || parts->parts[2].size() == 2;
  if (!has_year) return {};
  std::vector<DayStyle> styles;
  if (*second <= months_a_year) {
    styles.push_back({parts->separator, DayOrder::day_month_year, false});
  }
  if (*first <= months_a_year && parts->separator != '.') {
    styles.push_back({parts->separator, DayOrder::month_day_year, false});
  }
  return styles;
}

int year_meant(std::string_view part, int year, Day today) {
  if (part.size() > 2) return year;
  constexpr int this_century = 2000;
  constexpr int a_century = 100;
  const int meant = this_century + year;
  return meant > civil_of(today + years_ahead * days_a_year_about).year ? meant - a_century : meant;
}

/// What a column is made of: for each style that some cell could be of, where it was met first.
struct Met {
  int line = 0;
  std::string cell;
};

class ColumnStyles {
 public:
  void add(std::string_view cell, int line) {
    const std::vector<DayStyle> styles = styles_of(cell);
    if (styles.empty()) return;
    const char separator = styles.front().separator;
    const bool is_open = styles.size() > 1;
    // Day and month may stand either way; all cells with this separator decide it together.
    const bool is_either = !styles.front().month_in_words &&
                           styles.front().order != DayOrder::year_month_day && separator != '.';
    if (!is_either) return note({styles.front(), true}, cell, line);
    note({{separator, DayOrder::day_month_year, false}, false}, cell, line);
    if (!is_open) certain_[separator].emplace(styles.front().order, Met{line, std::string(cell)});
  }

  Result<std::optional<DayStyle>> decided(std::optional<DayOrder> hint) const {
    std::vector<std::pair<DayStyle, Met>> styles;
    bool is_ambiguous = false;
    for (const auto& [kind, met] : met_) {
      if (kind.is_certain) {
        styles.emplace_back(kind.style, met);
        continue;
      }
      const auto certain = certain_.find(kind.style.separator);
      const bool is_open = certain == certain_.end();
      if (is_open && !hint) is_ambiguous = true;
      if (is_open) {
        const DayOrder order = hint.value_or(DayOrder::day_month_year);
        styles.push_back({{kind.style.separator, order, false}, met});
        continue;
      }
      for (const auto& [order, first] : certain->second) {
        styles.push_back({{kind.style.separator, order, false}, first});
      }
    }
    if (styles.size() > 1) return in_several(styles);
    if (is_ambiguous) return either_way(styles.front().second);
    if (styles.empty()) return std::optional<DayStyle>();
    return std::optional(styles.front().first);
  }

 private:
  struct Kind {
    DayStyle style;
    bool is_certain = true;

    [[nodiscard]] auto key() const {
      return std::tuple(style.separator, style.order, style.month_in_words, is_certain);
    }

    friend bool operator<(const Kind& a, const Kind& b) { return a.key() < b.key(); }
  };

  void note(const Kind& kind, std::string_view cell, int line) {
    met_.try_emplace(kind, Met{line, std::string(cell)});
  }

  static Fault in_several(std::vector<std::pair<DayStyle, Met>> styles) {
    std::sort(styles.begin(), styles.end(),
              [](const auto& a, const auto& b) { return a.second.line < b.second.line; });
    std::string named;
    for (const auto& [style, met] : styles) {
      named += (named.empty() ? "" : ", ") + met.cell + " in line " + std::to_string(met.line);
    }
    return {
        .slug = "date-unreadable",
        .message = "the days are written in " + std::to_string(styles.size()) + " styles: " + named,
        .token = styles[1].second.cell,
        .line = styles[1].second.line,
        .remedy = "Write all days of a column alike, best as 2026-09-01."};
  }

  static Fault either_way(const Met& met) {
    return {.slug = "date-unreadable",
            .message = "nothing tells whether the day or the month stands first in " + met.cell,
            .token = met.cell,
            .line = met.line,
            .remedy = "Say which: --dates dmy (day first) or --dates mdy (month first)."};
  }

  std::map<Kind, Met> met_;
  std::map<char, std::map<DayOrder, Met>> certain_;
};

}  // namespace

std::string told_of(const DayStyle& style) {
  const std::string between = style.separator == 0 ? "" : std::string(1, style.separator);
  const std::string month = style.month_in_words ? "Dec" : "12";
  const auto joined = [&](const std::string& a, const std::string& b, const std::string& c) {
    return a + between + b + between + c;
  };
  switch (style.order) {
    case DayOrder::year_month_day:
      return "year first, as " + joined("2026", month, "31");
    case DayOrder::day_month_year:
      return "day first, as " + joined("31", month, "2026");
    case DayOrder::month_day_year:
      return "month first, as " + joined(month, "31", "2026");
  }
  return {};
}

Result<std::optional<DayStyle>> day_style_of(std::span<const std::string_view> cells,
                                             std::span<const int> lines,
                                             std::optional<DayOrder> hint) {
  ColumnStyles styles;
  for (std::size_t at = 0; at < cells.size(); ++at) {
    if (!cells[at].empty()) styles.add(cells[at], lines[at]);
  }
  return styles.decided(hint);
}

std::optional<Day> day_written(std::string_view cell, const DayStyle& style, Day today) {
  const auto parts = parts_of(cell);
  if (!parts || parts->separator != style.separator) return std::nullopt;
  const bool is_year_first = style.order == DayOrder::year_month_day;
  const std::size_t month_at = style.order == DayOrder::month_day_year ? 0 : 1;
  const std::size_t year_at = is_year_first ? 0 : 2;
  const std::size_t day_at = 3 - month_at - year_at;
  const std::string_view month_part = parts->parts.at(month_at);
  const auto month = style.month_in_words ? month_word(month_part) : number_in(month_part);
  const auto year = number_in(parts->parts.at(year_at));
  const auto day = number_in(parts->parts.at(day_at));
  const std::size_t year_digits = parts->parts.at(year_at).size();
  const bool is_year = year_digits == 4 || (year_digits == 2 && !is_year_first);
  if (!month || !year || !day || !is_year) return std::nullopt;
  return day_of({year_meant(parts->parts.at(year_at), *year, today), *month, *day});
}

bool is_written_as_day(std::string_view cell) {
  return !styles_of(cell).empty();
}

}  // namespace evenclaw
