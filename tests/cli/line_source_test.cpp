#include "cli/line_source.hpp"

#include <doctest/doctest.h>
#include <unistd.h>

#include <string_view>

#include "tests/store/temporary_folder.hpp"

namespace evenclaw::cli {
namespace {

using Lines = std::vector<std::string>;

/// A pipe whose both ends the test holds.
class Pipe {
 public:
  Pipe() { REQUIRE(pipe(ends_) == 0); }

  Pipe(const Pipe&) = delete;
  Pipe& operator=(const Pipe&) = delete;

  ~Pipe() {
    close(ends_[0]);
    hang_up();
  }

  void write_text(std::string_view text) const {
    REQUIRE(write(ends_[1], text.data(), text.size()) == static_cast<ssize_t>(text.size()));
  }

  void hang_up() {
    if (ends_[1] >= 0) close(ends_[1]);
    ends_[1] = -1;
  }

  [[nodiscard]] int reading_end() const { return ends_[0]; }

 private:
  int ends_[2];
};

Lines next(LineReader& reader, std::size_t most) {
  auto lines = reader.next(most);
  REQUIRE(lines.ok());
  return *lines;
}

}  // namespace

TEST_CASE("What a pipe holds is given together, without waiting for more") {
  Pipe pipe;
  LineReader reader(pipe.reading_end(), 100);
  pipe.write_text("412 lame LH\nrest fine\n413 not");
  CHECK(next(reader, 10) == Lines{"412 lame LH", "rest fine"});
  pipe.write_text("hing found\n");
  CHECK(next(reader, 10) == Lines{"413 nothing found"});
  pipe.hang_up();
  CHECK(next(reader, 10).empty());
}

TEST_CASE("No more lines are given at once than wanted, and none is left out") {
  Pipe pipe;
  LineReader reader(pipe.reading_end(), 100);
  pipe.write_text("1\n2\n3\n");
  CHECK(next(reader, 2) == Lines{"1", "2"});
  CHECK(next(reader, 2) == Lines{"3"});
}

TEST_CASE("A last line without an end counts, empty lines keep their place") {
  Pipe pipe;
  LineReader reader(pipe.reading_end(), 100);
  pipe.write_text("\r\n412\r\n\ndone");
  pipe.hang_up();
  CHECK(next(reader, 10) == Lines{"", "412", "", "done"});
}

TEST_CASE("Of an endless line only enough is kept to see that it is too long") {
  Pipe pipe;
  LineReader reader(pipe.reading_end(), 10);
  pipe.write_text(std::string(30'000, 'x') + "\nshort\n");
  const Lines lines = next(reader, 2);
  CHECK(lines.front().size() > 10);
  CHECK(lines.front().size() < 20);
  CHECK(lines.back() == "short");
}

TEST_CASE("The mark some editors put in front of a text is no part of the first line") {
  const TemporaryFolder folder;
  write_bytes(folder.file("day.calls"),
              "\xEF\xBB\xBF"
              "412 lame LH\r\n");
  const auto lines = lines_of_file(folder.file("day.calls"));
  REQUIRE(lines.ok());
  CHECK(*lines == Lines{"412 lame LH"});
}

TEST_CASE("A file of calls with a line that is no text is refused whole, with its number") {
  const TemporaryFolder folder;
  write_bytes(folder.file("day.calls"), "412 lame LH\nLH sole \xE9 ulcer\n");
  const auto lines = lines_of_file(folder.file("day.calls"));
  REQUIRE_FALSE(lines.ok());
  CHECK(lines.faults().front().slug == "file-unreadable");
  CHECK(lines.faults().front().line == 2);
}

TEST_CASE("Junk gives a few faults and says how many more there are") {
  const TemporaryFolder folder;
  std::string junk;
  for (int i = 0; i < 100; ++i) junk += std::string("\x01\0\xFF\n", 4);
  write_bytes(folder.file("junk"), junk);
  const auto lines = lines_of_file(folder.file("junk"));
  REQUIRE_FALSE(lines.ok());
  CHECK(lines.faults().size() == 5);
  CHECK(lines.faults().back().message.find("95 more") != std::string::npos);
}

TEST_CASE("What is no file of calls is told as what it is") {
  const TemporaryFolder folder;
  const auto missing = lines_of_file(folder.file("nowhere.calls"));
  REQUIRE_FALSE(missing.ok());
  CHECK(missing.faults().front().slug == "file-not-found");
  const auto is_folder = lines_of_file(folder.name());
  REQUIRE_FALSE(is_folder.ok());
  CHECK(is_folder.faults().front().slug == "file-unreadable");
  write_bytes(folder.file("large"),
              std::string(static_cast<std::size_t>(largest_call_file), '\n') + "x");
  const auto large = lines_of_file(folder.file("large"));
  REQUIRE_FALSE(large.ok());
  CHECK(large.faults().front().slug == "file-too-large");
}

}  // namespace evenclaw::cli
