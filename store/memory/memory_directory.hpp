// Names of people in memory.
#pragma once

#include <map>

#include "core/ports/directory.hpp"

namespace evenclaw {

class MemoryDirectory final : public Directory {
 public:
  Result<std::optional<Person>> find(std::string_view name) override;
  Outcome add(const Person& person) override;
  Outcome remove(PersonId id) override;
  Result<std::vector<Person>> everybody() override;

 private:
  std::map<PersonId, Person> people_;
};

}  // namespace evenclaw
