// The file with the records when something is wrong with it: every command says what, and leaves it
// as it is.
#include <doctest/doctest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <iostream>
#include <sstream>
#include <string>
#include <vector>

#include "cli/arguments.hpp"
#include "store/sqlite/connection.hpp"
#include "tests/cli/program.hpp"
#include "tests/fault/in_child.hpp"

namespace evenclaw::test {
namespace {

using Words = std::vector<std::string>;

/// Commands of every kind: some only look, some write.
const std::vector<Words> commands = {{"due"},
                                     {"herds"},
                                     {"show", "cow", "412"},
                                     {"sheet"},
                                     {"check"},
                                     {"end"},
                                     {"rebuild"},
                                     {"log"},
                                     {"told", "412 wrap off"},
                                     {"person", "list"},
                                     {"start", "Home Farm"},
                                     {"record", "-"},
                                     {"task", "412"}};

void record_a_visit(const Workshop& workshop) {
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  REQUIRE(workshop.run({"record", "-"}, "412 nothing found\ndone\n").exit == 0);
}

void expect_everywhere(const Workshop& workshop, int exit, std::string_view slug) {
  const std::string before = bytes_of(workshop.records());
  for (const Words& words : commands) {
    CAPTURE(words);
    const Ran ran = workshop.run(words, "413 nothing found\ndone\n");
    CHECK(ran.exit == exit);
    CHECK(has(ran.err, slug));
    CHECK(has(ran.err, workshop.records()));
  }
  CHECK(bytes_of(workshop.records()) == before);
}

/// Files written by programs started meanwhile end at so many bytes, as on a full disk.
class FileSizeLimit {
 public:
  explicit FileSizeLimit(rlim_t bytes) {
    getrlimit(RLIMIT_FSIZE, &before_);
    const rlimit limit{bytes, before_.rlim_max};
    setrlimit(RLIMIT_FSIZE, &limit);
  }

  FileSizeLimit(const FileSizeLimit&) = delete;
  FileSizeLimit& operator=(const FileSizeLimit&) = delete;

  ~FileSizeLimit() { setrlimit(RLIMIT_FSIZE, &before_); }

 private:
  rlimit before_{};
};

constexpr std::filesystem::perms read_by_all = std::filesystem::perms::owner_read |
                                               std::filesystem::perms::group_read |
                                               std::filesystem::perms::others_read;
constexpr std::filesystem::perms read_and_enter_by_all =
    read_by_all | std::filesystem::perms::owner_exec | std::filesystem::perms::group_exec |
    std::filesystem::perms::others_exec;

/// The exit code and the complaints of a command that somebody without rights runs.
std::string said_by_nobody(const Words& words) {
  return in_child([&] {
    become_nobody();
    std::ostringstream out;
    std::ostringstream complaints;
    std::cout.rdbuf(out.rdbuf());
    std::cerr.rdbuf(complaints.rdbuf());
    auto parsed = cli::parse(words);
    if (!parsed) return std::string("not understood");
    const cli::Exit exit = parsed->command->run(parsed->invocation);
    return std::to_string(static_cast<int>(exit)) + " " + complaints.str();
  });
}

std::string cows(int from, int count) {
  std::string lines;
  for (int cow = from; cow < from + count; ++cow) {
    lines += std::to_string(cow) + " LH outside sole ulcer middle, bad; block on inside\n";
    lines += "rest fine\n";
  }
  return lines + "done\n";
}

std::size_t count_of(const std::string& text, std::string_view part) {
  std::size_t count = 0;
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
    ++count;
  }
  return count;
}

}  // namespace

TEST_CASE("Where there are no records yet every command says so, and none makes a file") {
  const Workshop workshop;
  for (const Words& words : commands) {
    if (words.front() == "start") continue;
    CAPTURE(words);
    const Ran ran = workshop.run(words, "412 nothing found\n");
    CHECK(ran.exit == 3);
    CHECK(has(ran.err, "file-not-found"));
    CHECK(has(ran.err, "evenclaw start"));
  }
  CHECK_FALSE(std::filesystem::exists(workshop.records()));
}

TEST_CASE("A file that is something else is told and left as it is") {
  const Workshop workshop;
  std::filesystem::create_directories(workshop.file("evenclaw"));
  write_bytes(workshop.records(), "Dear diary, today it rained.\n" + std::string(5000, '\x8F'));
  expect_everywhere(workshop, 4, "not-our-file");
}

TEST_CASE("100 MB of something else are told at once and left as they are") {
  const Workshop workshop;
  std::filesystem::create_directories(workshop.file("evenclaw"));
  std::string large;
  large.resize(100'000'000, '\x8F');
  write_bytes(workshop.records(), large);
  const Ran ran = workshop.run({"due"});
  CHECK(ran.exit == 4);
  CHECK(has(ran.err, "not-our-file"));
  CHECK(std::filesystem::file_size(workshop.records()) == 100'000'000);
}

TEST_CASE("Records made by a newer version are told and left as they are") {
  const Workshop workshop;
  record_a_visit(workshop);
  { Connection(workshop.records(), Access::write).run("PRAGMA user_version = 4711"); }
  expect_everywhere(workshop, 4, "file-newer");
}

TEST_CASE("Damaged records are told by the check, and nothing is changed") {
  const Workshop workshop;
  record_a_visit(workshop);
  std::string bytes = bytes_of(workshop.records());
  REQUIRE(bytes.size() > 20'000);
  bytes.replace(4096, 12'000, std::string(12'000, '\x5A'));
  write_bytes(workshop.records(), bytes);
  const Ran ran = workshop.run({"check"});
  CHECK(ran.exit == 4);
  CHECK(has(ran.out, "the file does not read back whole"));
  CHECK(bytes_of(workshop.records()) == bytes);
}

TEST_CASE("Records that may only be read are shown, and refused for writing with the remedy") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records.db");
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--file", file}).exit == 0);
  std::filesystem::permissions(folder.name(), read_and_enter_by_all);
  std::filesystem::permissions(file, read_by_all);
  const std::string before = bytes_of(file);
  CHECK(said_by_nobody({"herds", "--file", file}).rfind("0 ", 0) == 0);
  for (const Words& words : {Words{"record", "nothing.calls"}, Words{"end"},
                             Words{"told", "412 wrap off"}, Words{"start", "Home Farm"}}) {
    Words there = words;
    there.insert(there.end(), {"--file", file});
    CAPTURE(words);
    const std::string said = said_by_nobody(there);
    CHECK(said.rfind("3 ", 0) == 0);
    CHECK(has(said, "file-read-only"));
    CHECK(has(said, file));
    CHECK(has(said, "Allow writing"));
  }
  CHECK(bytes_of(file) == before);
}

TEST_CASE("A full disk is told, and what was acknowledged is there when there is room again") {
  const Workshop workshop;
  record_a_visit(workshop);
  Ran ran;
  {
    const FileSizeLimit limit(400'000);
    ran = workshop.run({"record", "-"}, cows(1000, 1500));
  }
  CHECK(ran.exit == 3);
  CHECK(ran.signal == 0);
  CHECK(has(ran.err, "disk-full"));
  CHECK(has(ran.err, "Free some room"));
  const Ran checked = workshop.run({"check"});
  CHECK_MESSAGE(checked.exit == 0, checked.out);
  const std::string log = workshop.run({"log"}).out;
  const std::size_t acknowledged = count_of(ran.out, "saved ");
  CHECK(count_of(log, "\"kind\":\"turn\"") == acknowledged + 1);
  const Ran again = workshop.run({"record", "-"}, cows(1000, 1500));
  CHECK(again.exit == 0);
  CHECK(count_of(again.out, "\n") == 1500);
  CHECK(count_of(workshop.run({"log"}).out, "\"kind\":\"turn\"") == 1501);
}

TEST_CASE("An answer that cannot be written is no success") {
  Workshop workshop;
  record_a_visit(workshop);
  workshop.stdout_to = "/dev/full";
  const Ran ran = workshop.run({"due"});
  CHECK(ran.exit == 3);
  CHECK(has(ran.err, "could not be written"));
}

TEST_CASE("Without a home and without a file it is asked where the records lie") {
  Workshop workshop;
  workshop.extra_environment = {"HOME=", "XDG_DATA_HOME="};
  const Ran ran = workshop.run({"due"});
  CHECK(ran.exit == 2);
  CHECK(has(ran.err, "--file"));
  CHECK(workshop.run({"help"}).exit == 0);
}

TEST_CASE("The records lie below the home folder when nothing else is said") {
  Workshop workshop;
  workshop.extra_environment = {"XDG_DATA_HOME="};
  record_a_visit(workshop);
  const std::string file = workshop.file(".local/share/evenclaw/evenclaw.db");
  CHECK(std::filesystem::exists(file));

  struct stat seen {};

  REQUIRE(stat(workshop.file(".local/share/evenclaw").c_str(), &seen) == 0);
  CHECK((seen.st_mode & (S_IRWXG | S_IRWXO)) == 0);
}

}  // namespace evenclaw::test
