// Lengths as whole tenths of a millimetre, the unit every stored measure uses.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace evenclaw {

struct Length {
  std::int32_t tenths_mm = 0;
  // NOLINTNEXTLINE(modernize-use-nullptr): the 0 of a rewritten a < b is no null pointer.
  friend auto operator<=>(const Length&, const Length&) = default;
};

/// "75 mm", "75.5 mm"; reading accepts mm with one decimal or whole/one-decimal cm ("7.5 cm").
std::string to_text(Length length);
std::optional<Length> length_from_text(std::string_view text);

}  // namespace evenclaw
