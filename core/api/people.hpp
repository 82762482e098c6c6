// Callers and writers by name; the log holds their ids only.
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// "Ben and Anna": one person calls or writes at a time.
bool names_two_people(std::string_view name);

/// The name is close to one that is known, so it may be a slip of the pen.
struct NameInDoubt {
  std::string said;
  std::string nearest;
  PersonId person;  // who is called by the nearest name
};

/// The person of that name, who is entered when nobody is called so. A name within edit distance 1
/// of a known one (2 from six letters on) is asked about first, unless `sure`. Fault "usage" for no
/// name, two names, or one with characters that cannot be shown.
Result<std::variant<PersonId, NameInDoubt>> person_named(const Ports& ports, std::string_view name,
                                                         bool sure);

/// As person_named(), with the doubt as a fault "answer-needed".
Result<PersonId> certain_person(const Ports& ports, std::string_view name, bool sure);

/// Whether certain_person() would take each of these names, one after the other, with the first
/// fault it would give; nobody is entered. An empty name is nobody's.
Outcome check_people(const Ports& ports, const std::vector<std::string>& names, bool sure);

/// Erases a person's name; records keep the id and read "person removed". Fault "person-not-found".
Result<PersonId> remove_person(const Ports& ports, std::string_view name);

/// The name of a person who is known, "person removed", "unknown person", or "" for a nil id.
std::string name_of(const std::vector<Person>& everybody, PersonId person);

}  // namespace evenclaw
