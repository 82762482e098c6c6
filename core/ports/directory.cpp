#include "core/ports/directory.hpp"

namespace evenclaw {

std::string shown_name(const std::vector<Person>& everybody, PersonId id) {
  for (const Person& person : everybody) {
    if (person.id == id) return person.removed ? "person removed" : person.name;
  }
  return "unknown person";
}

}  // namespace evenclaw
