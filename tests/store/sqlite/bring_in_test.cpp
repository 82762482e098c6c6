#include "store/sqlite/bring_in.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <string>

#include "store/sqlite/connection.hpp"
#include "tests/store/temporary_folder.hpp"

using namespace evenclaw;

namespace {

/// A table whose every row takes a page and more.
struct Growing {
  TemporaryFolder folder;
  std::string file = folder.file("file");
  Connection connection{file, Access::create};

  Growing() {
    connection.run("PRAGMA journal_mode = WAL");
    connection.run("CREATE TABLE t (bytes BLOB) STRICT");
    bring_in_from(connection.raw(), 10);
  }

  void grow(int rows) {
    for (int i = 0; i < rows; ++i) connection.run("INSERT INTO t VALUES (zeroblob(5000))");
  }

  [[nodiscard]] std::uintmax_t log_bytes() const {
    return std::filesystem::file_size(file + "-wal");
  }
};

}  // namespace

TEST_CASE("a write-ahead log that has grown to its size is brought in and left empty") {
  Growing growing;
  CHECK(growing.log_bytes() > 0);
  growing.grow(1);
  CHECK(growing.log_bytes() > 0);
  std::uintmax_t least = growing.log_bytes();
  for (int i = 0; i < 12; ++i) {
    growing.grow(1);
    least = std::min(least, growing.log_bytes());
  }
  CHECK(least == 0);
  CHECK(growing.connection.integer_of("SELECT count(*) FROM t") == 13);
}

TEST_CASE("while somebody reads, a write is not held up, and the log is brought in later") {
  Growing growing;
  growing.grow(1);
  Connection reader(growing.file, Access::read);
  {
    auto reading = reader.prepared("SELECT count(*) FROM t");
    REQUIRE(reading->step());
    growing.grow(30);
    CHECK(growing.log_bytes() > 0);
    CHECK(reading->integer_at(0) == 1);
  }
  growing.grow(1);
  CHECK(growing.log_bytes() == 0);
  CHECK(reader.integer_of("SELECT count(*) FROM t") == 32);
}
