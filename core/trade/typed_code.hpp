// What a person or a reader types of a tag, without the marks that only part its groups.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace evenclaw {

/// The characters that count, small ASCII letters as capitals, and where each of them was typed.
struct TypedCode {
  std::string characters;
  std::vector<std::size_t> places;  // byte of the typed text, one per character

  /// The column (from 1) of the character `at`; the first column when there is no such character.
  [[nodiscard]] int column(std::size_t at) const;
};

/// The code in a typed text: spaces, tabs and every mark in `separators` are left out.
TypedCode typed_code(std::string_view text, std::string_view separators);

}  // namespace evenclaw
