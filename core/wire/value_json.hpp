// JSON of any value type, made from its fields(): written once here, never by hand per type.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/fields.hpp"
#include "core/base/result.hpp"
#include "core/base/text.hpp"
#include "core/wire/json.hpp"
#include "core/wire/leaves.hpp"

namespace evenclaw {

// Members may be leaves (core/wire/leaves.hpp), optional (absent when empty), vector (absent when
// empty) and nested fields() types (always present). Packed types such as a set of feet join by
// providing to_text() and value_from_text(std::string_view, std::type_identity<T>).

/// The object of a value, one member per field.
template <HasFields T>
Json to_json(const T& value);

/// The value of an object. Unknown members are ignored, missing ones keep the default of the
/// struct, null means missing for an optional only. Every fault has the slug "json-unreadable" and
/// the path of the member in `token`, such as "feet[2].findings[0].degree".
template <HasFields T>
Result<T> from_json(const Json& json);

namespace value_json_detail {

template <class T>
Json json_of(const T& value) {
  if constexpr (is_optional<T>) {
    return value ? json_of(*value) : Json();
  } else if constexpr (is_list<T>) {
    JsonArray array;
    array.reserve(value.size());
    for (const auto& element : value) array.push_back(json_of(element));
    return Json(std::move(array));
  } else if constexpr (HasFields<T>) {
    return to_json(value);
  } else {
    static_assert(Leaf<T>, "a field must be a leaf, optional, vector or fields() type");
    if constexpr (std::same_as<T, bool>) {
      return Json(value);
    } else if constexpr (NumberLeaf<T>) {
      return Json(number_of(value));
    } else {
      return Json(text_of(value));
    }
  }
}

template <class T>
bool is_absent(const T& value) {
  if constexpr (is_optional<T>) {
    return !value.has_value();
  } else if constexpr (is_list<T>) {
    return value.empty();
  } else {
    return false;
  }
}

/// Collects every fault with the path at which it was met.
class Reader {
 public:
  template <class T>
  void read(const Json& json, T& into) {
    if constexpr (is_optional<T>) {
      read_optional(json, into);
    } else if constexpr (is_list<T>) {
      read_list(json, into);
    } else if constexpr (HasFields<T>) {
      read_object(json, into);
    } else {
      read_leaf(json, into);
    }
  }

  Faults take_faults() && { return std::move(faults_); }

 private:
  template <class T>
  void read_optional(const Json& json, std::optional<T>& into) {
    into.reset();
    if (json.is_null()) return;
    T value{};
    const std::size_t faults_before = faults_.size();
    read(json, value);
    if (faults_.size() == faults_before) into = std::move(value);
  }

  template <class T>
  void read_list(const Json& json, std::vector<T>& into) {
    into.clear();
    const JsonArray* array = json.as_array();
    if (array == nullptr) return expected("a list", json);
    into.reserve(array->size());
    for (std::size_t i = 0; i < array->size(); ++i) {
      const std::size_t length = path_.size();
      path_ += "[" + std::to_string(i) + "]";
      T value{};
      read((*array)[i], value);
      into.push_back(std::move(value));
      path_.resize(length);
    }
  }

  template <class T>
  void read_object(const Json& json, T& into) {
    if (json.as_object() == nullptr) return expected("an object", json);
    for_each_field(into, [&](std::string_view name, auto& member, std::string_view) {
      const Json* found = json.member(name);
      if (found == nullptr) return;
      const std::size_t length = path_.size();
      if (length > 0) path_ += '.';
      path_ += name;
      read(*found, member);
      path_.resize(length);
    });
  }

  template <class T>
  void read_leaf(const Json& json, T& into) {
    static_assert(Leaf<T>, "a field must be a leaf, optional, vector or fields() type");
    std::optional<T> value;
    if constexpr (std::same_as<T, bool>) {
      if (const bool* found = json.as_bool()) value = *found;
    } else if constexpr (NumberLeaf<T>) {
      if (const std::int64_t* found = json.as_integer()) value = value_of_number<T>(*found);
    } else {
      if (const std::string* found = json.as_string()) value = value_of_text<T>(*found);
    }
    if (!value) return expected(expected_words<T>(), json);
    into = std::move(*value);
  }

  void expected(std::string_view what, const Json& found);

  std::string path_;
  Faults faults_;
};

}  // namespace value_json_detail

template <HasFields T>
Json to_json(const T& value) {
  JsonObject object;
  for_each_field(value, [&](std::string_view name, const auto& member, std::string_view) {
    if (value_json_detail::is_absent(member)) return;
    object.emplace(std::string(name), value_json_detail::json_of(member));
  });
  return Json(std::move(object));
}

template <HasFields T>
Result<T> from_json(const Json& json) {
  T value{};
  value_json_detail::Reader reader;
  reader.read(json, value);
  Faults faults = std::move(reader).take_faults();
  if (!faults.empty()) return faults;
  return value;
}

}  // namespace evenclaw
