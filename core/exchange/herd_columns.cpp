#include "core/exchange/herd_columns.hpp"

#include <algorithm>
#include <cstddef>
#include <set>
#include <utility>

#include "core/base/ascii.hpp"
#include "core/base/text.hpp"
#include "core/exchange/herd_heads.hpp"
#include "core/exchange/written_days.hpp"
#include "core/trade/electronic_number.hpp"
#include "core/trade/national_tag.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t rows_looked_at = 200;
constexpr std::size_t longest_number = 6;
constexpr std::size_t longest_sample = 24;

Fault wrongly_said(std::string message, std::string token, std::string remedy) {
  return {.slug = "usage",
          .message = std::move(message),
          .token = std::move(token),
          .remedy = std::move(remedy)};
}

std::string words_of_columns() {
  std::string all;
  for (const auto& row : EnumWords<HerdColumn>::table) {
    all += (all.empty() ? "" : ", ") + std::string(row.word);
  }
  return all;
}

const ColumnSaid* said_of(const std::string& head, const std::vector<ColumnSaid>& said) {
  const auto at = std::find_if(said.begin(), said.end(), [&](const ColumnSaid& one) {
    return fold_case(one.head) == fold_case(head);
  });
  return at == said.end() ? nullptr : &*at;
}

/// Cells of a column that hold something, of the first rows.
std::vector<std::string_view> cells_of(const CsvTable& table, std::size_t column) {
  std::vector<std::string_view> cells;
  for (const CsvRow& row : table.rows) {
    if (!row.cells[column].empty()) cells.push_back(row.cells[column]);
    if (cells.size() == rows_looked_at) break;
  }
  return cells;
}

template <class Test>
bool are_all(const std::vector<std::string_view>& cells, Test test) {
  return !cells.empty() && std::all_of(cells.begin(), cells.end(), test);
}

bool are_electronic(const std::vector<std::string_view>& cells) {
  return are_all(cells, [](std::string_view cell) {
    return is_written_as_electronic(cell) && electronic_number(cell).ok();
  });
}

bool are_tags(const std::vector<std::string_view>& cells) {
  return are_all(cells, [](std::string_view cell) { return national_tag(cell).ok(); });
}

bool are_short_numbers(const std::vector<std::string_view>& cells) {
  std::set<std::string_view> each_once;
  return are_all(cells, [&](std::string_view cell) {
    return cell.size() <= longest_number && std::all_of(cell.begin(), cell.end(), is_digit) &&
           each_once.insert(cell).second;
  });
}

bool tells_the_cow(HerdColumn column) {
  return column == HerdColumn::number || column == HerdColumn::tag ||
         column == HerdColumn::electronic;
}

bool is_there(const std::vector<ColumnRead>& columns, HerdColumn wanted) {
  return std::any_of(columns.begin(), columns.end(),
                     [&](const ColumnRead& column) { return column.holds == wanted; });
}

void tell_by_content(const CsvTable& table, std::size_t at, std::vector<ColumnRead>& columns) {
  ColumnRead& column = columns[at];
  const bool is_open = column.known_by == ColumnKnownBy::nothing;
  const bool is_by_head =
      column.known_by == ColumnKnownBy::head && column.holds == HerdColumn::number;
  if (!is_open && !is_by_head) return;
  const std::vector<std::string_view> cells = cells_of(table, at);
  HerdColumn holds = HerdColumn::ignore;
  if (are_electronic(cells)) holds = HerdColumn::electronic;
  if (holds == HerdColumn::ignore && are_tags(cells)) holds = HerdColumn::tag;
  if (holds == HerdColumn::ignore || is_there(columns, holds)) return;
  column.holds = holds;
  column.known_by = ColumnKnownBy::content;
}

/// Only when one alone can be meant.
void tell_number_by_content(const CsvTable& table, std::vector<ColumnRead>& columns) {
  ColumnRead* only = nullptr;
  for (std::size_t at = 0; at < columns.size(); ++at) {
    if (columns[at].known_by != ColumnKnownBy::nothing) continue;
    if (!are_short_numbers(cells_of(table, at))) continue;
    if (only != nullptr) return;
    only = &columns[at];
  }
  if (only == nullptr) return;
  only->holds = HerdColumn::number;
  only->known_by = ColumnKnownBy::content;
}

Fault of_head(const CsvTable& table, std::string message, std::string token, std::string remedy) {
  return list_unreadable(table.head_line, std::move(message), std::move(token), std::move(remedy));
}

void refuse_twice(const CsvTable& table, const std::vector<ColumnRead>& columns, Faults& faults) {
  for (std::size_t at = 0; at < columns.size(); ++at) {
    if (columns[at].holds == HerdColumn::ignore) continue;
    for (std::size_t before = 0; before < at; ++before) {
      if (columns[before].holds != columns[at].holds) continue;
      const std::string what(word_of(columns[at].holds));
      faults.push_back(of_head(
          table,
          "two columns are read as " + what + ": \"" + columns[before].head + "\" and \"" +
              columns[at].head + "\"",
          columns[at].head,
          "Say of one of them what it holds: --columns \"ignore=" + columns[at].head + "\""));
      faults.back().column = static_cast<int>(at) + 1;
    }
  }
}

void leave_out(ColumnRead& column) {
  column.holds = HerdColumn::ignore;
  column.known_by = ColumnKnownBy::nothing;
}

/// A day of nothing: which is told by a column of events or of lesions.
void leave_out_lone_day(std::vector<ColumnRead>& columns) {
  if (is_there(columns, HerdColumn::event) || is_there(columns, HerdColumn::lesion)) return;
  for (ColumnRead& column : columns) {
    const bool is_by_head = column.known_by == ColumnKnownBy::head;
    if (column.holds == HerdColumn::day && is_by_head) leave_out(column);
  }
}

/// Lists of cows and of events may hold a diagnosis too: only with a day beside it, and no events,
/// or when somebody says so now it is a list of findings.
bool is_of_findings(const std::vector<ColumnRead>& columns) {
  const auto lesions = std::find_if(columns.begin(), columns.end(), [](const ColumnRead& column) {
    return column.holds == HerdColumn::lesion;
  });
  if (lesions == columns.end()) return false;
  if (lesions->known_by == ColumnKnownBy::said) return true;
  return is_there(columns, HerdColumn::day) && !is_there(columns, HerdColumn::event);
}

/// Of a list of findings all that tells of no finding, of another list all that tells of one, but
/// for what somebody said just now.
void leave_out_other_lists(std::vector<ColumnRead>& columns) {
  const bool of_findings = is_of_findings(columns);
  for (ColumnRead& column : columns) {
    const bool is_of_any = tells_the_cow(column.holds) || column.holds == HerdColumn::day;
    if (is_of_any || column.known_by == ColumnKnownBy::said) continue;
    if (tells_of_a_finding(column.holds) != of_findings) leave_out(column);
  }
}

void refuse_missing(const CsvTable& table, const std::vector<ColumnRead>& columns, Faults& faults) {
  const bool names_cows = std::any_of(columns.begin(), columns.end(), [](const ColumnRead& column) {
    return tells_the_cow(column.holds);
  });
  if (!names_cows) {
    const std::string first = columns.empty() ? "HEAD" : columns.front().head;
    faults.push_back(of_head(table, "no column tells which cow a line is of", "",
                             "Say which one does: --columns \"number=" + first + "\""));
  }
  const bool of_findings = is_there(columns, HerdColumn::lesion);
  const bool has_day = is_there(columns, HerdColumn::day);
  if (of_findings && !has_day) {
    faults.push_back(of_head(table, "a column of lesions needs one with the day of each", "",
                             "Say which one it is: --columns \"day=HEAD\""));
  } else if (!of_findings && is_there(columns, HerdColumn::event) != has_day) {
    faults.push_back(of_head(table, "a column of events needs one with the day of each", "",
                             "Say which one it is: --columns \"event=HEAD, day=HEAD\""));
  }
}

/// Somebody said of columns that they hold what no one list tells together.
void refuse_of_two_lists(const CsvTable& table, const std::vector<ColumnRead>& columns,
                         Faults& faults) {
  const bool of_findings = is_there(columns, HerdColumn::lesion);
  for (std::size_t at = 0; at < columns.size(); ++at) {
    const ColumnRead& column = columns[at];
    const bool is_of_any = tells_the_cow(column.holds) || column.holds == HerdColumn::day ||
                           column.holds == HerdColumn::ignore;
    if (is_of_any || tells_of_a_finding(column.holds) == of_findings) continue;
    const std::string what =
        "\"" + column.head + "\" is said to hold " + std::string(word_of(column.holds));
    faults.push_back(of_head(table,
                             what + (of_findings ? ", and a list of findings tells of feet alone"
                                                 : ", and no column is one of lesions"),
                             column.head,
                             of_findings
                                 ? "Take that over from a list of its own."
                                 : "Say which one holds the lesions: --columns \"lesion=HEAD\""));
    faults.back().column = static_cast<int>(at) + 1;
  }
}

void refuse_unknown_heads(const CsvTable& table, const std::vector<ColumnSaid>& said,
                          Faults& faults) {
  for (const ColumnSaid& one : said) {
    const auto is_it = [&](const std::string& head) {
      return fold_case(head) == fold_case(one.head);
    };
    if (std::any_of(table.head.begin(), table.head.end(), is_it)) continue;
    std::string heads;
    for (const std::string& head : table.head) heads += (heads.empty() ? "" : ", ") + head;
    faults.push_back(wrongly_said("no column has the head \"" + one.head + "\"", one.head,
                                  "The heads are: " + heads + "."));
  }
}

ColumnRead column_of(const CsvTable& table, std::size_t at, const std::vector<ColumnSaid>& said,
                     const std::vector<ColumnSaid>& remembered) {
  ColumnRead column{table.head[at], HerdColumn::ignore, ColumnKnownBy::nothing, {}};
  const std::vector<std::string_view> cells = cells_of(table, at);
  if (!cells.empty()) column.sample = shortened(cells.front(), longest_sample);
  if (const ColumnSaid* by_person = said_of(column.head, said)) {
    column.holds = by_person->holds;
    column.known_by = ColumnKnownBy::said;
  } else if (const ColumnSaid* before = said_of(column.head, remembered)) {
    column.holds = before->holds;
    column.known_by = ColumnKnownBy::remembered;
  } else if (const auto by_head = held_under(column.head)) {
    column.holds = *by_head;
    column.known_by = ColumnKnownBy::head;
  }
  return column;
}

}  // namespace

bool tells_of_a_finding(HerdColumn column) {
  return column >= HerdColumn::foot;
}

Result<std::vector<ColumnRead>> columns_read(const CsvTable& table,
                                             const std::vector<ColumnSaid>& said,
                                             const std::vector<ColumnSaid>& remembered) {
  Faults faults;
  refuse_unknown_heads(table, said, faults);
  std::vector<ColumnRead> columns;
  for (std::size_t at = 0; at < table.head.size(); ++at) {
    columns.push_back(column_of(table, at, said, remembered));
  }
  for (std::size_t at = 0; at < columns.size(); ++at) tell_by_content(table, at, columns);
  const bool names_cows = std::any_of(columns.begin(), columns.end(), [](const ColumnRead& column) {
    return tells_the_cow(column.holds);
  });
  if (!names_cows) tell_number_by_content(table, columns);
  leave_out_other_lists(columns);
  leave_out_lone_day(columns);
  refuse_twice(table, columns, faults);
  refuse_missing(table, columns, faults);
  refuse_of_two_lists(table, columns, faults);
  if (!faults.empty()) return faults;
  return columns;
}

Result<std::vector<ColumnSaid>> columns_said(std::string_view typed) {
  std::vector<ColumnSaid> said;
  Faults faults;
  while (!typed.empty()) {
    const std::size_t end = std::min(typed.find(','), typed.size());
    const std::string_view part = trimmed(typed.substr(0, end));
    typed.remove_prefix(std::min(end + 1, typed.size()));
    if (part.empty()) continue;
    const std::size_t equals = part.find('=');
    const std::string_view word = trimmed(part.substr(0, equals));
    const auto holds = enum_of<HerdColumn>(word);
    const std::string_view head =
        equals == std::string_view::npos ? "" : trimmed(part.substr(equals + 1));
    if (!holds || head.empty()) {
      faults.push_back(wrongly_said(
          "\"" + std::string(part) + "\" does not say what a column holds", std::string(part),
          "Write number=HEAD; it may hold " + words_of_columns() + "."));
    } else {
      said.push_back({std::string(head), *holds});
    }
  }
  if (!faults.empty()) return faults;
  return said;
}

}  // namespace evenclaw
