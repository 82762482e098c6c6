#include "core/exchange/csv.hpp"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string_view>
#include <utility>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view byte_order_mark = "\xef\xbb\xbf";
constexpr std::size_t longest_token = 40;

/// The cells of one line, or what is wrong with it.
class LineReading {
 public:
  LineReading(std::string_view text, int line, char separator)
      : text_(text), line_(line), separator_(separator) {}

  Result<std::vector<std::string>> cells() {
    std::vector<std::string> cells;
    for (;;) {
      skip_spaces();
      const bool is_quoted = at_ < text_.size() && text_[at_] == '"';
      auto cell = is_quoted ? quoted_cell() : plain_cell();
      if (!cell) return cell.faults();
      cells.push_back(*std::move(cell));
      if (at_ == text_.size()) return cells;
      ++at_;  // the separator
    }
  }

 private:
  void skip_spaces() {
    while (at_ < text_.size() && text_[at_] == ' ') ++at_;
  }

  Result<std::string> plain_cell() {
    const std::size_t end = std::min(text_.find(separator_, at_), text_.size());
    const std::string_view cell = text_.substr(at_, end - at_);
    at_ = end;
    return std::string(trimmed(cell));
  }

  Result<std::string> quoted_cell() {
    const std::size_t begin = at_++;
    std::string cell;
    for (;; ++at_) {
      if (at_ == text_.size()) {
        return list_unreadable(line_, "a quote is not closed in its line", token_from(begin),
                               "Close it, or leave it out.");
      }
      if (text_[at_] != '"') {
        cell += text_[at_];
      } else if (text_.substr(at_, 2) == "\"\"") {
        cell += text_[at_++];
      } else {
        break;
      }
    }
    ++at_;
    skip_spaces();
    if (at_ < text_.size() && text_[at_] != separator_) {
      return list_unreadable(line_, "something stands behind the end of a quote", token_from(begin),
                             "Put the whole cell in quotes, or none of it.");
    }
    return std::string(trimmed(cell));
  }

  [[nodiscard]] std::string token_from(std::size_t begin) const {
    return shortened(text_.substr(begin), longest_token);
  }

  std::string_view text_;
  int line_;
  char separator_;
  std::size_t at_ = 0;
};

char separator_in(std::string_view head) {
  bool in_quotes = false;
  std::string outside;
  for (const char c : head) {
    if (c == '"') in_quotes = !in_quotes;
    if (!in_quotes) outside += c;
  }
  for (const char separator : {';', '\t'}) {
    if (outside.find(separator) != std::string::npos) return separator;
  }
  return ',';
}

std::string_view without_ends(std::string_view line, bool is_first) {
  if (is_first && line.substr(0, byte_order_mark.size()) == byte_order_mark) {
    line.remove_prefix(byte_order_mark.size());
  }
  while (!line.empty() && (line.back() == '\r' || line.back() == '\n')) line.remove_suffix(1);
  return line;
}

/// A tab may part cells; nothing else that cannot be shown belongs into a list.
std::optional<Fault> no_text(std::string_view line, int number) {
  std::string shown(line);
  std::replace(shown.begin(), shown.end(), '\t', ' ');
  if (is_one_plain_line(shown)) return std::nullopt;
  return list_unreadable(number, "these bytes are no text",
                         shortened(valid_utf8(line), longest_token),
                         "Write the list out anew as UTF-8.");
}

bool is_blank(const std::vector<std::string>& cells) {
  return std::all_of(cells.begin(), cells.end(),
                     [](const std::string& cell) { return cell.empty(); });
}

void check_head(const CsvTable& table, Faults& faults) {
  for (std::size_t at = 0; at < table.head.size(); ++at) {
    const std::string& name = table.head[at];
    if (name.empty()) {
      faults.push_back(list_unreadable(table.head_line,
                                       "column " + std::to_string(at + 1) + " has no head", "",
                                       "Say in the first line what it holds, or take it out."));
    }
    const auto same = [&](const std::string& other) { return fold_case(other) == fold_case(name); };
    const auto before = table.head.begin() + static_cast<std::ptrdiff_t>(at);
    if (!name.empty() && std::any_of(table.head.begin(), before, same)) {
      faults.push_back(list_unreadable(table.head_line, "two columns are called \"" + name + "\"",
                                       name, "Take one of them out."));
    }
  }
}

void add_row(CsvTable& table, std::vector<std::string> cells, int number, Faults& faults) {
  if (is_blank(cells)) return;
  if (table.head_line == 0) {
    table.head_line = number;
    table.head = std::move(cells);
    return check_head(table, faults);
  }
  if (cells.size() == table.head.size()) {
    table.rows.push_back({number, std::move(cells)});
    return;
  }
  faults.push_back(list_unreadable(
      number,
      "the line has " + std::to_string(cells.size()) + " cells and the head has " +
          std::to_string(table.head.size()),
      cells.front(), "Give it as many; a cell that holds the separator stands in quotes."));
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

CsvTable csv_table(std::span<const std::string> lines) {
  CsvTable table;
  Faults& faults = table.faults;
  char separator = ',';
  int number = 0;
  for (const std::string& whole : lines) {
    ++number;
    const std::string_view line = without_ends(whole, number == 1);
    if (auto fault = no_text(line, number)) {
      faults.push_back(*std::move(fault));
      continue;
    }
    if (table.head_line == 0) separator = separator_in(line);
    auto cells = LineReading(line, number, separator).cells();
    if (cells) {
      add_row(table, *std::move(cells), number, faults);
    } else {
      faults.insert(faults.end(), cells.faults().begin(), cells.faults().end());
    }
  }
  if (table.head_line == 0 && faults.empty()) {
    faults.push_back(
        list_unreadable(0, "the list is empty", "", "Its first line says what the columns hold."));
  }
  return table;
}

}  // namespace evenclaw
