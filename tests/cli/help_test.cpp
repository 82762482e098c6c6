#include "cli/help.hpp"

#include <doctest/doctest.h>

#include <iomanip>
#include <set>
#include <sstream>

#include "cli/arguments.hpp"
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

/// The words of the program's own part of a command line, behind its name, as a shell parts them.
std::vector<std::string> words_of(const std::string& line) {
  std::vector<std::string> words;
  std::istringstream rest(line.substr(line.find("evenclaw ") + 9));
  for (std::string word; rest >> std::quoted(word) && word != "|";) words.push_back(word);
  return words;
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

TEST_CASE("What the commands do stands in one column, however long a command is") {
  std::size_t longest = 0;
  for (const Command* command : all_commands()) longest = std::max(longest, command->verb.size());
  for (const Command* command : all_commands()) {
    const std::string line =
        "\n  " + padded(command->verb, longest) + "  " + std::string(command->summary.substr(0, 1));
    CHECK_MESSAGE(help_of_all().find(line) != std::string::npos, command->verb);
  }
}

TEST_CASE("The page of commands is what the program says of itself") {
  INFO("write it anew: evenclaw help --reference > docs/user/commands.md");
  CHECK(bytes_of("docs/user/commands.md") == command_reference());
}

TEST_CASE("The page of answers is what the program says of itself") {
  INFO("write it anew: evenclaw help --answers > docs/format/answers.md");
  CHECK(bytes_of("docs/format/answers.md") == answer_reference());
}

TEST_CASE("Every example of a command can be typed as it stands") {
  for (const Command* command : all_commands()) {
    for (const Example& example : command->examples) {
      CAPTURE(example.line);
      const auto parsed = parse(words_of(std::string(example.line)));
      CHECK(parsed.ok());
    }
  }
}

}  // namespace evenclaw::cli
