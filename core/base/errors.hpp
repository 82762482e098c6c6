// The one list of everything that can go wrong and is told to a person; docs/errors.md is made
// from it.
#pragma once

#include <span>
#include <string_view>

namespace evenclaw {

struct ErrorKind {
  std::string_view slug;        // stable, kebab-case; the same on the command line, HTTP, screen
  std::string_view meaning;     // what happened
  std::string_view safe;        // what is certainly not lost
  std::string_view what_to_do;  // the remedy in one sentence
};

std::span<const ErrorKind> all_errors();
const ErrorKind* find_error(std::string_view slug);

}  // namespace evenclaw
