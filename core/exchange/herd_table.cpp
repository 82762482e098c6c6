#include "core/exchange/herd_table.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string_view>
#include <unordered_map>
#include <utility>

#include "core/exchange/herd_line.hpp"
#include "core/trade/electronic_number.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/national_tag.hpp"

namespace evenclaw {

namespace {

bool holds_days(HerdColumn holds) {
  switch (holds) {
    case HerdColumn::born:
    case HerdColumn::calved:
    case HerdColumn::dry_off:
    case HerdColumn::due_to_calve:
    case HerdColumn::arrived:
    case HerdColumn::left:
    case HerdColumn::day:
      return true;
    case HerdColumn::ignore:
    case HerdColumn::number:
    case HerdColumn::tag:
    case HerdColumn::electronic:
    case HerdColumn::name:
    case HerdColumn::breed:
    case HerdColumn::heifer_or_cow:
    case HerdColumn::weight:
    case HerdColumn::lactation:
    case HerdColumn::reason:
    case HerdColumn::event:
      return false;
  }
  return false;
}

/// The day styles of all columns of a table.
class Styles {
 public:
  Styles(const CsvTable& table, const std::vector<ColumnRead>& columns)
      : table_(table), columns_(columns), styles(columns.size()) {}

  void decide(std::optional<DayOrder> said) {
    decide_columns(said);
    if (said || faults.empty()) return;
    // One program writes all its days alike: a column that leaves it open follows the others.
    std::set<DayOrder> orders;
    for (const std::optional<DayStyle>& style : styles) {
      const bool is_telling = style && !style->month_in_words &&
                              style->order != DayOrder::year_month_day && style->separator != '.';
      if (is_telling) orders.insert(style->order);
    }
    if (orders.size() == 1) decide_columns(*orders.begin());
  }

 private:
  const CsvTable& table_;
  const std::vector<ColumnRead>& columns_;

 public:
  std::vector<std::optional<DayStyle>> styles;
  Faults faults;

 private:
  void decide_columns(std::optional<DayOrder> hint) {
    faults.clear();
    for (std::size_t at = 0; at < columns_.size(); ++at) {
      if (holds_days(columns_[at].holds)) decide_column(at, hint);
    }
  }

  void decide_column(std::size_t at, std::optional<DayOrder> hint) {
    std::vector<std::string_view> cells;
    std::vector<int> lines;
    cells.reserve(table_.rows.size());
    lines.reserve(table_.rows.size());
    for (const CsvRow& row : table_.rows) {
      cells.push_back(row.cells[at]);
      lines.push_back(row.line);
    }
    auto style = day_style_of(cells, lines, hint);
    if (style) {
      styles[at] = *style;
      return;
    }
    for (Fault fault : style.faults()) {
      fault.message = "under \"" + columns_[at].head + "\" " + fault.message;
      fault.column = static_cast<int>(at) + 1;
      faults.push_back(std::move(fault));
    }
  }
};

std::string tag_key(const std::string& written) {
  if (written.empty()) return {};
  const auto tag = national_tag(written);
  return tag ? tag->country + plain_number(tag->digits) : std::string();
}

std::string electronic_key(const std::string& written) {
  if (written.empty()) return {};
  const auto number = electronic_number(written);
  return number ? to_text(*number) : std::string();
}

const LifeEventTold* leaving_in(const HerdRecord& record) {
  for (const LifeEventTold& event : record.events) {
    if (event.event == LifeEvent::left) return &event;
  }
  return nullptr;
}

/// No two lines of a list of cows are of one cow.
class EachCowOnce {
 public:
  /// The fault of a line that is of a cow who stands in an earlier one.
  std::optional<Fault> add(const HerdRecord& record) {
    const std::array<std::string, 3> keys = {tag_key(record.tag), electronic_key(record.electronic),
                                             plain_number(record.number)};
    for (std::size_t at = 0; at < keys.size(); ++at) {
      if (keys[at].empty()) continue;
      const auto first = lines_[at].find(keys[at]);
      if (first == lines_[at].end()) continue;
      if (at == number_at && is_reused(record, first->second)) continue;
      return list_unreadable(
          record.line,
          "\"" + keys[at] + "\" stands in line " + std::to_string(first->second.line) + " too",
          keys[at], "Leave one of the two in, with what holds.");
    }
    const LifeEventTold* leaving = leaving_in(record);
    const Seen seen{record.line, leaving ? std::optional(leaving->day) : std::nullopt};
    for (std::size_t at = 0; at < keys.size(); ++at) {
      if (!keys[at].empty()) lines_[at].emplace(keys[at], seen);
    }
    return std::nullopt;
  }

 private:
  static constexpr std::size_t number_at = 2;

  struct Seen {
    int line = 0;
    std::optional<Day> left;
  };

  /// A number is given to another cow once its carrier has left.
  static bool is_reused(const HerdRecord& record, const Seen& first) {
    const LifeEventTold* leaving = leaving_in(record);
    const std::optional<Day> left = leaving ? std::optional(leaving->day) : std::nullopt;
    return left != first.left;
  }

  std::array<std::unordered_multimap<std::string, Seen>, 3> lines_;
};

void sort_by_line(Faults& faults) {
  std::stable_sort(faults.begin(), faults.end(),
                   [](const Fault& a, const Fault& b) { return a.line < b.line; });
}

}  // namespace

Result<HerdTable> herd_table(const CsvTable& table, const TableWish& wish) {
  if (!table.faults.empty()) return table.faults;
  auto columns = columns_read(table, wish.said, wish.remembered);
  if (!columns) return columns.faults();
  Styles styles(table, *columns);
  styles.decide(wish.dates);
  if (!styles.faults.empty()) return std::move(styles.faults);

  HerdTable read;
  const LineForm form{*columns, styles.styles, wish.today};
  EachCowOnce each_once;
  for (const CsvRow& row : table.rows) {
    ListLine line = herd_line(row, form);
    if (line.faults.empty() && !line.record.is_one_event) {
      if (auto fault = each_once.add(line.record)) line.faults.push_back(*std::move(fault));
    }
    if (line.faults.empty()) {
      read.records.push_back(std::move(line.record));
    } else {
      read.row_faults.insert(read.row_faults.end(), line.faults.begin(), line.faults.end());
    }
  }
  read.row_faults.insert(read.row_faults.end(), table.row_faults.begin(), table.row_faults.end());
  sort_by_line(read.row_faults);
  read.lines = static_cast<int>(table.rows.size() + table.row_faults.size());
  for (std::size_t at = 0; at < columns->size(); ++at) {
    const std::optional<DayStyle>& style = styles.styles[at];
    if (style) read.day_styles.push_back((*columns)[at].head + ": " + told_of(*style));
  }
  read.columns = *std::move(columns);
  return read;
}

}  // namespace evenclaw
