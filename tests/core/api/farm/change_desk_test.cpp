#include "core/api/farm/change_desk.hpp"

#include <doctest/doctest.h>

#include "core/api/farm/farm_shown.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

using Lines = std::vector<std::string>;

struct ChangedHerd {
  Workplace work;

  ChangeDesk desk(std::string_view on = "2026-10-27") {
    return ChangeDesk::open(work.ports(), {work.herd(), day(on), {}}, english()).value();
  }

  Lines say(const Lines& lines, std::string_view on = "2026-10-27") {
    return lines_of(desk(on).say_all(lines).value().items);
  }

  std::vector<FarmChangeRow> rows() { return changes_of(work.store, work.herd().herd).value(); }
};

}  // namespace

TEST_CASE("a change is finished by a later entry, and keeps why it was made") {
  ChangedHerd herd;
  CHECK(herd.say({"footbath: copper; bad visit; decided 1 Oct; going on; whole herd"}) ==
        Lines{"saved footbath: copper"});
  CHECK(herd.say({"footbath finished 20 Nov"}, "2026-11-24") == Lines{"saved footbath: copper"});
  const auto rows = herd.rows();
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].why == ChangeWhy::bad_visit);
  CHECK(rows[0].decided == day("2026-10-01"));
  CHECK(rows[0].finished == day("2026-11-20"));
}

TEST_CASE("what was not told is asked, why first, and the answer needs no more than itself") {
  ChangedHerd herd;
  ChangeDesk desk = herd.desk();
  (void)desk.say_all(Lines{"cubicles: new mats"}).value();
  const Lines asked = lines_of(desk.end().value().items);
  REQUIRE(asked.size() == 5);
  CHECK(asked[1] ==
        "question: cubicles: new mats: why was it made? (answer: after a bad visit / planned / "
        "vet advised / rebuilt anyway / because ...)");
  const Lines answered = lines_of(
      desk.say_all(Lines{"planned; decided 1 Sep; finished yesterday; whole herd"}).value().items);
  CHECK(answered == Lines{"saved cubicles: new mats"});
  CHECK(lines_of(desk.end().value().items) ==
        Lines{"told: cubicles: new mats; planned; decided 2026-09-01; finished 2026-10-26; whole "
              "herd"});
}

TEST_CASE("the same line again is one change, and the same again years later is another") {
  ChangedHerd herd;
  const Lines line = {"footbath: copper; planned; decided 1 Oct; finished 20 Oct; whole herd"};
  herd.say(line);
  CHECK(herd.say(line) == Lines{"there already footbath: copper"});
  CHECK(herd.rows().size() == 1);
  herd.say({"footbath: copper; planned; decided 1 Oct 2025"});
  CHECK(herd.rows().size() == 2);
}

TEST_CASE("where none or several fit it is said what to say") {
  ChangedHerd herd;
  CHECK(herd.say({"footbath finished 20 Oct"})
            .at(0)
            .find("refused line 1: no such change is "
                  "going on") == 0);
  herd.say({"floor: rubber in the passage; planned", "floor: grooves in the yard; planned"});
  const std::string asked = herd.say({"floor finished 20 Oct"}).at(0);
  CHECK(asked.find("which of several is it? say it with its words: floor: ") != std::string::npos);
  CHECK(asked.find("floor: rubber in the passage") != std::string::npos);
  CHECK(asked.find("floor: grooves in the yard") != std::string::npos);
  CHECK(herd.say({"finished 20 Oct"})
            .at(0)
            .find("refused line 1: of which change is that "
                  "told?") == 0);
}

TEST_CASE("a change that was none is taken back, and days in the wrong order are asked about") {
  ChangedHerd herd;
  ChangeDesk desk = herd.desk();
  (void)desk.say_all(Lines{"footbath: copper; planned; decided 20 Oct; finished 1 Oct; whole herd"})
      .value();
  CHECK(lines_of(desk.end().value().items).back().find("finished before it was decided?") !=
        std::string::npos);
  CHECK(herd.say({"scrap footbath"}) == Lines{"saved footbath: copper"});
  CHECK(herd.rows().empty());
}

}  // namespace evenclaw::test
