#include "cli/columns.hpp"

#include <algorithm>
#include <sstream>

#include "core/base/text.hpp"

namespace evenclaw::cli {

std::string padded(std::string_view text, std::size_t width) {
  std::string out(text);
  const std::size_t characters = character_count(text);
  if (characters < width) out.append(width - characters, ' ');
  return out;
}

std::string counted(std::int64_t count, std::string_view one, std::string_view several) {
  return std::to_string(count) + ' ' + std::string(count == 1 ? one : several);
}

std::string joined(const std::vector<std::string>& parts, std::string_view between) {
  std::string out;
  for (const std::string& part : parts) out += (out.empty() ? "" : std::string(between)) + part;
  return out;
}

std::string wrapped_behind(std::string_view lead, std::string_view text) {
  const std::size_t indent = character_count(lead);
  std::string out(lead);
  std::size_t column = indent;
  std::istringstream words{std::string(text)};
  for (std::string word; words >> word;) {
    const std::size_t size = character_count(word);
    if (column > indent && column + 1 + size > terminal_width) {
      out += '\n' + std::string(indent, ' ');
      column = indent;
    }
    if (column > indent) {
      out += ' ';
      ++column;
    }
    out += word;
    column += size;
  }
  return out;
}

std::string table(const std::vector<std::vector<std::string>>& rows) {
  std::vector<std::size_t> widths;
  for (const auto& row : rows) {
    widths.resize(std::max(widths.size(), row.size()));
    for (std::size_t i = 0; i < row.size(); ++i) {
      widths[i] = std::max(widths[i], character_count(row[i]));
    }
  }
  std::string out;
  for (const auto& row : rows) {
    std::string line;
    for (std::size_t i = 0; i < row.size(); ++i) line += "  " + padded(row[i], widths[i]);
    line.erase(line.find_last_not_of(' ') + 1);
    out += line + '\n';
  }
  return out;
}

}  // namespace evenclaw::cli
