// The first minute of the README, typed as it stands there.
#include <doctest/doctest.h>

#include <iomanip>
#include <sstream>
#include <string>
#include <vector>

#include "tests/cli/program.hpp"

namespace evenclaw::test {
namespace {

constexpr std::string_view program_name = "evenclaw ";

struct Typed {
  std::vector<std::string> words;
  std::string input;  // the lines below the command that are no commands
};

std::vector<std::string> words_of(const std::string& line) {
  std::vector<std::string> words;
  std::istringstream rest(line.substr(program_name.size()));
  for (std::string word; rest >> std::quoted(word);) words.push_back(word);
  return words;
}

/// The commands of the block that begins by naming the program.
std::vector<Typed> first_minute(const std::string& page) {
  std::vector<Typed> typed;
  std::istringstream lines(page.substr(page.find("alias evenclaw=")));
  std::string line;
  std::getline(lines, line);
  while (std::getline(lines, line) && line.rfind("```", 0) != 0) {
    if (line.rfind(program_name, 0) == 0) {
      typed.push_back({words_of(line), ""});
    } else if (!typed.empty()) {
      typed.back().input += line + "\n";
    }
  }
  return typed;
}

}  // namespace

TEST_CASE("The first cow of the README is saved as it says, with what it says afterwards") {
  const Workshop workshop;
  const std::vector<Typed> typed = first_minute(bytes_of("README.md"));
  REQUIRE(typed.size() >= 2);
  std::string out;
  for (const Typed& one : typed) {
    CAPTURE(one.words.front());
    const Ran ran = workshop.run(one.words, one.input);
    CHECK(ran.exit == 0);
    CHECK(ran.err.empty());
    out += ran.out;
  }
  CHECK(out.find("saved 412 ") != std::string::npos);
  CHECK(out.find("saved 413 ") != std::string::npos);
  CHECK(workshop.run({"end"}).out.find("Nothing is left in doubt.") != std::string::npos);
  CHECK(workshop.run({"due"}).out.find("block check left hind") != std::string::npos);
  CHECK(workshop.run({"sheet"}).exit == 0);
  CHECK(workshop.run({"show", "cow", "412"}).out.find("white line abscess") != std::string::npos);
}

}  // namespace evenclaw::test
