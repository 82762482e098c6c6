// Names of people, kept outside the log so that they can be erased.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

struct Person {
  PersonId id;
  std::string name;  // empty once removed
  bool removed = false;
};

class Directory {
 public:
  Directory() = default;
  Directory(const Directory&) = delete;
  Directory& operator=(const Directory&) = delete;
  virtual ~Directory() = default;

  /// A person by name, case folded; nothing when there is none. Of several with one name the one
  /// with the smallest id.
  virtual Result<std::optional<Person>> find(std::string_view name) = 0;
  /// A person whose id is known already stays as she is, except that one added as removed loses
  /// her name.
  virtual Outcome add(const Person& person) = 0;
  /// Erases the name; the id stays and reads "person removed".
  virtual Outcome remove(PersonId id) = 0;
  virtual Result<std::vector<Person>> everybody() = 0;
};

/// The name to show: "person removed" for one who was removed, "unknown person" for an id the
/// directory never held.
std::string shown_name(const std::vector<Person>& everybody, PersonId id);

}  // namespace evenclaw
