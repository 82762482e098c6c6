#include "core/base/length.hpp"

#include <cstdlib>
#include <limits>

#include "core/base/ascii.hpp"

namespace evenclaw {

namespace {

bool ends_with(std::string_view text, std::string_view end) {
  return text.size() >= end.size() && text.substr(text.size() - end.size()) == end;
}

// Whole digits, then at most one decimal, as a count of tenths; nothing when it is anything else.
std::optional<std::int64_t> tenths_of(std::string_view number) {
  constexpr std::size_t enough_digits = 10;
  const std::size_t point = number.find('.');
  const std::string_view whole = number.substr(0, point);
  if (whole.empty() || whole.size() > enough_digits) return std::nullopt;
  std::int64_t tenths = 0;
  for (const char c : whole) {
    if (!is_digit(c)) return std::nullopt;
    tenths = tenths * 10 + (c - '0');
  }
  tenths *= 10;
  if (point == std::string_view::npos) return tenths;
  const std::string_view decimals = number.substr(point + 1);
  if (decimals.size() != 1 || !is_digit(decimals[0])) return std::nullopt;
  return tenths + (decimals[0] - '0');
}

}  // namespace

std::string to_text(Length length) {
  const std::int64_t size = std::llabs(length.tenths_mm);
  std::string text = length.tenths_mm < 0 ? "-" : "";
  text += std::to_string(size / 10);
  if (size % 10 != 0) text += "." + std::to_string(size % 10);
  return text + " mm";
}

std::optional<Length> length_from_text(std::string_view text) {
  const bool in_cm = ends_with(text, "cm");
  if (!in_cm && !ends_with(text, "mm")) return std::nullopt;
  text.remove_suffix(2);
  if (ends_with(text, " ")) text.remove_suffix(1);
  const bool is_negative = !text.empty() && text.front() == '-';
  if (is_negative) text.remove_prefix(1);

  const std::optional<std::int64_t> tenths = tenths_of(text);
  if (!tenths) return std::nullopt;
  const std::int64_t tenths_mm = (in_cm ? 10 : 1) * (is_negative ? -*tenths : *tenths);
  if (tenths_mm < std::numeric_limits<std::int32_t>::min()) return std::nullopt;
  if (tenths_mm > std::numeric_limits<std::int32_t>::max()) return std::nullopt;
  return Length{static_cast<std::int32_t>(tenths_mm)};
}

}  // namespace evenclaw
