// What is shown of a cow, a visit and a herd, as a person reads it.
#include <doctest/doctest.h>

#include <string>

#include "tests/cli/program.hpp"

namespace evenclaw::test {
namespace {

/// Home Farm on 24 November 2026, ended.
void visited(const Workshop& workshop, const std::string& lines) {
  REQUIRE(workshop
              .run({"start", "Home Farm", "--new-herd", "--feet", "all", "--day", "2026-11-24",
                    "--sure"})
              .exit == 0);
  (void)workshop.run({"record", "-"}, lines);
  (void)workshop.run({"end"});
}

}  // namespace

TEST_CASE("A cow tells all that was said of her, of all of her before foot by foot") {
  const Workshop workshop;
  visited(workshop,
          "412 lame LH, mobility 2 of 3\nLH outside bruise, slight, toe; trimmed\n"
          "whole cow; to straw; cull advised\nnote kicks\nrest fine\ndone\n");
  const Ran cow = workshop.run({"show", "cow", "412", "--today", "2026-11-24"});
  CHECK(cow.exit == 0);
  CHECK(has(cow.out,
            "  Tue 24 Nov\n"
            "    came: lame on left hind\n"
            "    mobility 2 of 3\n"
            "    to straw; culling advised\n"
            "    note: kicks\n"
            "    LF  nothing found\n"));
  CHECK(has(cow.out, "        trimmed\n"));
}

TEST_CASE("A cow that was not done says so, and why") {
  const Workshop workshop;
  visited(workshop, "412 not done, ran out of time\n");
  CHECK(has(workshop.run({"show", "cow", "412"}).out, "    not done: ran out of time\n"));
}

TEST_CASE("Who looks for one of two numbers in doubt is told which cow it may be and what to do") {
  const Workshop workshop;
  visited(workshop, "159 or 195 fresh\nnothing found\ndone\n");
  const Ran cow = workshop.run({"show", "cow", "159"});
  CHECK(cow.exit == 1);
  CHECK(has(cow.err, "159 or 195 (seen 24 Nov)"));
  CHECK(has(cow.err, "evenclaw cow number \"159 or 195\" 159"));
  CHECK(has(workshop.run({"show", "cow", "159?"}).err, "evenclaw show cow \"159 or 195\""));
  REQUIRE(workshop.run({"cow", "number", "159 or 195", "159"}).exit == 0);
  CHECK(has(workshop.run({"show", "cow", "159"}).out, "Cow 159"));
}

TEST_CASE("What was still asked when the visit was ended is listed again, with how to answer it") {
  const Workshop workshop;
  visited(workshop, "66 wrap off\n412 LH bruise, slight\nrest fine\ndone\n");
  const Ran visit = workshop.run({"show", "visit", "--today", "2026-11-24"});
  CHECK(visit.exit == 0);
  CHECK(has(visit.out, "Home Farm, Tue 24 Nov: ended, 1 cow\nStill to be asked (2):\n"));
  CHECK(has(visit.out, "not called where, and on which claw: 412 left hind, sole haemorrhage\n"));
  CHECK(has(visit.out, "--answers 66"));
  CHECK(has(workshop.run({"show", "herd"}).out, "2 still to be asked: evenclaw show visit\n"));
  REQUIRE(workshop.run({"told", "it was 412", "--answers", "66"}).exit == 0);
  CHECK(has(workshop.run({"show", "visit", "2026-11-24"}).out, "Still to be asked (1):\n"));
  CHECK(workshop.run({"show", "visit", "2026-11-20"}).exit == 1);
}

TEST_CASE("What was told of a cow is shown on its day in its words, and stands on the sheet") {
  const Workshop workshop;
  visited(
      workshop,
      "412 nothing found\n413 LH DD raw behind; wrap on\ndone\n412 still lame LH; 413 wrap off\n");
  const Ran cow = workshop.run({"show", "cow", "412", "--today", "2026-11-24"});
  CHECK(has(cow.out, "    told: 412 still lame LH\n"));
  const Ran other = workshop.run({"show", "cow", "413", "--today", "2026-11-24"});
  CHECK(has(other.out, "    told: 413 wrap off (Her wrap on left hind was put on at"));
  const Ran sheet = workshop.run({"sheet", "--text", "--day", "2026-11-24"});
  CHECK(has(sheet.out,
            "Told at this visit\n"
            "------------------\n"
            "- 412 still lame LH; 413 wrap off\n"));
}

}  // namespace evenclaw::test
