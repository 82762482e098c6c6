#include "core/wire/cells.hpp"

#include "core/base/text.hpp"

namespace evenclaw::cells_detail {

namespace {

std::string shown(const Cell& cell) {
  constexpr std::size_t max_shown = 40;
  if (const auto* number = std::get_if<std::int64_t>(&cell)) return std::to_string(*number);
  if (const auto* text = std::get_if<std::string>(&cell)) {
    return "\"" + shortened(valid_utf8(*text), max_shown) + "\"";
  }
  return "nothing";
}

}  // namespace

Fault wrong_cell(std::string_view column, std::string_view expected, const Cell& found) {
  Fault fault{"row-unreadable", {}, std::string(column)};
  fault.message = fault.token + ": expected " + std::string(expected) + ", found " + shown(found);
  return fault;
}

Fault wrong_cell_count(std::size_t expected, std::size_t found) {
  return Fault{"row-unreadable",
               "expected " + std::to_string(expected) + " columns, found " + std::to_string(found)};
}

}  // namespace evenclaw::cells_detail
