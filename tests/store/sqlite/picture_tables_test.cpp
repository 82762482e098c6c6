#include "store/sqlite/picture_tables.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string_view>

#include "store/sqlite/meta.hpp"
#include "store/sqlite/open_file.hpp"
#include "store/sqlite/sqlite_store.hpp"
#include "tests/store/sample_rows.hpp"
#include "tests/store/temporary_folder.hpp"

using namespace evenclaw;

namespace {

std::size_t cows_in(SqliteStore& store) {
  const auto rows = store.select({"cow", std::nullopt, {}, {}});
  REQUIRE(rows.ok());
  return rows->size();
}

}  // namespace

TEST_CASE("a table is made from the fields of its row type") {
  CHECK(create_sql(*find_table("cow_number")) ==
        "CREATE TABLE \"cow_number\" (\"herd\" TEXT NOT NULL, \"cow\" TEXT NOT NULL, \"number\""
        " TEXT NOT NULL, \"valid_from\" TEXT NOT NULL, \"valid_to\" TEXT, PRIMARY KEY (\"herd\","
        " \"cow\", \"number\", \"valid_from\")) STRICT, WITHOUT ROWID");
}

TEST_CASE("the second column of every table says whose rows they are") {
  const std::set<std::string_view> subjects = {"cow", "visit", "scoring", "walk", "change"};
  for (const TableShape& shape : all_tables()) {
    CAPTURE(shape.name);
    const std::string_view subject = shape.columns.at(1).name;
    CHECK(subjects.count(subject) == 1);
    CHECK((rows_of(shape) == RowsOf::cow) == (subject == "cow"));
    CHECK(shape.key_columns >= 2);
  }
}

TEST_CASE("tables another version made are replaced, and the picture is asked for anew") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  {
    auto store = SqliteStore::open(file, OpenMode::create);
    REQUIRE(store.ok());
    Write write = drawn_pictures(1);
    write.entries.push_back(sample_entry(1, sample_device(1), sample_herd(1)));
    REQUIRE((*store)->write(write).ok());
    REQUIRE(cows_in(**store) > 0);
    CHECK_FALSE(*(*store)->needs_rebuild());
  }
  {
    Connection connection(file, Access::write);
    connection.run("DROP TABLE cow; CREATE TABLE cow (herd TEXT, udder TEXT) STRICT");
    connection.run("CREATE TABLE gone_since (herd TEXT) STRICT");
    set_meta(connection, meta_name::picture_shape, "of another version");
    set_meta(connection, meta_name::picture_tables,
             *meta_value(connection, meta_name::picture_tables) + " gone_since");
  }
  const auto looked = SqliteStore::open(file, OpenMode::read_only);
  REQUIRE_FALSE(looked.ok());
  CHECK(looked.faults().front().slug == "rows-out-of-date");

  auto store = SqliteStore::open(file, OpenMode::existing);
  REQUIRE(store.ok());
  CHECK(*(*store)->needs_rebuild());
  CHECK(cows_in(**store) == 0);
  Connection connection(file, Access::read);
  CHECK(connection.integer_of("SELECT count(*) FROM sqlite_schema WHERE name = 'gone_since'") == 0);
}

TEST_CASE("a rebuild that did not come to its end is remembered by the file") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  {
    auto store = SqliteStore::open(file, OpenMode::create);
    REQUIRE(store.ok());
    Write write;
    write.entries.push_back(sample_entry(1, sample_device(1), sample_herd(1)));
    REQUIRE((*store)->write(write).ok());
    REQUIRE((*store)->forget_pictures().ok());
  }
  auto store = SqliteStore::open(file, OpenMode::existing);
  REQUIRE(store.ok());
  CHECK(*(*store)->needs_rebuild());
  REQUIRE((*store)->rebuilt().ok());
  CHECK_FALSE(*(*store)->needs_rebuild());
}
