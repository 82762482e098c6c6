#include "cli/lines_taken.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <string>
#include <vector>

#include "tests/cli/captured.hpp"
#include "tests/store/temporary_folder.hpp"

namespace evenclaw::cli {
namespace {

using Lines = std::vector<std::string>;

/// Keeps what it is told; the disk fails at the line "slurry".
struct Listener {
  std::vector<Lines> told;
  int ended = 0;

  LineTaker taker() {
    return {[this](std::span<const std::string> lines) -> Result<Reply> {
              told.emplace_back(lines.begin(), lines.end());
              if (lines.back() == "slurry") return Fault{.slug = "disk-failed", .message = "gone"};
              return Reply{};
            },
            [this]() -> Result<Reply> {
              ++ended;
              return Reply{};
            }};
  }
};

Exit take_file(Listener& listener, const std::string& text) {
  const TemporaryFolder folder;
  const std::string path = folder.file("day.calls");
  std::ofstream(path) << text;
  Invocation invocation;
  invocation.operands = {path};
  const Captured out(std::cout);
  const Captured told(std::cerr);
  return LinesTaken(invocation, listener.taker()).take([] { return Exit::world; });
}

}  // namespace

TEST_CASE("The lines of a file are told together, and then that no more come") {
  Listener listener;
  CHECK(take_file(listener, "412 lame LH\nrest fine\n") == Exit::fine);
  CHECK(listener.told == std::vector<Lines>{{"412 lame LH", "rest fine"}});
  CHECK(listener.ended == 1);
}

TEST_CASE("A very long file is told in batches, none of its lines twice") {
  Listener listener;
  std::string text;
  for (int line = 0; line < 4500; ++line) text += std::to_string(line) + '\n';
  CHECK(take_file(listener, text) == Exit::fine);
  REQUIRE(listener.told.size() == 3);
  CHECK(listener.told[1].front() == "2000");
  CHECK(listener.told[2].back() == "4499");
}

TEST_CASE("Nothing more is told once the disk failed, and the end is not called fine") {
  Listener listener;
  std::string text;
  for (int line = 1; line < 2000; ++line) text += "412\n";
  CHECK(take_file(listener, text + "slurry\n413\n") == Exit::world);
  CHECK(listener.told.size() == 1);
  CHECK(listener.ended == 0);
}

TEST_CASE("An empty file is told to hold no line, and nobody is told anything") {
  Listener listener;
  CHECK(take_file(listener, "") == Exit::asked);
  CHECK(listener.told.empty());
  CHECK(listener.ended == 0);
}

}  // namespace evenclaw::cli
