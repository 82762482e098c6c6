#include "core/paper/text_table.hpp"

#include <algorithm>
#include <string_view>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

using Widths = std::vector<std::size_t>;
using Rows = std::vector<std::vector<std::string>>;

constexpr std::size_t gap = 2;
constexpr std::size_t narrowest = 3;
constexpr std::size_t longest_word_kept = 24;

std::vector<std::string_view> words_in(std::string_view text) {
  std::vector<std::string_view> words;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    if (end > at) words.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  return words;
}

/// The bytes of the first so many characters.
std::size_t bytes_of(std::string_view text, std::size_t characters) {
  std::size_t at = 0;
  for (std::size_t seen = 0; at < text.size(); ++at) {
    const bool begins = (static_cast<unsigned char>(text[at]) & 0xC0U) != 0x80U;
    if (begins && seen++ == characters) break;
  }
  return at;
}

std::vector<std::string> cell_lines(std::string_view cell, std::size_t width) {
  std::vector<std::string> lines(1);
  std::size_t used = 0;
  for (std::string_view word : words_in(cell)) {
    std::size_t length = character_count(word);
    if (used > 0 && used + 1 + length > width) {
      lines.emplace_back();
      used = 0;
    }
    for (; length > width; length = character_count(word)) {
      const std::size_t end = bytes_of(word, width);
      lines.back() += word.substr(0, end);
      lines.emplace_back();
      word.remove_prefix(end);
    }
    if (used > 0) lines.back() += ' ';
    lines.back() += word;
    used += length + (used > 0 ? 1 : 0);
  }
  return lines;
}

Widths natural_widths(const Rows& rows, std::size_t columns) {
  Widths widths(columns, 0);
  for (const auto& row : rows) {
    for (std::size_t i = 0; i < columns; ++i) {
      widths[i] = std::max(widths[i], character_count(row[i]));
    }
  }
  return widths;
}

std::size_t width_of_longest_word(std::string_view cell) {
  std::size_t length = narrowest;
  for (const std::string_view word : words_in(cell)) {
    length = std::max(length, std::min(character_count(word), longest_word_kept));
  }
  return length;
}

/// Narrower than its longest word no column becomes while another one can.
Widths word_widths(const Rows& rows, std::size_t columns) {
  Widths widths(columns, narrowest);
  for (const auto& row : rows) {
    for (std::size_t i = 0; i < columns; ++i) {
      widths[i] = std::max(widths[i], width_of_longest_word(row[i]));
    }
  }
  return widths;
}

std::size_t line_length(const Widths& widths) {
  std::size_t length = gap * (widths.size() - 1);
  for (const std::size_t width : widths) length += width;
  return length;
}

/// The widest of those that may still become narrower; null when none may.
std::size_t* widest_above(Widths& widths, const Widths& least) {
  std::size_t* widest = nullptr;
  for (std::size_t i = 0; i < widths.size(); ++i) {
    const bool is_wider = widest == nullptr || widths[i] > *widest;
    if (widths[i] > least[i] && is_wider) widest = &widths[i];
  }
  return widest;
}

Widths fitting_widths(const Rows& rows, std::size_t columns, std::size_t width) {
  Widths widths = natural_widths(rows, columns);
  for (const Widths& least : {word_widths(rows, columns), Widths(columns, narrowest)}) {
    while (line_length(widths) > width) {
      std::size_t* widest = widest_above(widths, least);
      if (widest == nullptr) break;
      --*widest;
    }
  }
  return widths;
}

/// Line `at` of a row: what each of its cells says there.
std::string line_of(const std::vector<TableColumn>& columns, const Rows& cells,
                    const Widths& widths, std::size_t at) {
  std::string line;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const std::string cell = at < cells[i].size() ? cells[i][at] : std::string();
    const std::string space(widths[i] - character_count(cell), ' ');
    if (i > 0) line += std::string(gap, ' ');
    line += columns[i].align == Align::end ? space + cell : cell + space;
  }
  while (!line.empty() && line.back() == ' ') line.pop_back();
  return line;
}

}  // namespace

std::vector<std::string> table_lines(const std::vector<TableColumn>& columns, const Rows& rows,
                                     std::size_t width) {
  if (columns.empty()) return {};
  const Widths widths = fitting_widths(rows, columns.size(), width);
  std::vector<std::string> lines;
  for (const auto& row : rows) {
    Rows cells;
    std::size_t height = 0;
    for (std::size_t i = 0; i < columns.size(); ++i) {
      cells.push_back(cell_lines(row[i], widths[i]));
      height = std::max(height, cells.back().size());
    }
    for (std::size_t at = 0; at < height; ++at) {
      lines.push_back(line_of(columns, cells, widths, at));
    }
  }
  return lines;
}

}  // namespace evenclaw
