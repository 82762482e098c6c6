// A file with entries in it, and what can be said of it afterwards.
#pragma once

#include <doctest/doctest.h>

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "store/sqlite/check_file.hpp"
#include "store/sqlite/sqlite_store.hpp"
#include "tests/store/sample_entries.hpp"
#include "tests/store/sound_file.hpp"
#include "tests/store/temporary_folder.hpp"

namespace evenclaw {

inline Write one_entry(std::int64_t number) {
  Write write;
  write.entries.push_back(sample_entry(number, sample_device(1), sample_herd(1)));
  return write;
}

template <class T>
std::string slug_of(const Result<T>& result) {
  return result.ok() ? "" : result.faults().front().slug;
}

inline std::string slug_of_opening(const std::string& file, OpenMode mode) {
  return slug_of(SqliteStore::open(file, mode));
}

inline std::unique_ptr<SqliteStore> opened_store(const std::string& file, OpenMode mode) {
  auto store = SqliteStore::open(file, mode);
  REQUIRE_MESSAGE(store.ok(), (store.ok() ? "" : store.faults().front().message));
  return *std::move(store);
}

/// Entries 1 to `count`, each written and acknowledged by itself.
inline void fill(const std::string& file, std::int64_t count) {
  const auto store = opened_store(file, OpenMode::create);
  Write write;
  for (std::int64_t i = 1; i <= count; ++i) write.entries.push_back(one_entry(i).entries.front());
  REQUIRE(store->write(write).ok());
}

/// Exactly the entries 1 to `count` are there, whole and without a hole.
inline void expect_entries(const std::string& file, std::int64_t count) {
  const auto report = check_file(file);
  REQUIRE(report.ok());
  CHECK(is_sound(*report));
  CHECK(report->entries == count);
  const auto store = opened_store(file, OpenMode::existing);
  for (std::int64_t i = 1; i <= count; ++i) {
    const Entry expected = one_entry(i).entries.front();
    const auto found = store->find_entry(expected.envelope.id);
    REQUIRE(found.ok());
    REQUIRE(*found == expected);
  }
}

}  // namespace evenclaw
