// JSON restricted to what the log allows: integers, strings, booleans, null, arrays, objects, and
// its canonical form (RFC 8785).
#pragma once

#include <cassert>
#include <concepts>
#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/base/result.hpp"

namespace evenclaw {

/// The largest integer every JSON reader keeps exact (RFC 7493, 2.2): 2^53 - 1.
inline constexpr std::int64_t max_json_integer = 9007199254740991;

class Json;
using JsonArray = std::vector<Json>;

/// Members sorted by UTF-16 code units of their names, as RFC 8785 demands.
struct JsonNameLess {
  bool operator()(std::string_view a, std::string_view b) const;
  using is_transparent = void;
};

using JsonObject = std::map<std::string, Json, JsonNameLess>;

class Json {
 public:
  Json() = default;  // null

  // Only a real bool and real integers: a pointer or a double would otherwise turn into one.
  template <std::same_as<bool> B>
  explicit Json(B value) : value_(value) {}

  template <std::integral I>

  requires(!std::same_as<I, bool>) explicit Json(I value)
      : value_(static_cast<std::int64_t>(value)) {
    assert(is_exact(value) && "an integer that not every JSON reader keeps exact");
  }

  explicit Json(std::string value) : value_(std::move(value)) {}

  explicit Json(JsonArray value) : value_(std::move(value)) {}

  explicit Json(JsonObject value) : value_(std::move(value)) {}

  [[nodiscard]] bool is_null() const { return std::holds_alternative<std::monostate>(value_); }

  [[nodiscard]] const bool* as_bool() const { return std::get_if<bool>(&value_); }

  [[nodiscard]] const std::int64_t* as_integer() const {
    return std::get_if<std::int64_t>(&value_);
  }

  [[nodiscard]] const std::string* as_string() const { return std::get_if<std::string>(&value_); }

  [[nodiscard]] const JsonArray* as_array() const { return std::get_if<JsonArray>(&value_); }

  [[nodiscard]] const JsonObject* as_object() const { return std::get_if<JsonObject>(&value_); }

  [[nodiscard]] JsonArray* as_array() { return std::get_if<JsonArray>(&value_); }

  [[nodiscard]] JsonObject* as_object() { return std::get_if<JsonObject>(&value_); }

  /// The member of an object, or null when there is none or this is no object.
  [[nodiscard]] const Json* member(std::string_view name) const;

  friend bool operator==(const Json&, const Json&) = default;

 private:
  template <std::integral I>
  static constexpr bool is_exact(I value) {
    return std::cmp_less_equal(value, max_json_integer) &&
           std::cmp_greater_equal(value, -max_json_integer);
  }

  std::variant<std::monostate, bool, std::int64_t, std::string, JsonArray, JsonObject> value_;
};

/// Canonical bytes (RFC 8785): no spaces, sorted members, shortest escapes, UTF-8. Bytes of a
/// string that are no UTF-8 are written as U+FFFD, so that what is written can always be read;
/// an integer beyond +-max_json_integer is our mistake.
std::string canonical_json(const Json& json);

/// The same value spread over lines for people, two spaces a level.
std::string pretty_json(const Json& json);

/// Reads one JSON text. Refused, with line and column: fractions and exponents, integers beyond
/// +-(2^53 - 1) (RFC 7493), names given twice, invalid UTF-8 or lone surrogates, nesting deeper
/// than 64, anything after the value. Fault slug "json-unreadable". Never throws.
Result<Json> json_from_text(std::string_view text);

}  // namespace evenclaw
