// What a single value is on the wire: the types that are no structs, and how each reads and writes.
#pragma once

#include <concepts>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/digest.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"
#include "core/base/length.hpp"

namespace evenclaw {

// One overload per type that travels as text; a packed type adds its own beside itself.
inline std::optional<Day> value_from_text(std::string_view text, std::type_identity<Day>) {
  return day_from_text(text);
}

inline std::optional<Instant> value_from_text(std::string_view text, std::type_identity<Instant>) {
  return instant_from_text(text);
}

inline std::optional<Uuid> value_from_text(std::string_view text, std::type_identity<Uuid>) {
  return uuid_from_text(text);
}

inline std::optional<Digest> value_from_text(std::string_view text, std::type_identity<Digest>) {
  return digest_from_text(text);
}

template <class Tag>
std::optional<Id<Tag>> value_from_text(std::string_view text, std::type_identity<Id<Tag>>) {
  const std::optional<Uuid> uuid = uuid_from_text(text);
  if (!uuid) return std::nullopt;
  return Id<Tag>{*uuid};
}

/// bool, int32 and int64, and Length, which travels as its tenths of a millimetre.
template <class T>
concept NumberLeaf = std::same_as<T, bool> || std::same_as<T, std::int32_t> ||
    std::same_as<T, std::int64_t> || std::same_as<T, Length>;

/// Types with `std::string to_text(const T&)` and
/// `std::optional<T> value_from_text(std::string_view, std::type_identity<T>)`.
template <class T>
concept TextLeaf = !NumberLeaf<T> && requires(const T& value, std::string_view text) {
  { to_text(value) } -> std::convertible_to<std::string>;
  { value_from_text(text, std::type_identity<T>{}) } -> std::same_as<std::optional<T>>;
};

template <class T>
concept Leaf = NumberLeaf<T> || TextLeaf<T> || WordedEnum<T> || std::same_as<T, std::string>;

template <class T>
inline constexpr bool is_optional = false;
template <class T>
inline constexpr bool is_optional<std::optional<T>> = true;

template <class T>
inline constexpr bool is_list = false;
template <class T>
inline constexpr bool is_list<std::vector<T>> = true;

template <class T>
inline constexpr bool is_id = false;
template <class Tag>
inline constexpr bool is_id<Id<Tag>> = true;

/// The leaf kind as the data dictionary names it.
template <Leaf T>
constexpr std::string_view leaf_word() {
  if constexpr (std::same_as<T, bool>) return "bool";
  if constexpr (std::same_as<T, Length>) return "tenths of mm";
  if constexpr (NumberLeaf<T>) return "whole number";
  if constexpr (WordedEnum<T>) return "word";
  if constexpr (std::same_as<T, Day>) return "ISO day";
  if constexpr (std::same_as<T, Instant>) return "RFC 3339 instant";
  if constexpr (is_id<T> || std::same_as<T, Uuid>) return "id";
  if constexpr (std::same_as<T, Digest>) return "SHA-256";
  return "text";
}

/// What a reader must find for T, in words for a fault: "one of lf, rf, lh, rh", "ISO day".
template <Leaf T>
std::string expected_words() {
  if constexpr (!WordedEnum<T>) {
    return std::same_as<T, bool> ? "true or false" : std::string(leaf_word<T>());
  } else {
    std::string words = "one of";
    std::string_view before = " ";
    for (const auto& row : EnumWords<T>::table) {
      words += before;
      words += row.word;
      before = ", ";
    }
    return words;
  }
}

/// The number of a bool, integer or Length.
template <NumberLeaf T>
std::int64_t number_of(const T& value) {
  if constexpr (std::same_as<T, Length>) {
    return value.tenths_mm;
  } else {
    return value;
  }
}

/// The value of a number, or nothing when it is out of T's range (a bool is 0 or 1).
template <NumberLeaf T>
std::optional<T> value_of_number(std::int64_t number) {
  if constexpr (std::same_as<T, std::int64_t>) {
    return number;
  } else if constexpr (std::same_as<T, bool>) {
    if (number != 0 && number != 1) return std::nullopt;
    return number == 1;
  } else {
    const auto narrow = static_cast<std::int32_t>(number);
    if (narrow != number) return std::nullopt;
    return T{narrow};
  }
}

/// The text of any leaf that is no number.
template <Leaf T>

requires(!NumberLeaf<T>) std::string text_of(const T& value) {
  if constexpr (std::same_as<T, std::string>) {
    return value;
  } else if constexpr (WordedEnum<T>) {
    return std::string(word_of(value));
  } else {
    return to_text(value);
  }
}

template <Leaf T>

requires(!NumberLeaf<T>) std::optional<T> value_of_text(std::string_view text) {
  if constexpr (std::same_as<T, std::string>) {
    return std::string(text);
  } else if constexpr (WordedEnum<T>) {
    return enum_of<T>(text);
  } else {
    return value_from_text(text, std::type_identity<T>{});
  }
}

}  // namespace evenclaw
