// How a command answers: faults with their remedy, values as JSON, and the exit code that fits.
#pragma once

#include <iostream>
#include <string>

#include "cli/command.hpp"
#include "core/base/fields.hpp"
#include "core/base/result.hpp"
#include "core/wire/value_json.hpp"

namespace evenclaw::cli {

/// Prints each fault with what is safe and what to do, on standard error (as JSON when asked for),
/// and gives the worst exit code among them.
Exit tell_faults(const Faults& faults, const Invocation& invocation);

/// The exit code that fits the slug of a fault.
Exit exit_of(std::string_view slug);

template <HasFields T>
void print_json(const T& value) {
  std::cout << pretty_json(to_json(value)) << '\n';
}

/// What was done: in words, or as one JSON object.
void tell_done(const Invocation& invocation, std::string_view words, const JsonObject& members);

/// A list is printed as one JSON array.
template <HasFields T>
void print_json(const std::vector<T>& values) {
  JsonArray array;
  for (const T& value : values) array.push_back(to_json(value));
  std::cout << pretty_json(Json(std::move(array))) << '\n';
}

}  // namespace evenclaw::cli
