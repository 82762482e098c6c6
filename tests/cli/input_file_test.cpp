#include "cli/input_file.hpp"

#include <doctest/doctest.h>

#include "tests/cli/program.hpp"

namespace evenclaw::test {

TEST_CASE("A file is read byte for byte") {
  const TemporaryFolder folder;
  const std::string bytes("a\0b\r\n\xff", 6);
  write_bytes(folder.file("list"), bytes);
  CHECK(cli::bytes_of_file(folder.file("list"), 100).value() == bytes);
}

TEST_CASE("A file that is not there, a folder and one over the limit are told apart") {
  const TemporaryFolder folder;
  write_bytes(folder.file("list"), std::string(101, 'x'));
  const auto slug = [&](const std::string& path) {
    return cli::bytes_of_file(path, 100).faults().front().slug;
  };
  CHECK(slug(folder.file("none")) == "file-not-found");
  CHECK(slug(folder.name()) == "file-unreadable");
  CHECK(slug(folder.file("list")) == "file-too-large");
}

TEST_CASE("What has no end is read no further than the limit") {
  CHECK(cli::bytes_of_file("/dev/zero", 1000).faults().front().slug == "file-too-large");
}

}  // namespace evenclaw::test
