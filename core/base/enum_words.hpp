// The one spelling of every enum value on the wire, in SQL and in the data dictionary.
#pragma once

#include <cassert>
#include <optional>
#include <string_view>
#include <type_traits>

namespace evenclaw {

template <class E>
struct EnumWord {
  E value;
  std::string_view word;
};

/// Specialised beside each enum: `static constexpr EnumWord<E> table[] = {{E::x, "x"}, ...};`
/// The words never change once released: they stand in logs.
template <class E>
struct EnumWords;

template <class E>
concept WordedEnum = std::is_enum_v<E> && requires {
  EnumWords<E>::table;
};

/// The word of a value; a value outside the table is our mistake.
template <WordedEnum E>
constexpr std::string_view word_of(E value) {
  for (const auto& row : EnumWords<E>::table) {
    if (row.value == value) return row.word;
  }
  assert(false && "enum value without a word");
  return {};
}

/// The value of a word, or nothing when the word is not in the table.
template <WordedEnum E>
constexpr std::optional<E> enum_of(std::string_view word) {
  for (const auto& row : EnumWords<E>::table) {
    if (row.word == word) return row.value;
  }
  return std::nullopt;
}

}  // namespace evenclaw
