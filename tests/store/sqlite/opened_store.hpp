// A store of records in a file that a test opens and looks into.
#pragma once

#include <doctest/doctest.h>

#include <memory>
#include <string>
#include <string_view>
#include <utility>

#include "store/sqlite/sqlite_store.hpp"
#include "tests/store/temporary_folder.hpp"

namespace evenclaw {

inline std::unique_ptr<SqliteStore> opened_store(const std::string& file, OpenMode mode) {
  auto store = SqliteStore::open(file, mode);
  REQUIRE(store.ok());
  return *std::move(store);
}

/// The words stand somewhere in the bytes of the file or of its write-ahead log.
inline bool file_holds(const std::string& file, std::string_view words) {
  for (const char* ending : {"", "-wal"}) {
    if (bytes_of(file + ending).find(words) != std::string::npos) return true;
  }
  return false;
}

}  // namespace evenclaw
