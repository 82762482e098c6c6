#include "cli/arguments.hpp"

#include <doctest/doctest.h>

#include <vector>

namespace evenclaw::cli {
namespace {

using Words = std::vector<std::string>;

Invocation read(const Words& words) {
  const auto parsed = parse(words);
  REQUIRE(parsed.ok());
  return parsed->invocation;
}

}  // namespace

TEST_CASE("Options stand before or behind the verb, with a space or an equals sign") {
  for (const Words& words : {Words{"--json", "--file", "a.db", "due", "--herd", "home"},
                             Words{"due", "--herd=home", "--file=a.db", "--json"},
                             Words{"--file", "a.db", "due", "--json", "--herd", "home"}}) {
    CAPTURE(words);
    const auto parsed = parse(words);
    REQUIRE(parsed.ok());
    CHECK(parsed->command->verb == "due");
    CHECK(parsed->invocation.file == "a.db");
    CHECK(parsed->invocation.json);
    CHECK(parsed->invocation.value("--herd") == "home");
  }
}

TEST_CASE("A name of several words needs no quotes where only a name can stand") {
  CHECK(read({"start", "Home", "Farm", "--feet", "all"}).words_from(0) == "Home Farm");
  CHECK(read({"told", "412", "wrap", "off"}).words_from(0) == "412 wrap off");
  CHECK(read({"show", "cow", "brown", "heifer"}).words_from(1) == "brown heifer");
}

TEST_CASE("A lone dash is an operand, and two dashes end the options") {
  CHECK(read({"record", "-"}).operands == Words{"-"});
  CHECK(read({"told", "--", "--wrap off"}).operands == Words{"--wrap off"});
}

TEST_CASE("An option's value may look like anything but another option") {
  CHECK(read({"cow", "left", "77", "--why", "-sold-"}).value("--why") == "-sold-");
  CHECK(read({"cow", "left", "77", "--why="}).value("--why").empty());
}

TEST_CASE("What cannot be carried out is told with the word in question and what would be right") {
  struct Case {
    Words words;
    std::string token;
    std::string message;
    std::string remedy;
  };

  const std::vector<Case> cases = {
      {{"recrod"}, "recrod", "no command \"recrod\"", "Did you mean: evenclaw record"},
      {{"sho"}, "sho", "no command", "Did you mean: evenclaw show"},
      {{"xylophone"}, "xylophone", "no command", "evenclaw help"},
      {{"--json"}, "", "there is no command", "evenclaw help"},
      {{"start", "home", "--feets", "all"}, "--feets", "start has no option", "--feet?"},
      {{"due", "-x"}, "-x", "due has no option", "evenclaw help due"},
      {{"start", "home", "--feet"}, "--feet", "--feet needs FEET", "today's feet"},
      {{"start", "home", "--feet", "--sure"}, "--feet", "--feet needs FEET", "today's feet"},
      {{"start", "home", "--sure=yes"}, "--sure=yes", "--sure takes no value", "Leave it out."},
      {{"start", "home", "--feet", "--help"}, "--feet", "--feet needs FEET", "today's feet"},
      {{"due", "--file", ""}, "--file", "--file is given an empty name", "leave --file out"},
      {{"due", "--file="}, "--file", "--file is given an empty name", "leave --file out"},
      {{"due", "--herd", ""}, "--herd", "--herd is given an empty name", "leave --herd out"},
      {{"due", "--herd", "a", "--herd", "b"}, "--herd", "--herd is given twice", "once"},
      {{"start"}, "", "start needs HERD", "For example: evenclaw start"},
      {{"due", "home"}, "home", "due takes no \"home\"", "evenclaw help due"},
      {{"backup", "my", "copy.db"}, "copy.db", "a word too many", "in quotes"},
  };
  for (const Case& wrong : cases) {
    CAPTURE(wrong.words);
    const auto parsed = parse(wrong.words);
    REQUIRE_FALSE(parsed.ok());
    const Fault& fault = parsed.faults().front();
    CHECK(fault.slug == "usage");
    CHECK(fault.token == wrong.token);
    CHECK(fault.message.find(wrong.message) != std::string::npos);
    CHECK(fault.remedy.find(wrong.remedy) != std::string::npos);
  }
}

TEST_CASE("All that is wrong with a command is told at once") {
  const auto parsed = parse(Words{"start", "--feets", "all", "--second=2"});
  REQUIRE_FALSE(parsed.ok());
  CHECK(parsed.faults().size() == 2);
}

}  // namespace evenclaw::cli
