#include "core/api/farm/scoring_desk.hpp"

#include <doctest/doctest.h>

#include "core/api/farm/farm_shown.hpp"
#include "core/api/identities.hpp"
#include "core/api/show.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

using Lines = std::vector<std::string>;

/// Thornby Hollow, where 412 was in the crush two days before and 413 weeks before.
struct ScoredHerd {
  Workplace work;

  ScoredHerd() {
    work.visited("2026-09-01", {"413", "nothing found", "77", "nothing found"});
    work.visited("2026-10-25", {"412", "nothing found"});
  }

  ScoringDesk desk(std::string_view on = "2026-10-27", const Language& language = english()) {
    return ScoringDesk::open(work.ports(), {work.herd(), day(on), {}}, language).value();
  }

  Lines say(ScoringDesk& desk, const Lines& lines) {
    return lines_of(desk.say_all(lines).value().items);
  }

  Lines say(const Lines& lines) {
    ScoringDesk now = desk();
    return say(now, lines);
  }

  MobilityScoringRow whole() { return scorings_of(work.store, work.herd().herd).value().at(0); }
};

}  // namespace

TEST_CASE("each score is acknowledged with the entry that holds it") {
  ScoredHerd herd;
  ScoringDesk desk = herd.desk();
  const Reply reply = desk.say_all(Lines{"scale 0 to 3", "413 2 LH", "40 at 0"}).value();
  CHECK(lines_of(reply.items) == Lines{"saved 413", "saved 40 at 0"});
  REQUIRE(reply.items.size() == 2);
  REQUIRE(reply.items[0].entry.has_value());
  CHECK(reply.items[0].entry == reply.items[1].entry);
  CHECK(herd.work.store.find_entry(*reply.items[0].entry).value().has_value());
  CHECK(herd.whole().scored == 41);
}

TEST_CASE("without a scale nothing is recorded, and it is said what to say") {
  ScoredHerd herd;
  CHECK(herd.say({"413 2"}) ==
        Lines{"refused line 1: on which scale is that? say it first: \"scale 0 to 3\" or \"scale "
              "1 to 5\""});
  CHECK(scorings_of(herd.work.store, herd.work.herd().herd).value().empty());
}

TEST_CASE("a number nobody carries is kept as called and asked about, with those that are near") {
  ScoredHerd herd;
  const Lines said = herd.say({"scale 0 to 3", "411 2"});
  REQUIRE(said.size() == 2);
  CHECK(said[0] == "saved 411");
  CHECK(said[1] ==
        "question 411: no cow on record carries that number; kept as called (answer: scrap 411) "
        "Did you mean 412 or 413?");
  CHECK(herd.whole().at_2 == 1);
  CHECK(herd.say({"scale 0 to 3", "no, 411 1"}) == Lines{"saved 411"});
}

TEST_CASE("a cow who left is kept as called and asked about") {
  ScoredHerd herd;
  herd.work.visited("2026-10-26", {"77 gone"});
  const Lines said = herd.say({"scale 0 to 3", "77 1"});
  REQUIRE(said.size() == 2);
  CHECK(said[1] == "question 77: she was said to have left; kept as called (answer: scrap 77)");
}

TEST_CASE("a cow scored twice is asked about, and the answer holds") {
  ScoredHerd herd;
  ScoringDesk desk = herd.desk();
  const Lines said = herd.say(desk, {"scale 0 to 3", "413 2", "413 3"});
  REQUIRE(said.size() == 3);
  CHECK(said[2] ==
        "question 413: scored twice: 2, then 3; which holds? (answer: no, 413 2 / no, 413 3)");
  CHECK(herd.whole().in_doubt == 1);
  CHECK(herd.say(desk, {"no, 413 3"}) == Lines{"saved 413"});
  CHECK(herd.whole().in_doubt == 0);
  CHECK(herd.whole().at_3 == 1);
}

TEST_CASE("the same lines given again record nothing twice") {
  ScoredHerd herd;
  const Lines lines = {"scale 0 to 3", "60 present", "413 2 LH", "40 at 0"};
  herd.say(lines);
  CHECK(herd.say(lines) == Lines{"told: 60 present", "there already 413", "there already 40 at 0"});
  CHECK(herd.whole().scored == 41);
}

TEST_CASE("a second count at one score is refused with the sum to say") {
  ScoredHerd herd;
  CHECK(herd.say({"scale 0 to 3", "40 at 0", "12 at 0"}).at(1) ==
        "refused line 3: 40 were counted at 0 before; say how many it is altogether: \"no, 52 at "
        "0\"");
  CHECK(herd.whole().counted == 40);
  CHECK(herd.say({"scale 0 to 3", "no, 52 at 0"}) == Lines{"saved 52 at 0"});
  CHECK(herd.whole().counted == 52);
}

TEST_CASE("who was trimmed within the week is marked, and that is noted once") {
  ScoredHerd herd;
  herd.work.visited("2026-10-26", {"414", "nothing found"});
  const Lines said = herd.say({"scale 0 to 3", "412 2", "414 1", "413 0"});
  REQUIRE(said.size() == 4);
  CHECK(said[1].find("note: 412 was in the crush 2 days before") == 0);
  CHECK(herd.whole().shortly_after_trim == 2);
  const auto scores =
      scores_of(herd.work.store, herd.work.herd().herd,
                find_cow(herd.work.store, herd.work.herd().herd, "412", day("2026-10-27")).value());
  REQUIRE(scores);
  REQUIRE(scores->size() == 1);
  CHECK(scores->front().days_after_trim == 2);
}

TEST_CASE("another group is a scoring of its own, with its own denominator") {
  ScoredHerd herd;
  herd.say({"scale 0 to 3", "group high yielders", "20 present", "413 2", "group dry cows",
            "9 present", "412 0"});
  const auto rows = scorings_of(herd.work.store, herd.work.herd().herd).value();
  REQUIRE(rows.size() == 2);
  for (const MobilityScoringRow& row : rows) {
    CHECK(row.scored == 1);
    CHECK(row.present == (row.animals == "dry cows" ? 9 : 20));
  }
}

TEST_CASE("at the end stands how many of those present, and more scored than present is asked") {
  ScoredHerd herd;
  ScoringDesk desk = herd.desk();
  herd.say(desk, {"scale 0 to 3", "30 present", "413 2", "40 at 0"});
  const Lines end = lines_of(desk.end().value().items);
  REQUIRE(end.size() == 2);
  CHECK(end[0] == "told: scale 0 to 3, 41 of 30 present scored: 40 at 0, 0 at 1, 1 at 2, 0 at 3");
  CHECK(end[1].find("question: more were scored than the 30 present") == 0);
}

TEST_CASE("her scores are shown with her, also when two of her are found to be one") {
  ScoredHerd herd;
  herd.say({"scale 0 to 3", "413 2"});
  const auto shown =
      show_cow(herd.work.store, herd.work.herd().herd, "413", day("2026-10-27")).value();
  REQUIRE(shown.scores.size() == 1);
  CHECK(shown.scores[0].score == 2);
  CHECK(show_herd(herd.work.store, herd.work.herd().herd).value().scorings.size() == 1);
}

}  // namespace evenclaw::test
