#include "core/wire/csv.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view line_end = "\r\n";

bool looks_like_formula(std::string_view text) {
  return !text.empty() && std::string_view("=+-@\t").find(text.front()) != std::string_view::npos;
}

void append_text(std::string& out, const std::string& text) {
  const std::string safe = looks_like_formula(text) ? "'" + text : text;
  if (!safe.empty() && safe.find_first_of(",\"\r\n") == std::string::npos) {
    out += safe;
    return;
  }
  out += '"';
  for (const char c : safe) {
    if (c == '"') out += '"';
    out += c;
  }
  out += '"';
}

void append_cell(std::string& out, const Cell& cell) {
  if (const auto* number = std::get_if<std::int64_t>(&cell)) out += std::to_string(*number);
  if (const auto* text = std::get_if<std::string>(&cell)) append_text(out, *text);
}

}  // namespace

std::string csv_header(const std::vector<Column>& columns) {
  Cells names;
  for (const Column& column : columns) names.emplace_back(std::string(column.name));
  return csv_line(names);
}

std::string csv_line(const Cells& cells) {
  std::string line;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    if (i > 0) line += ',';
    append_cell(line, cells[i]);
  }
  return line.append(line_end);
}

}  // namespace evenclaw
