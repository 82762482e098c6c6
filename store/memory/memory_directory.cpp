#include "store/memory/memory_directory.hpp"

#include "core/base/text.hpp"

namespace evenclaw {

Result<std::optional<Person>> MemoryDirectory::find(std::string_view name) {
  const std::string folded = fold_case(name);
  for (const auto& [id, person] : people_) {
    if (!person.removed && fold_case(person.name) == folded) return std::optional<Person>(person);
  }
  return std::optional<Person>();
}

Outcome MemoryDirectory::add(const Person& person) {
  people_.try_emplace(person.id, person);
  if (person.removed) return remove(person.id);
  return Done{};
}

Outcome MemoryDirectory::remove(PersonId id) {
  const auto found = people_.find(id);
  if (found == people_.end()) return Done{};
  found->second.name.clear();
  found->second.removed = true;
  return Done{};
}

Result<std::vector<Person>> MemoryDirectory::everybody() {
  std::vector<Person> all;
  for (const auto& [id, person] : people_) all.push_back(person);
  return all;
}

}  // namespace evenclaw
