// The tables of worked lines in docs/format/call-line.md, as rows of a test.
#pragma once

#include <doctest/doctest.h>

#include <fstream>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/text.hpp"

namespace evenclaw::saying {

// Tests run from the root of the repository.
inline constexpr const char* page = "docs/format/call-line.md";
inline constexpr const char* german_page = "docs/format/call-line-de.md";

struct WorkedLine {
  std::string number;
  std::vector<std::string> before;
  std::string line;
  std::string outcome;
  std::string also;  // of a further column
};

inline std::vector<std::string> parts_of(std::string_view text, std::string_view separator) {
  std::vector<std::string> parts;
  while (!text.empty()) {
    const std::size_t end = text.find(separator);
    parts.emplace_back(trimmed(text.substr(0, end)));
    if (end == std::string_view::npos) break;
    text.remove_prefix(end + separator.size());
  }
  return parts;
}

inline std::string without_ticks(std::string text) {
  if (text.size() < 2 || text.front() != '`') return text;
  return text.substr(1, text.size() - 2);
}

// The rows of the table in whose head line this title stands behind the line.
inline std::vector<WorkedLine> rows_under(std::string_view title, const char* of = page) {
  std::ifstream file(of);
  REQUIRE(file.is_open());
  std::vector<WorkedLine> rows;
  bool is_here = false;
  for (std::string text; std::getline(file, text);) {
    const std::vector<std::string> cells = parts_of(text, "|");
    if (cells.size() < 5) {
      is_here = false;
    } else if (cells[1] == "no") {
      is_here = cells[4] == title;
    } else if (is_here && cells[1] != "---") {
      rows.push_back({cells[1], parts_of(without_ticks(cells[2]), "//"), without_ticks(cells[3]),
                      without_ticks(cells[4]),
                      cells.size() > 5 ? without_ticks(cells[5]) : std::string()});
    }
  }
  return rows;
}

}  // namespace evenclaw::saying
