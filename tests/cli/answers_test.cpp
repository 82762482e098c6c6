// What --json prints: one document of the shape that is documented.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "core/wire/json.hpp"
#include "tests/cli/program.hpp"

namespace evenclaw::test {
namespace {

using Words = std::vector<std::string>;
using cli::Command;
using cli::JsonAnswer;
using cli::JsonForm;

/// Two visits of a herd, the second one open: enough for every command to have something to say.
void fill(const Workshop& workshop) {
  REQUIRE(workshop
              .run({"start", "Home Farm", "--new-herd", "--feet", "all", "--day", "2026-10-06",
                    "--sure", "--caller", "Anna", "--writer", "Ben"})
              .exit == 0);
  REQUIRE(workshop
              .run({"record", "-"},
                   "412 lame LH\nLH outside white line abscess heel, bad; block on inside\n"
                   "rest fine\n413 LH DD behind raw; wrap on\nno number, red heifer\n"
                   "nothing found\ndone\n")
              .exit == 0);
  REQUIRE(workshop.run({"end"}).exit == 1);
  REQUIRE(workshop.run({"start", "Home Farm", "--feet", "hinds", "--day", "2026-10-20", "--sure"})
              .exit == 0);
  REQUIRE(workshop.run({"record", "-"}, "420 LH\ndone\n").exit == 0);
}

void collect_paths(const Json& json, const std::string& path, std::set<std::string>& paths) {
  if (const JsonArray* list = json.as_array()) {
    for (const Json& element : *list) collect_paths(element, path + "[]", paths);
  } else if (const JsonObject* object = json.as_object()) {
    for (const auto& [name, member] : *object) {
      collect_paths(member, path.empty() ? name : path + "." + name, paths);
    }
  } else {
    paths.insert(path);
  }
}

std::set<std::string> documented(const JsonAnswer& answer) {
  std::set<std::string> paths;
  for (const FieldDoc& field : answer.members()) paths.insert(field.path);
  return paths;
}

void expect_documented(const Json& json, const JsonAnswer& answer) {
  std::set<std::string> paths;
  if (answer.form == JsonForm::list) {
    REQUIRE(json.as_array() != nullptr);
    for (const Json& element : *json.as_array()) collect_paths(element, "", paths);
  } else {
    REQUIRE(json.as_object() != nullptr);
    collect_paths(json, "", paths);
  }
  CHECK_FALSE(paths.empty());
  const std::set<std::string> known = documented(answer);
  for (const std::string& path : paths) {
    CAPTURE(path);
    CHECK(known.count(path) == 1);
  }
}

struct Asked {
  Words words;
  std::size_t which;  // of the command's answers
  int exit = 0;
};

}  // namespace

TEST_CASE("With --json every command that prints data prints one document of its shape") {
  const Workshop workshop;
  fill(workshop);
  const std::vector<Asked> all = {
      {{"start", "Home Farm", "--day", "2026-10-20"}, 0},
      {{"right-day", "2026-10-21", "--sure"}, 0},
      {{"due", "--today", "2026-10-20"}, 0},
      {{"told", "412 block came off; 99 gone"}, 0, 1},
      {{"show", "cow", "412"}, 0},
      {{"show", "herd", "home"}, 1},
      {{"show", "visit"}, 2},
      {{"sheet"}, 0},
      {{"task", "413"}, 0},
      {{"task", "413", "1", "--done", "wrap off, looks dry"}, 1},
      {{"cow", "number", "red heifer", "418"}, 0},
      {{"herds"}, 0},
      {{"person", "list"}, 0},
      {{"person", "remove", "Ben"}, 1},
      {{"log", "--out", workshop.file("log.jsonl")}, 0},
      {{"take-in", workshop.file("log.jsonl")}, 0},
      {{"rebuild"}, 0},
      {{"backup", workshop.file("copy.db")}, 0},
      {{"restore", workshop.file("copy.db"), "--file", workshop.file("again.db")}, 0},
      {{"check"}, 0},
      {{"example", "--file", workshop.file("example.db")}, 0},
      {{"end"}, 0, 1},
  };
  for (const Asked& asked : all) {
    CAPTURE(asked.words.front());
    Words words = asked.words;
    words.emplace_back("--json");
    const Ran ran = workshop.run(words);
    CHECK(ran.exit == asked.exit);
    CHECK(ran.err.empty());
    const auto json = json_from_text(ran.out);
    REQUIRE(json.ok());
    const Command* command = cli::find_command(asked.words.front());
    REQUIRE(command != nullptr);
    REQUIRE(asked.which < command->answers.size());
    expect_documented(*json, command->answers[asked.which]);
  }
}

TEST_CASE("Recording answers with one JSON object a line, and with the same exit code") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  const Ran ran = workshop.run({"record", "-", "--json"}, "412 nothing found\n413 LHH\ndone\n");
  CHECK(ran.exit == 1);
  std::istringstream lines(ran.out);
  std::size_t count = 0;
  for (std::string line; std::getline(lines, line); ++count) {
    const auto json = json_from_text(line);
    REQUIRE(json.ok());
    expect_documented(*json, cli::find_command("record")->answers.front());
  }
  CHECK(count >= 2);
}

TEST_CASE("A fault is one JSON object with slug, place and remedy, and the exit code stays") {
  const Workshop workshop;
  for (const Words& words : {Words{"due"}, Words{"recrod"}, Words{"start", "x", "--day", "Monday"},
                             Words{"take-in", "nowhere"}}) {
    CAPTURE(words);
    const Ran plain = workshop.run(words);
    Words with_json = words;
    with_json.emplace_back("--json");
    const Ran ran = workshop.run(with_json);
    CHECK(ran.exit == plain.exit);
    CHECK(ran.err.empty());
    const auto json = json_from_text(ran.out);
    REQUIRE(json.ok());
    REQUIRE(json->member("faults") != nullptr);
    const JsonArray* faults = json->member("faults")->as_array();
    REQUIRE(faults != nullptr);
    REQUIRE_FALSE(faults->empty());
    CHECK_FALSE(faults->front().member("slug")->as_string()->empty());
    CHECK_FALSE(faults->front().member("remedy")->as_string()->empty());
  }
}

TEST_CASE("Every command but help says what it answers with --json") {
  for (const Command* command : cli::all_commands()) {
    CAPTURE(command->verb);
    CHECK((command->verb == "help" || !command->answers.empty()));
  }
}

}  // namespace evenclaw::test
