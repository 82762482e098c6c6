#include "core/api/redate.hpp"

#include <doctest/doctest.h>

#include "core/api/due.hpp"
#include "core/api/tasks.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

using Lines = std::vector<std::string>;

Lines due(Workplace& place) {
  const DueList list = list_due(place.store, place.herd().herd, day("2026-10-27")).value();
  Lines lines;
  for (const DueTask& task : list.tasks) {
    lines.push_back(task.cow_said + " " + task.words + ": " + to_text(task.earliest) + " " +
                    to_text(task.due) + " " + to_text(task.overdue));
  }
  return lines;
}

/// Begun under Saturday 24 October although it was Tuesday the 27th, and not ended.
Visit under_the_wrong_day(Workplace& place, const Lines& lines) {
  const Visit visit = place.start("2026-10-24");
  Recording recording = place.record(visit);
  (void)recording.say_all(lines).value();
  return visit;
}

DayCorrected put_right(Workplace& place, const Visit& visit) {
  return correct_visit_day(place.ports(), visit, {day("2026-10-27"), true}).value();
}

Lines words_of(const DayCorrected& corrected) {
  Lines lines;
  for (const TaskRedated& task : corrected.tasks) {
    lines.push_back(task.cow_said + " " + task.words + ": " + to_text(task.told) + " -> " +
                    to_text(task.right));
  }
  return lines;
}

}  // namespace

TEST_CASE("tasks of a visit that goes on are counted from its right day") {
  Workplace place;
  const Visit visit =
      under_the_wrong_day(place, {"412 LH DD raw behind; wrap on", "rest fine", "done"});
  REQUIRE(due(place) ==
          Lines{"412 wrap off left hind: 2026-10-27 2026-10-29 2026-11-01",
                "412 look at the sore on left hind: 2026-10-31 2026-11-03 2026-11-08"});
  const DayCorrected corrected = put_right(place, visit);
  CHECK(corrected.tasks_moved);
  CHECK(words_of(corrected) ==
        Lines{"412 wrap off left hind: 2026-10-29 -> 2026-11-01",
              "412 look at the sore on left hind: 2026-11-03 -> 2026-11-06"});
  CHECK(due(place) == Lines{"412 wrap off left hind: 2026-10-30 2026-11-01 2026-11-04",
                            "412 look at the sore on left hind: 2026-11-03 2026-11-06 2026-11-11"});
}

TEST_CASE("a weekday that was said is the first such day after the right one") {
  Workplace place;
  const Visit visit =
      under_the_wrong_day(place, {"412 LH DD chronic behind; wrap on, off Thu",
                                  "413 RH DD chronic behind; wrap on, off Mon", "done"});
  const DayCorrected corrected = put_right(place, visit);
  // Thursday the 29th comes after both days; Monday the 26th is past on the 27th.
  CHECK(words_of(corrected) == Lines{"413 wrap off right hind: 2026-10-26 -> 2026-11-02"});
}

TEST_CASE("a look that was told at the visit for today moves with it") {
  Workplace place;
  (void)place.visited("2026-10-01", {"620 nothing found", "done"});
  const Visit visit =
      under_the_wrong_day(place, {"620 still lame LH", "412 nothing found", "done"});
  CHECK(words_of(put_right(place, visit)).size() == 1);
  CHECK(due(place).at(0).find("2026-10-27 2026-10-27 2026-10-28") != std::string::npos);
}

TEST_CASE("a task that was closed stays closed and one that a person moved keeps her day") {
  Workplace place;
  const Visit visit = under_the_wrong_day(
      place, {"412 LH DD chronic behind; wrap on", "413 RH DD chronic behind; wrap on", "done"});
  const HerdId herd = place.herd().herd;
  const auto of_cow = [&](std::string_view cow) {
    return open_tasks_of(place.store, herd, cow, day("2026-10-27")).value().at(0).task;
  };
  REQUIRE(close_task(place.ports(), herd, of_cow("412"), "lost it"));
  REQUIRE(move_task(place.ports(), herd, of_cow("413"), day("2026-11-05"), "away"));
  CHECK(put_right(place, visit).tasks.empty());
  REQUIRE(due(place).size() == 1);
  CHECK(due(place).at(0).find(" 2026-11-05 ") != std::string::npos);
}

TEST_CASE("a task nobody had closed is the same task after the day was put right") {
  Workplace place;
  const Visit visit = under_the_wrong_day(place, {"412 LH DD chronic behind; wrap on", "done"});
  const HerdId herd = place.herd().herd;
  const TaskId before = open_tasks_of(place.store, herd, "412", day("2026-10-27")).value()[0].task;
  (void)put_right(place, visit);
  const auto after = open_tasks_of(place.store, herd, "412", day("2026-10-27")).value();
  REQUIRE(after.size() == 1);
  CHECK(after[0].task == before);
}

TEST_CASE("a look that was too early under the wrong day is done on the right one") {
  Workplace place;
  (void)place.visited("2026-10-05", {"412 LH bruise; see again", "done"});
  const Visit visit = under_the_wrong_day(place, {"412 LH nothing found", "done"});
  REQUIRE(due(place).size() == 1);
  (void)put_right(place, visit);
  CHECK(due(place).empty());
}

TEST_CASE(
    "after the visit was ended tasks keep the days the farmer was told, and differ in words") {
  Workplace place;
  (void)place.visited("2026-10-24", {"412 LH DD chronic behind; wrap on", "done"});
  const Lines told = due(place);
  const Visit visit = find_visit(place.ports(), place.herd().herd, day("2026-10-24")).value();
  const DayCorrected corrected = put_right(place, visit);
  CHECK_FALSE(corrected.tasks_moved);
  CHECK(words_of(corrected) == Lines{"412 wrap off left hind: 2026-10-29 -> 2026-11-01"});
  CHECK(due(place) == told);
}

TEST_CASE("the same lines given again after the day was put right are there already") {
  Workplace place;
  const Lines lines = {"412 LH DD chronic behind; wrap on", "done", "no number, red heifer",
                       "LH DD chronic behind; wrap on", "done"};
  const Visit visit = under_the_wrong_day(place, lines);
  const Visit right = put_right(place, visit).visit;
  Recording again = place.record(right);
  const Reply reply = again.say_all(lines).value();
  for (const ReplyItem& item : reply.items) {
    CAPTURE(to_line(item));
    CHECK(item.kind != ReplyKind::saved);
  }
}

}  // namespace evenclaw::test
