#include "store/sqlite/connection.hpp"

#include <doctest/doctest.h>

#include <limits>
#include <string>

#include "tests/store/temporary_folder.hpp"

using namespace evenclaw;

namespace {

struct Fresh {
  TemporaryFolder folder;
  Connection connection{folder.file("file"), Access::create};

  Fresh() { connection.run("CREATE TABLE t (a ANY, b ANY) STRICT"); }
};

std::string slug_of(const std::function<void()>& act) {
  const Outcome outcome = caught(act);
  return outcome.ok() ? "" : outcome.faults().front().slug;
}

}  // namespace

TEST_CASE("cells come back as they were bound") {
  Fresh fresh;
  const Cells cells = {Cell{},
                       std::int64_t{0},
                       std::numeric_limits<std::int64_t>::min(),
                       std::numeric_limits<std::int64_t>::max(),
                       std::string(),
                       std::string("a\0b", 3),
                       std::string("\xc3\xa9")};
  for (const Cell& cell : cells) {
    auto echo = fresh.connection.prepared("SELECT ?");
    REQUIRE(echo->cell(cell).step());
    CHECK(echo->cell_at(0) == cell);
  }
}

TEST_CASE("ids and digests come back as they were bound, anything of another length as nil") {
  Fresh fresh;
  const Uuid id = uuid_derived("x");
  auto echo = fresh.connection.prepared("SELECT ?, ?, x'0102', NULL");
  REQUIRE(echo->id(id).digest(sha256("x")).step());
  CHECK(echo->id_at(0) == id);
  CHECK(echo->digest_at(1) == sha256("x"));
  CHECK(echo->id_at(2).is_nil());
  CHECK(echo->digest_at(3) == Digest{});
  CHECK(echo->is_empty(3));
}

TEST_CASE("a statement lent twice at once is two statements") {
  Fresh fresh;
  fresh.connection.run("INSERT INTO t VALUES (1, 1), (2, 2)");
  const std::string sql = "SELECT a FROM t ORDER BY a";
  auto outer = fresh.connection.prepared(sql);
  REQUIRE(outer->step());
  {
    auto inner = fresh.connection.prepared(sql);
    REQUIRE(inner->step());
    CHECK(inner->integer_at(0) == 1);
  }
  REQUIRE(outer->step());
  CHECK(outer->integer_at(0) == 2);
}

TEST_CASE("a transaction that was not committed is undone") {
  Fresh fresh;
  {
    const Transaction transaction(fresh.connection);
    fresh.connection.run("INSERT INTO t VALUES (1, 1)");
  }
  CHECK(fresh.connection.integer_of("SELECT count(*) FROM t") == 0);
  {
    Transaction transaction(fresh.connection);
    fresh.connection.run("INSERT INTO t VALUES (1, 1)");
    transaction.commit();
  }
  CHECK(fresh.connection.integer_of("SELECT count(*) FROM t") == 1);
  CHECK_FALSE(fresh.connection.is_in_transaction());
}

TEST_CASE("what SQLite refuses is thrown as a fault that names the file") {
  Fresh fresh;
  const Outcome outcome = caught([&] { fresh.connection.run("SELECT nonsense"); });
  REQUIRE_FALSE(outcome.ok());
  CHECK(outcome.faults().front().token == fresh.connection.file());
  CHECK(outcome.faults().front().message.find(fresh.connection.file()) == 0);
  CHECK(outcome.faults().front().message.find("nonsense") != std::string::npos);
}

TEST_CASE("a file opened for reading takes no write") {
  const TemporaryFolder folder;
  { Connection(folder.file("file"), Access::create).run("CREATE TABLE t (a ANY) STRICT"); }
  Connection reading(folder.file("file"), Access::read);
  CHECK(reading.is_read_only());
  CHECK(slug_of([&] { reading.run("INSERT INTO t VALUES (1)"); }) == "file-read-only");
}

TEST_CASE("a file taken as unchanging is read whatever its name holds") {
  const TemporaryFolder folder;
  const std::string file = folder.file("a?b#c%41 d");
  { Connection(file, Access::create).run("CREATE TABLE t (a ANY) STRICT"); }
  Connection reading = Connection::of_unchanging(file);
  CHECK(reading.integer_of("SELECT count(*) FROM sqlite_schema") == 1);
  CHECK(reading.integer_of("SELECT a FROM t") == 0);
}

TEST_CASE("a file that is not there is not made unless asked for") {
  const TemporaryFolder folder;
  CHECK(slug_of([&] { Connection(folder.file("no"), Access::write); }) == "file-unreadable");
  CHECK_FALSE(std::filesystem::exists(folder.file("no")));
}
