// Rows that another version of the program made, met by somebody who only wants to look.
#include <doctest/doctest.h>

#include <filesystem>
#include <string>

#include "cli/records.hpp"
#include "store/sqlite/connection.hpp"
#include "store/sqlite/meta.hpp"
#include "tests/cli/one_cow.hpp"
#include "tests/fault/in_child.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

namespace {

struct RowsOfAnotherVersion : OneCowRecorded {
  RowsOfAnotherVersion() {
    Connection connection(workshop.records(), Access::write);
    set_meta(connection, meta_name::picture_shape, "of another version");
  }
};

}  // namespace

TEST_CASE("rows of another version are made anew, once, when somebody only looks") {
  const RowsOfAnotherVersion records;
  const Ran due = records.workshop.run({"due"});
  CHECK(due.exit == 0);
  CHECK(has(due.out, "wrap off left hind"));
  CHECK(has(due.err, "made anew"));
  CHECK(records.workshop.run({"due"}).err.empty());
}

TEST_CASE("where they cannot be made anew it is said what to do, and nothing is changed") {
  const RowsOfAnotherVersion records;
  const std::string file = records.workshop.records();
  using std::filesystem::perms;
  constexpr perms read_by_all = perms::owner_read | perms::group_read | perms::others_read;
  constexpr perms entered_by_all =
      read_by_all | perms::owner_exec | perms::group_exec | perms::others_exec;
  const auto folder = std::filesystem::path(file).parent_path();
  std::filesystem::permissions(file, read_by_all);
  std::filesystem::permissions(folder, entered_by_all);
  std::filesystem::permissions(folder.parent_path(), entered_by_all);
  const std::string before = bytes_of(file);
  const std::string said = in_child([&] {
    become_nobody();
    cli::Invocation invocation;
    invocation.file = file;
    const auto opened = cli::Records::open(invocation, cli::Opening::look);
    if (opened) return std::string("opened");
    const Fault& fault = opened.faults().front();
    return fault.slug + ": " + fault.remedy;
  });
  CHECK(has(said, "rows-out-of-date: Allow writing"));
  CHECK(has(said, "evenclaw restore " + file + " --file COPY"));
  CHECK(bytes_of(file) == before);
  std::filesystem::permissions(folder.parent_path(), perms::owner_all);
  std::filesystem::permissions(folder, perms::owner_all);
}
