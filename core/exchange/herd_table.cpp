#include "core/exchange/herd_table.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string_view>
#include <unordered_map>
#include <utility>

#include "core/base/text.hpp"
#include "core/exchange/finding_words.hpp"
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
    case HerdColumn::foot:
    case HerdColumn::claw:
    case HerdColumn::place:
    case HerdColumn::zone:
    case HerdColumn::lesion:
    case HerdColumn::degree:
    case HerdColumn::stage:
    case HerdColumn::treatment:
    case HerdColumn::remark:
      return false;
  }
  return false;
}

constexpr std::size_t most_words_told = 40;
constexpr std::size_t longest_word_told = 40;

std::optional<std::size_t> column_of_lesions(const std::vector<ColumnRead>& columns) {
  for (std::size_t at = 0; at < columns.size(); ++at) {
    if (columns[at].holds == HerdColumn::lesion) return at;
  }
  return std::nullopt;
}

std::vector<LesionWord> lesion_words(const CsvTable& table, std::size_t column,
                                     const FindingWords& words) {
  std::map<std::string_view, std::int32_t> counted;
  for (const CsvRow& row : table.rows) {
    if (!row.cells[column].empty()) ++counted[row.cells[column]];
  }
  std::vector<LesionWord> all;
  all.reserve(counted.size());
  for (const auto& [word, lines] : counted) {
    const CellSaid<Lesion> said = words.lesion(word);
    LesionWord told{shortened(word, longest_word_told), {}, lines};
    if (said.value) told.means = word_of(*said.value);
    if (said.is_passed_over) told.means = word_passed_over;
    all.push_back(std::move(told));
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const LesionWord& a, const LesionWord& b) { return a.lines > b.lines; });
  return all;
}

/// With every word of the column, so that it can be said at once what they mean.
Fault nobody_said(const CsvTable& table, const std::string& head, std::size_t column,
                  const std::vector<LesionWord>& words) {
  std::string all;
  std::string example;
  for (std::size_t at = 0; at < words.size(); ++at) {
    if (at == most_words_told) {
      all += " and " + std::to_string(words.size() - at) + " more";
      break;
    }
    all += (at == 0 ? "" : ", ") + words[at].word + " (" + std::to_string(words[at].lines) + ")";
    if (at < 3) example += (at == 0 ? "" : "; ") + words[at].word + "=...";
  }
  Fault fault = list_unreadable(
      table.head_line,
      "\"" + head + "\" holds lesions, and nobody said what its words mean: " + all, head,
      "Say --lesions icar if they are codes of the ICAR Claw Health Atlas, else word by word: "
      "--lesions \"" +
          example +
          "\" (ignore passes a word over). Are they no lesions: --columns "
          "\"ignore=" +
          head + "\"");
  fault.column = static_cast<int>(column) + 1;
  return fault;
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

void read_lines(const CsvTable& table, const LineForm& form, HerdTable& read) {
  EachCowOnce each_once;
  read.records.reserve(table.rows.size());
  for (const CsvRow& row : table.rows) {
    ListLine line = herd_line(row, form);
    if (line.is_passed_over) {
      ++read.passed_over;
      if (line.record.passed_over_on) read.records.push_back(std::move(line.record));
      continue;
    }
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
  const FindingWords words(wish.findings);
  const auto lesions = column_of_lesions(*columns);
  if (lesions) read.lesions = lesion_words(table, *lesions, words);
  if (!read.lesions.empty() && !tells_lesions(wish.findings)) {
    return nobody_said(table, (*columns)[*lesions].head, *lesions, read.lesions);
  }
  const LineForm form{*columns, styles.styles, wish.today, lesions ? &words : nullptr};
  read_lines(table, form, read);
  read.lines = static_cast<int>(table.rows.size() + table.row_faults.size());
  for (std::size_t at = 0; at < columns->size(); ++at) {
    const std::optional<DayStyle>& style = styles.styles[at];
    if (style) read.day_styles.push_back((*columns)[at].head + ": " + told_of(*style));
  }
  read.columns = *std::move(columns);
  return read;
}

}  // namespace evenclaw
