#include "cli/help.hpp"

#include <doctest/doctest.h>

#include <set>
#include <sstream>

#include "cli/columns.hpp"
#include "core/base/text.hpp"
#include "tests/store/temporary_folder.hpp"

namespace evenclaw::cli {
namespace {

std::size_t widest_line(const std::string& text) {
  std::size_t widest = 0;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    widest = std::max(widest, character_count(line));
  }
  return widest;
}

}  // namespace

TEST_CASE("Help fits a terminal that nobody has widened") {
  CHECK(widest_line(help_of_all()) <= terminal_width);
  for (const Command* command : all_commands()) {
    CAPTURE(command->verb);
    CHECK(widest_line(help_of(*command)) <= terminal_width);
  }
}

TEST_CASE("Every command is listed once and explains itself by an example of its own") {
  std::set<std::string_view> verbs;
  for (const Command* command : all_commands()) {
    CAPTURE(command->verb);
    CHECK(verbs.insert(command->verb).second);
    CHECK(help_of_all().find("  " + std::string(command->verb) + " ") != std::string::npos);
    REQUIRE_FALSE(command->examples.empty());
    for (const Example& example : command->examples) {
      CHECK(example.line.find("evenclaw " + std::string(command->verb)) != std::string::npos);
    }
  }
}

TEST_CASE("The page of commands is what the program says of itself") {
  INFO("write it anew: evenclaw help --reference > docs/user/commands.md");
  CHECK(bytes_of("docs/user/commands.md") == command_reference());
}

}  // namespace evenclaw::cli
