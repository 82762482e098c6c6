#include "core/exchange/csv_written.hpp"

#include <cstdint>
#include <variant>

namespace evenclaw {

namespace {

// What Excel, LibreOffice and others run as a formula (OWASP, CSV injection).
constexpr std::string_view begins_a_formula = "=+-@\t\r\n";

bool needs_quotes(std::string_view text) {
  if (text.empty()) return false;
  const bool has_space_at_end = text.front() == ' ' || text.back() == ' ';
  return has_space_at_end || text.find_first_of(",;\"\r\n\t") != text.npos;
}

std::string quoted(std::string_view text) {
  std::string out = "\"";
  for (const char letter : text) {
    if (letter == '"') out += '"';
    out += letter;
  }
  return out + '"';
}

std::string text_cell(std::string text) {
  const bool is_harmful = !text.empty() && begins_a_formula.find(text.front()) != text.npos;
  if (is_harmful) text.insert(text.begin(), '\'');
  return needs_quotes(text) ? quoted(text) : text;
}

}  // namespace

std::string csv_cell(const Cell& cell) {
  if (const auto* number = std::get_if<std::int64_t>(&cell)) return std::to_string(*number);
  const auto* text = std::get_if<std::string>(&cell);
  return text == nullptr ? std::string() : text_cell(*text);
}

std::string csv_line(const Cells& cells) {
  std::string line;
  for (std::size_t at = 0; at < cells.size(); ++at)
    line += (at > 0 ? "," : "") + csv_cell(cells[at]);
  return line + "\r\n";
}

}  // namespace evenclaw
