// Recording through the real program: what cannot be taken is told with line, word and remedy.
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "core/base/random.hpp"
#include "tests/cli/program.hpp"

namespace evenclaw::test {
namespace {

/// A visit to a herd is open.
void start_visit(const Workshop& workshop, const std::string& herd = "Home Farm") {
  const Ran ran = workshop.run({"start", herd, "--new-herd", "--feet", "all"});
  REQUIRE_MESSAGE(ran.exit == 0, ran.err);
}

std::string junk(std::size_t size) {
  RandomStream random(7, 3);
  std::string bytes;
  for (std::size_t i = 0; i < size; ++i) bytes += static_cast<char>(random.below(256));
  return bytes;
}

}  // namespace

TEST_CASE("What is refused names the line, the place in it, the word and the remedy") {
  struct Case {
    std::string line;
    std::string place;
    std::string word;
    std::string remedy;
  };

  const std::vector<Case> cases = {
      {"LH outsde sole ulcer", "line 2, column 4", "\"outsde\"", "\"outside\""},
      {"LH sole ulcer; see again 28", "line 2, column 26", "28", "d or weeks"},
      {"LH white line between", "line 2, column 15", "between", ""},
      {"LH z13 sole ulcer", "line 2, column 4", "z13", "0 to 12"},
      {"RF not lifted; block on inside", "line 2, column 16", "block on", "lifted"},
      {"LH heel ulcer at the toe", "line 2, column 15", "toe", "heel"},
  };
  for (const Case& refused : cases) {
    CAPTURE(refused.line);
    const Workshop workshop;
    start_visit(workshop);
    const Ran ran = workshop.run({"record", "-"}, "412\n" + refused.line + "\nrest fine\ndone\n");
    CHECK(ran.exit == 1);
    CAPTURE(ran.out);
    CHECK(has(ran.out, "refused " + refused.place));
    CHECK(has(ran.out, refused.word));
    CHECK(has(ran.out, refused.remedy));
    CHECK(has(ran.out, "saved 412"));
  }
}

TEST_CASE("Without an open visit nothing is recorded, and the way to start one is told") {
  const Workshop workshop;
  start_visit(workshop);
  REQUIRE(workshop.run({"end"}).exit == 0);
  const Ran ran = workshop.run({"record", "-"}, "412 nothing found\ndone\n");
  CHECK(ran.exit == 1);
  CHECK(has(ran.err, "no-visit-open"));
  CHECK(has(ran.err, "evenclaw start"));
  CHECK_FALSE(has(workshop.run({"log"}).out, "\"412"));
}

TEST_CASE("Before the very first visit the way to start one is told as well") {
  const Workshop workshop;
  const Ran ran = workshop.run({"record", "-"}, "412 nothing found\ndone\n");
  CHECK(ran.exit == 3);
  CHECK(has(ran.err, "evenclaw start"));
}

TEST_CASE("With two visits open nothing is recorded until one of them is named") {
  const Workshop workshop;
  start_visit(workshop, "Home Farm");
  start_visit(workshop, "Hill Farm");
  const Ran unsure = workshop.run({"record", "-"}, "412 nothing found\ndone\n");
  CHECK(unsure.exit == 1);
  CHECK(has(unsure.err, "two-visits-open"));
  CHECK(has(unsure.err, "Home Farm"));
  CHECK(has(unsure.err, "Hill Farm"));
  CHECK(has(unsure.err, "--herd"));
  const Ran named = workshop.run({"record", "-", "--herd", "hill"}, "412 nothing found\ndone\n");
  CHECK(named.exit == 0);
  CHECK(has(workshop.run({"show", "cow", "412", "--herd", "hill"}).out, "Hill Farm"));
}

TEST_CASE("A file of calls that is not there, a folder or empty is told as what it is") {
  const Workshop workshop;
  start_visit(workshop);
  const Ran missing = workshop.run({"record", workshop.file("monday.calls")});
  CHECK(missing.exit == 3);
  CHECK(has(missing.err, "monday.calls"));
  CHECK(has(missing.err, "file-not-found"));
  const Ran folder = workshop.run({"record", workshop.file("evenclaw")});
  CHECK(folder.exit == 3);
  CHECK(has(folder.err, "is a folder"));
  write_bytes(workshop.file("empty.calls"), "");
  const Ran empty = workshop.run({"record", workshop.file("empty.calls")});
  CHECK(empty.exit == 1);
  CHECK(has(empty.err, "nothing-to-do"));
}

TEST_CASE("Binary junk instead of called lines is refused whole, and nothing is recorded") {
  const Workshop workshop;
  start_visit(workshop);
  const std::string before = workshop.run({"log"}).out;
  write_bytes(workshop.file("junk"), junk(100'000));
  const Ran ran = workshop.run({"record", workshop.file("junk")});
  CHECK(ran.exit == 3);
  CHECK(has(ran.err, "file-unreadable"));
  CHECK(has(ran.err, "line "));
  CHECK(ran.err.size() < 5000);
  CHECK(workshop.run({"log"}).out == before);
}

TEST_CASE("Binary junk in a pipe is refused line by line, and a cow named after it is saved") {
  const Workshop workshop;
  start_visit(workshop);
  std::string lines = junk(20'000);
  lines += "\n412 nothing found\ndone\n";
  const Ran ran = workshop.run({"record", "-"}, lines);
  CHECK(ran.exit == 1);
  CHECK(ran.signal == 0);
  CHECK(has(ran.out, "saved 412 "));
}

TEST_CASE("A file of 100 MB is refused before anything of it is recorded") {
  const Workshop workshop;
  start_visit(workshop);
  const std::string before = workshop.run({"log"}).out;
  const std::string line = "412 nothing found\n";
  std::string large;
  large.reserve(100'000'000);
  while (large.size() < 100'000'000) large += line;
  write_bytes(workshop.file("large"), large);
  const Ran ran = workshop.run({"record", workshop.file("large")});
  CHECK(ran.exit == 3);
  CHECK(has(ran.err, "file-too-large"));
  CHECK(workshop.run({"log"}).out == before);
}

TEST_CASE("A pipe that brings one line of 100 MB is refused at that line and goes on") {
  const Workshop workshop;
  start_visit(workshop);
  std::string lines = "412 nothing found\n";
  lines.resize(lines.size() + 100'000'000, 'x');
  lines += "\n413 nothing found\ndone\n";
  const Ran ran = workshop.run({"record", "-"}, lines);
  CHECK(ran.exit == 1);
  CHECK(has(ran.out, "refused line 2"));
  CHECK(ran.out.size() < 20'000);
  CHECK(has(ran.out, "saved 412 "));
  CHECK(has(ran.out, "saved 413 "));
}

TEST_CASE("The same file given twice is recorded once") {
  const Workshop workshop;
  start_visit(workshop);
  write_bytes(workshop.file("day.calls"),
              "412 nothing found\n413 lame LH\nLH DD raw behind\ndone\n");
  const Ran first = workshop.run({"record", workshop.file("day.calls")});
  CHECK(has(first.out, "saved 412 "));
  const std::string log = workshop.run({"log"}).out;
  const Ran second = workshop.run({"record", workshop.file("day.calls")});
  CHECK(has(second.out, "there already 412 "));
  CHECK_FALSE(has(second.out, "saved"));
  CHECK(workshop.run({"log"}).out == log);
}

TEST_CASE("Typing that ends in the middle of a cow keeps what was said and asks about her") {
  const Workshop workshop;
  start_visit(workshop);
  const Ran ran = workshop.run({"record", "-"}, "412 lame LH\nLH DD raw behind\n");
  CHECK(has(ran.out, "saved 412 "));
  const Ran ended = workshop.run({"end"});
  CHECK(ended.exit == 1);
  CHECK(has(ended.out, "not finished"));
  CHECK(has(workshop.run({"show", "cow", "412"}).out, "digital dermatitis, raw"));
}

}  // namespace evenclaw::test
