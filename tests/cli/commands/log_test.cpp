// Giving out the log of a file in which one entry cannot be read any more.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "store/sqlite/connection.hpp"
#include "tests/cli/one_cow.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

namespace {

/// The file of one cow whose turn was changed by hand.
struct TurnDamaged : OneCowRecorded {
  std::string turn;  // the id of its entry

  TurnDamaged() {
    Connection connection(workshop.records(), Access::write);
    connection.run("UPDATE entry SET body = '{}' WHERE kind = 'turn'");
    auto id = connection.prepared("SELECT id FROM entry WHERE kind = 'turn'");
    REQUIRE(id->step());
    turn = to_text(id->id_at(0));
  }
};

std::int64_t lines_in(const std::string& text) {
  return std::count(text.begin(), text.end(), '\n');
}

}  // namespace

TEST_CASE("the log goes on past an entry that cannot be read, and says where it lies") {
  const OneCowRecorded whole;
  const std::int64_t all = lines_in(whole.workshop.run({"log"}).out);
  const TurnDamaged damaged;
  const Ran ran = damaged.workshop.run({"log"});
  CHECK(ran.exit == 4);
  CHECK(lines_in(ran.out) == all - 1);
  CHECK_FALSE(has(ran.out, "\"kind\":\"turn\""));
  CHECK(has(ran.err, "entry " + damaged.turn + " (count "));
  CHECK(
      has(ran.err, "Not all could be read: " + std::to_string(all - 1) + " entries given out, 1 "));
}

TEST_CASE("into a file as well: what can be read is there, and the answer says what is not") {
  const TurnDamaged damaged;
  const std::string out = damaged.workshop.file("all.jsonl");
  const Ran ran = damaged.workshop.run({"log", "--out", out, "--json"});
  CHECK(ran.exit == 4);
  CHECK(has(ran.out, "\"damaged\""));
  CHECK(has(ran.out, damaged.turn));
  CHECK(lines_in(bytes_of(out)) == lines_in(damaged.workshop.run({"log"}).out));
}

TEST_CASE("rows cannot be made anew of a damaged log, and nothing is changed by trying") {
  const TurnDamaged damaged;
  const std::string due_before = damaged.workshop.run({"due"}).out;
  const Ran ran = damaged.workshop.run({"rebuild"});
  CHECK(ran.exit == 4);
  CHECK(ran.out.empty());
  CHECK(has(ran.err, "cannot be read any more"));
  CHECK_FALSE(has(ran.err, "made anew"));
  CHECK(damaged.workshop.run({"due"}).out == due_before);
  CHECK(has(due_before, "wrap off left hind"));
}

TEST_CASE("a small file with a destroyed page still gives out what lies before and behind it") {
  const OneCowRecorded recorded;
  const Workshop& workshop = recorded.workshop;
  std::string cows;
  for (int number = 1001; number <= 1060; ++number) {
    cows += std::to_string(number) + " LH DD raw behind; wrap on\ndone\n";
  }
  REQUIRE(workshop.run({"record", "-"}, cows).exit <= 1);
  const std::int64_t all = lines_in(workshop.run({"log"}).out);
  std::string bytes = bytes_of(workshop.records());
  REQUIRE(bytes.size() < 4'000'000);  // such a file is looked over whenever it is opened
  // As an entry holds it; a row of the picture holds the same words.
  const std::size_t at = bytes.find("[\"1030 LH DD");
  REQUIRE(at != std::string::npos);
  bytes.replace(at / 4096 * 4096, 4096, std::string(4096, '\x5a'));
  write_bytes(workshop.records(), bytes);
  CHECK(workshop.run({"due"}).exit == 4);
  const std::string out = workshop.file("saved.jsonl");
  const Ran ran = workshop.run({"log", "--out", out});
  CHECK(ran.exit == 4);
  const std::int64_t saved = lines_in(bytes_of(out));
  CHECK(saved > all / 2);
  CHECK(saved < all);
  CHECK(has(ran.out, std::to_string(saved) + " entries written to "));
  CHECK(has(ran.err, "Not all could be read: " + std::to_string(saved) + " entries given out"));
}
