// Everything taken out, and brought back.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>

#include "tests/cli/one_cow.hpp"

namespace evenclaw::test {

namespace {

std::string text_of(const std::filesystem::path& file) {
  std::ifstream stream(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

/// Every file of the folder by its name in it.
std::map<std::string, std::string> files_in(const std::string& folder) {
  std::map<std::string, std::string> files;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
    if (!entry.is_regular_file()) continue;
    files[std::filesystem::relative(entry.path(), folder).string()] = text_of(entry.path());
  }
  return files;
}

}  // namespace

TEST_CASE("A folder is made with tables, dictionary, people, log, ICAR ADE and calendar") {
  const OneCowRecorded home;
  const std::string folder = home.workshop.file("all");
  const Ran ran = home.workshop.run({"export", "--to", folder});
  CHECK(ran.exit == 0);
  const auto files = files_in(folder);
  for (const char* name :
       {"tables/finding.csv", "tables/herd.csv", "tables/person.csv", "data-dictionary.csv",
        "log.jsonl", "ade/Home-Farm.json", "calendar/Home-Farm.ics"}) {
    CAPTURE(name);
    CHECK(files.count(name) == 1);
  }
  CHECK(files.at("log.jsonl") == home.workshop.run({"log"}).out);
  CHECK_FALSE(std::filesystem::exists(folder + ".part"));
}

TEST_CASE("What is given away of one herd holds no other herd, no people and no log") {
  const OneCowRecorded home;
  REQUIRE(home.workshop.run({"start", "Hill Farm", "--new-herd"}).exit == 0);
  const std::string folder = home.workshop.file("hill");
  REQUIRE(home.workshop.run({"export", "--to", folder, "--herd", "hill"}).exit == 0);
  for (const auto& [name, content] : files_in(folder)) {
    CAPTURE(name);
    CHECK_FALSE(has(content, "Home Farm"));
    CHECK_FALSE(has(name, "person"));
    CHECK_FALSE(has(name, "log"));
  }
}

TEST_CASE("What is there already is left as it is") {
  const OneCowRecorded home;
  const std::string folder = home.workshop.file("all");
  REQUIRE(home.workshop.run({"export", "--to", folder}).exit == 0);
  const auto before = files_in(folder);
  CHECK(has(home.workshop.run({"export", "--to", folder + "/"}).err, "(output-exists)"));
  CHECK(files_in(folder) == before);
  CHECK(home.workshop.run({"export"}).exit == 2);
}

TEST_CASE("The log of an export, taken into a new file, gives the same tables") {
  const OneCowRecorded home;
  const std::string first = home.workshop.file("first");
  REQUIRE(home.workshop.run({"export", "--to", first}).exit == 0);
  const Workshop other;
  const Ran taken = other.run({"take-in", first + "/log.jsonl"});
  CHECK(taken.exit == 0);
  CHECK(has(taken.out, ", 0 set aside"));
  const std::string second = other.file("second");
  REQUIRE(other.run({"export", "--to", second}).exit == 0);
  const auto was = files_in(first);
  const auto is = files_in(second);
  for (const auto& [name, content] : was) {
    if (name.rfind("tables/", 0) != 0 || name == "tables/person.csv") continue;
    CAPTURE(name);
    CHECK(is.at(name) == content);
  }
}

}  // namespace evenclaw::test
