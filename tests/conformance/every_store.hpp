// Every store there is, empty and ready, so that one suite holds them all to the same answers.
#pragma once

#include <doctest/doctest.h>

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/ports/directory.hpp"
#include "core/ports/store.hpp"
#include "store/memory/memory_directory.hpp"
#include "store/memory/memory_store.hpp"
#include "store/sqlite/sqlite_directory.hpp"
#include "store/sqlite/sqlite_store.hpp"
#include "tests/store/temporary_folder.hpp"

namespace evenclaw {

struct EmptyStore {
  std::string_view name;
  std::unique_ptr<Store> store;
  std::unique_ptr<Directory> directory;
};

inline EmptyStore empty_memory_store() {
  return {"memory", std::make_unique<MemoryStore>(), std::make_unique<MemoryDirectory>()};
}

inline EmptyStore empty_sqlite_store(const TemporaryFolder& folder) {
  auto opened = SqliteStore::open(folder.file("records"), OpenMode::create);
  REQUIRE_MESSAGE(opened.ok(), (opened.ok() ? "" : opened.faults().front().message));
  auto directory = std::make_unique<SqliteDirectory>(**opened);
  return {"sqlite", *std::move(opened), std::move(directory)};
}

/// Calls `test` with each store, every one empty.
template <class Test>
void for_every_store(Test&& test) {
  const TemporaryFolder folder;
  std::vector<EmptyStore> stores;
  stores.push_back(empty_memory_store());
  stores.push_back(empty_sqlite_store(folder));
  for (EmptyStore& store : stores) {
    CAPTURE(store.name);
    test(store);
  }
}

/// The value, or the test ends with what went wrong.
template <class T>
T taken(Result<T> result) {
  REQUIRE_MESSAGE(result.ok(), (result.ok() ? "" : result.faults().front().message));
  return *std::move(result);
}

}  // namespace evenclaw
