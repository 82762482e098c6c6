#include "core/exchange/csv.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <map>
#include <optional>
#include <utility>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t longest_token = 40;
constexpr std::size_t longest_quoted = 10'000;  // beyond it a quote was not closed
constexpr std::size_t lines_looked_at = 20;
constexpr std::array<char, 4> separators = {';', '\t', '|', ','};
constexpr std::string_view worked_out_when_it_begins = "=+-@";

bool is_space(char c) {
  return c == ' ' || c == '\r';
}

std::string_view without_spaces(std::string_view cell) {
  while (!cell.empty() && is_space(cell.front())) cell.remove_prefix(1);
  while (!cell.empty() && is_space(cell.back())) cell.remove_suffix(1);
  return cell;
}

/// What a spreadsheet wrote to keep text from being worked out.
std::string_view as_meant(std::string_view cell) {
  const bool is_kept_text = cell.size() >= 3 && cell.substr(0, 2) == "=\"" && cell.back() == '"';
  if (is_kept_text) return cell.substr(2, cell.size() - 3);
  const bool is_guarded = cell.size() > 1 && cell.front() == '\'' &&
                          worked_out_when_it_begins.find(cell[1]) != std::string_view::npos;
  return is_guarded ? cell.substr(1) : cell;
}

/// Reads the records of a text one after another.
class RecordReader {
 public:
  RecordReader(std::string_view text, char separator, std::deque<std::string>& unquoted)
      : text_(text), separator_(separator), unquoted_(unquoted) {}

  [[nodiscard]] bool at_end() const { return at_ >= text_.size(); }

  /// The cells up to the next line end outside quotes; `fault` is set when they cannot be read, and
  /// then the line is passed over.
  CsvRow next() {
    CsvRow row;
    fault.reset();
    row.line = line_;
    row.cells.reserve(width_);
    for (;;) {
      while (at_ < text_.size() && is_space(text_[at_])) ++at_;
      const bool is_quoted = at_ < text_.size() && text_[at_] == '"';
      row.cells.push_back(is_quoted ? quoted_cell() : plain_cell());
      if (fault) {
        skip_line();
        return row;
      }
      if (at_ >= text_.size()) break;
      if (text_[at_++] == separator_) continue;
      ++line_;
      break;
    }
    width_ = row.cells.size();
    return row;
  }

  std::optional<Fault> fault;

 private:
  [[nodiscard]] bool is_end_of_cell(std::size_t at) const {
    return at >= text_.size() || text_[at] == separator_ || text_[at] == '\n';
  }

  std::string_view plain_cell() {
    const std::size_t begin = at_;
    while (!is_end_of_cell(at_)) ++at_;
    return as_meant(without_spaces(text_.substr(begin, at_ - begin)));
  }

  std::string_view quoted_cell() {
    const std::size_t begin = at_++;
    const int begin_line = line_;
    bool has_doubled = false;
    for (;; ++at_) {
      const bool is_too_long = at_ - begin > longest_quoted;
      if (at_ >= text_.size() || is_too_long) return unclosed(begin, begin_line);
      if (text_[at_] == '\n') ++line_;
      if (text_[at_] != '"') continue;
      if (text_.substr(at_, 2) != "\"\"") break;
      has_doubled = true;
      ++at_;
    }
    const std::string_view inside = text_.substr(begin + 1, at_ - begin - 1);
    ++at_;
    while (at_ < text_.size() && is_space(text_[at_])) ++at_;
    if (!is_end_of_cell(at_)) {
      refuse(begin, line_, "something stands behind the end of a quote",
             "Put the whole cell in quotes, or none of it.");
      return {};
    }
    return as_meant(without_spaces(has_doubled ? single_quotes(inside) : inside));
  }

  /// What is not closed swallowed all that followed: reading goes on behind its first line.
  std::string_view unclosed(std::size_t begin, int line) {
    at_ = begin;
    line_ = line;
    refuse(begin, line, "a quote is not closed",
           "Close it, or leave it out. If it stands at the end, the file may be cut off.");
    return {};
  }

  std::string_view single_quotes(std::string_view inside) {
    std::string& cell = unquoted_.emplace_back();
    for (std::size_t i = 0; i < inside.size(); ++i) {
      cell += inside[i];
      if (inside[i] == '"') ++i;
    }
    return cell;
  }

  void refuse(std::size_t begin, int line, std::string message, std::string remedy) {
    const std::string_view rest = text_.substr(begin, 4 * longest_token);
    const std::string_view shown = rest.substr(0, rest.find('\n'));
    fault = list_unreadable(line, std::move(message),
                            shortened(valid_utf8(without_spaces(shown)), longest_token),
                            std::move(remedy));
  }

  void skip_line() {
    while (at_ < text_.size() && text_[at_] != '\n') ++at_;
    if (at_ < text_.size()) {
      ++at_;
      ++line_;
    }
  }

  std::string_view text_;
  char separator_;
  std::deque<std::string>& unquoted_;
  std::size_t at_ = 0;
  int line_ = 1;
  std::size_t width_ = 1;
};

bool is_blank(const CsvRow& row) {
  return std::all_of(row.cells.begin(), row.cells.end(),
                     [](std::string_view cell) { return cell.empty(); });
}

/// Spreadsheets write a title as a line with as many cells as all have, of which one holds it.
bool is_title(const CsvRow& row) {
  const auto held = std::count_if(row.cells.begin(), row.cells.end(),
                                  [](std::string_view cell) { return !cell.empty(); });
  return held == 1 && row.cells.size() > 2;
}

/// "sep=;", by which a list tells a spreadsheet how it is parted.
bool names_the_separator(const CsvRow& row) {
  return row.line == 1 && row.cells.front().substr(0, 4) == "sep=";
}

/// How many cells most of the first lines have, and how many lines those are.
struct Width {
  std::size_t cells = 1;
  std::size_t lines = 0;
};

Width usual_width(std::string_view text, char separator) {
  std::deque<std::string> unquoted;
  RecordReader records(text, separator, unquoted);
  std::map<std::size_t, std::size_t> lines_of;
  for (std::size_t seen = 0; seen < lines_looked_at && !records.at_end();) {
    const CsvRow row = records.next();
    if (records.fault || is_blank(row)) continue;
    ++lines_of[row.cells.size()];
    ++seen;
  }
  Width usual;
  for (const auto& [cells, lines] : lines_of) {
    if (lines >= usual.lines) usual = {cells, lines};
  }
  return usual;
}

/// One cell a line is no sign of a separator.
std::pair<char, Width> separator_and_width(std::string_view text) {
  std::pair<char, Width> best = {',', usual_width(text, ',')};
  for (const char separator : separators) {
    const Width width = usual_width(text, separator);
    if (width.cells == 1) continue;
    const bool is_better = best.second.cells == 1 || width.lines > best.second.lines;
    if (is_better || (best.first == ',' && width.lines == best.second.lines && separator != ',')) {
      best = {separator, width};
    }
  }
  return best;
}

void check_head(const CsvTable& table, Faults& faults) {
  for (std::size_t at = 0; at < table.head.size(); ++at) {
    const std::string& name = table.head[at];
    const auto same = [&](const std::string& other) { return fold_case(other) == fold_case(name); };
    const auto before = table.head.begin() + static_cast<std::ptrdiff_t>(at);
    if (name.empty() || std::none_of(table.head.begin(), before, same)) continue;
    faults.push_back(list_unreadable(table.head_line, "two columns are called \"" + name + "\"",
                                     name, "Give one of them another head, or take it out."));
    faults.back().column = static_cast<int>(at) + 1;
  }
}

Fault wrong_width(const CsvRow& row, std::size_t width) {
  Fault fault = list_unreadable(row.line,
                                "the line has " + std::to_string(row.cells.size()) +
                                    " cells and the head has " + std::to_string(width),
                                shortened(row.cells.front(), longest_token),
                                "Give it as many; a cell that holds the separator stands in "
                                "quotes. If it is the last line, the file may be cut off.");
  fault.column = static_cast<int>(std::min(row.cells.size(), width)) + 1;
  return fault;
}

void add_row(CsvTable& table, CsvRow row) {
  const std::size_t width = table.head.size();
  const auto is_empty = [](std::string_view cell) { return cell.empty(); };
  if (row.cells.size() > width) {
    const auto beyond = row.cells.begin() + static_cast<std::ptrdiff_t>(width);
    if (std::all_of(beyond, row.cells.end(), is_empty)) row.cells.resize(width);
  }
  if (row.cells.size() != width) {
    table.row_faults.push_back(wrong_width(row, width));
  } else {
    table.rows.push_back(std::move(row));
  }
}

}  // namespace

Fault list_unreadable(int line, std::string message, std::string token, std::string remedy) {
  if (message.find(token) == std::string::npos) message += ": " + token;
  return {.slug = "list-unreadable",
          .message = std::move(message),
          .token = std::move(token),
          .line = line,
          .remedy = std::move(remedy)};
}

CsvTable csv_table(std::string_view text) {
  CsvTable table;
  const auto [separator, width] = separator_and_width(text);
  table.separator = separator;
  RecordReader records(text, separator, table.unquoted);
  while (!records.at_end()) {
    CsvRow row = records.next();
    if (records.fault) {
      table.row_faults.push_back(*std::move(records.fault));
      continue;
    }
    if (is_blank(row) || names_the_separator(row)) continue;
    if (table.head_line > 0) {
      add_row(table, std::move(row));
    } else if (row.cells.size() == width.cells && !is_title(row)) {
      table.head_line = row.line;
      table.head.assign(row.cells.begin(), row.cells.end());
      // A separator at the end of every line makes a column of nothing.
      if (table.head.size() > 1 && table.head.back().empty()) table.head.pop_back();
    }
  }
  if (table.head_line > 0) {
    check_head(table, table.faults);
  } else if (table.row_faults.empty()) {
    table.faults.push_back(
        list_unreadable(0, "the list is empty", "", "Its first line says what the columns hold."));
  } else {
    table.faults = table.row_faults;
  }
  if (!table.faults.empty()) table.rows.clear();
  return table;
}

}  // namespace evenclaw
