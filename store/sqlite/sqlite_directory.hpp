// Names of people in the same file as the log, in a table of their own that can forget them.
#pragma once

#include <memory>

#include "core/ports/directory.hpp"

namespace evenclaw {

class Connection;
class SqliteStore;

class SqliteDirectory final : public Directory {
 public:
  /// On the file of the store; may outlive it.
  explicit SqliteDirectory(const SqliteStore& store);
  ~SqliteDirectory() override;

  Result<std::optional<Person>> find(std::string_view name) override;
  Outcome add(const Person& person) override;
  Outcome remove(PersonId id) override;
  Result<std::vector<Person>> everybody() override;

 private:
  std::shared_ptr<Connection> connection_;
};

}  // namespace evenclaw
