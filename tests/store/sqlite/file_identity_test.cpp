#include "store/sqlite/file_identity.hpp"

#include <doctest/doctest.h>

#include <filesystem>

#include "tests/store/temporary_folder.hpp"

using namespace evenclaw;

TEST_CASE("a file that is not there has no identity") {
  const TemporaryFolder folder;
  CHECK_FALSE(file_identity(folder.file("nothing")).has_value());
}

TEST_CASE("a file is the same by whatever link it is reached, a copy is another") {
  const TemporaryFolder folder;
  write_bytes(folder.file("a"), "x");
  std::filesystem::create_symlink(folder.file("a"), folder.file("link"));
  std::filesystem::copy_file(folder.file("a"), folder.file("b"));
  CHECK(file_identity(folder.file("link")) == file_identity(folder.file("a")));
  CHECK(file_identity(folder.file("b")) != file_identity(folder.file("a")));
}

TEST_CASE("a name is made absolute whether or not the file is there") {
  const TemporaryFolder folder;
  CHECK(absolute_name(folder.name() + "/./x/../y") ==
        std::filesystem::canonical(folder.name()).string() + "/y");
  CHECK(std::filesystem::path(absolute_name("records")).is_absolute());
}
