// How a command answers: faults with their remedy, values as JSON, and the exit code that fits.
#pragma once

#include <cstdint>
#include <iostream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "core/base/fields.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/wire/value_json.hpp"

namespace evenclaw::cli {

/// A file that was made.
struct FileAnswer {
  std::string file;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("file", &FileAnswer::file, "where it lies");
  }
};

/// An entry that was written into the log.
struct EntryAnswer {
  EntryId entry;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("entry", &EntryAnswer::entry, "the entry that was written");
  }
};

/// A fault as JSON tells it.
struct FaultAnswer {
  std::string slug;
  std::string message;
  std::string token;
  std::int32_t line = 0;
  std::int32_t column = 0;
  std::string remedy;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("slug", &FaultAnswer::slug, "which error of docs/errors.md");
    visit("message", &FaultAnswer::message, "what happened, for people");
    visit("token", &FaultAnswer::token, "the word in question");
    visit("line", &FaultAnswer::line, "in which line, from 1; 0 for none");
    visit("column", &FaultAnswer::column, "at which place in it, from 1; 0 for none");
    visit("remedy", &FaultAnswer::remedy, "what to do");
  }
};

FaultAnswer as_answer(const Fault& fault);

/// What a command answers with --json when it could not do what was asked.
struct FaultsAnswer {
  std::vector<FaultAnswer> faults;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("faults", &FaultsAnswer::faults, "all that is wrong");
  }
};

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
template <HasFields T>
void tell_done(const Invocation& invocation, std::string_view words, const T& value) {
  if (invocation.json) {
    print_json(value);
  } else {
    std::cout << words << '\n';
  }
}

/// A list is printed as one JSON array.
template <HasFields T>
void print_json(const std::vector<T>& values) {
  JsonArray array;
  for (const T& value : values) array.push_back(to_json(value));
  std::cout << pretty_json(Json(std::move(array))) << '\n';
}

}  // namespace evenclaw::cli
