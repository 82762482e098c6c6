#include "core/log/task_history.hpp"

#include <doctest/doctest.h>

#include <functional>

#include "core/trade/identity.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

TaskMade wrap_off(EntryId entry) {
  TaskMade task;
  task.task = task_id(entry, "wrap-off wrap_off LH none");
  task.kind = TaskKind::wrap_off;
  task.foot = Foot::lh;
  task.earliest = day("2026-11-27");
  task.due = day("2026-11-28");
  task.overdue = day("2026-11-30");
  task.words = "wrap off left hind";
  task.rule = "wrap-off";
  return task;
}

struct Made {
  Farm farm;
  TaskId task;
};

/// A turn of 24 November that made one task.
Made with_task() {
  Made made;
  TurnRecorded body = made.farm.turn_body(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  body.tasks = {wrap_off(EntryId{named_id("the turn")})};
  made.farm.turn(body);
  made.task = body.tasks[0].task;
  return made;
}

void close_in_turn(Made& made, std::string_view day_text, std::string_view how) {
  TurnRecorded body = made.farm.turn_body(cow_412, day_text, {nothing_found(Foot::lh)});
  body.closes = {{made.task, std::string(how)}};
  made.farm.turn(body);
}

void leave(Made& made, std::string_view day_text) {
  CowLeft body;
  body.cow = cow_412;
  body.day = day(day_text);
  body.words = "sold";
  body.closes = {{made.task, "gone"}};
  made.farm.write(body);
}

TaskRow row_of(const Made& made) {
  const Rows rows = made.farm.rows_of(cow_412);
  REQUIRE(rows.tasks.size() == 1);
  return rows.tasks[0];
}

}  // namespace

TEST_CASE("a task stands as it was made and stays open") {
  const TaskRow row = row_of(with_task());
  CHECK(row.open);
  CHECK(row.kind == TaskKind::wrap_off);
  CHECK(row.made_on == day("2026-11-24"));
  CHECK(row.due == day("2026-11-28"));
  CHECK(row.overdue == day("2026-11-30"));
  CHECK(row.words == "wrap off left hind");
  CHECK(row.rule == "wrap-off");
  CHECK_FALSE(row.closed_on);
}

TEST_CASE("a task is closed by a turn or by news, in whose words and on which day") {
  Made by_turn = with_task();
  close_in_turn(by_turn, "2026-12-22", "wrap taken off");
  CHECK_FALSE(row_of(by_turn).open);
  CHECK(row_of(by_turn).closed_on == day("2026-12-22"));
  CHECK(row_of(by_turn).closed_how == "wrap taken off");

  Made by_news = with_task();
  TaskClosedBody told;
  told.cow = cow_412;
  told.day = day("2026-11-29");
  told.closes = {{by_news.task, "wraps off"}};
  by_news.farm.write(told);
  CHECK(row_of(by_news).closed_on == day("2026-11-29"));
}

TEST_CASE("of several closings the first in the total order counts, whatever its day") {
  Made made = with_task();
  close_in_turn(made, "2026-12-22", "first told");
  close_in_turn(made, "2026-12-01", "told later of an earlier day");
  CHECK(row_of(made).closed_how == "first told");
}

TEST_CASE("of several moves the last counts, and a task is never earliest after it is due") {
  Made made = with_task();
  made.farm.write(
      TaskMoved{cow_412, made.task, day("2026-12-03"), day("2026-12-05"), "farmer away"});
  made.farm.write(
      TaskMoved{cow_412, made.task, day("2026-11-26"), day("2026-11-29"), "he is back"});
  const TaskRow row = row_of(made);
  CHECK(row.due == day("2026-11-26"));
  CHECK(row.overdue == day("2026-11-29"));
  CHECK(row.earliest == day("2026-11-26"));
  CHECK(row.open);
}

TEST_CASE("closing or moving a task nobody made makes none") {
  Farm farm;
  TurnRecorded body = farm.turn_body(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  body.closes = {{TaskId{named_id("unknown")}, "done"}};
  farm.turn(body);
  farm.write(
      TaskMoved{cow_412, TaskId{named_id("unknown")}, day("2026-12-03"), day("2026-12-05"), ""});
  CHECK(farm.rows_of(cow_412).tasks.empty());
}

TEST_CASE("a cow who left has her tasks closed and tells why") {
  Made made = with_task();
  leave(made, "2026-12-10");
  CHECK_FALSE(row_of(made).open);
  CHECK(row_of(made).closed_how == "gone");
  const CowRow row = made.farm.rows_of(cow_412).cows.at(0);
  CHECK(row.left_on == day("2026-12-10"));
  CHECK(row.left_words == "sold");
}

TEST_CASE("a cow seen again after she was told gone is there, and her tasks are open again") {
  Made made = with_task();
  leave(made, "2026-12-10");
  made.farm.turn(cow_412, "2026-12-22", {nothing_found(Foot::rh)});
  CHECK(row_of(made).open);
  CHECK_FALSE(row_of(made).closed_on);
  CHECK_FALSE(made.farm.rows_of(cow_412).cows.at(0).left_on);

  leave(made, "2027-01-05");
  CHECK_FALSE(row_of(made).open);
  CHECK(made.farm.rows_of(cow_412).cows.at(0).left_on == day("2027-01-05"));
}

TEST_CASE("a task closed before she left stays closed when she is seen again") {
  Made made = with_task();
  close_in_turn(made, "2026-12-01", "wrap taken off");
  leave(made, "2026-12-10");
  made.farm.turn(cow_412, "2026-12-22", {nothing_found(Foot::rh)});
  CHECK(row_of(made).closed_how == "wrap taken off");
}

TEST_CASE("a turn of an earlier day, or one that was not done, is no proof that she is back") {
  Made made = with_task();
  leave(made, "2026-12-10");
  made.farm.turn(cow_412, "2026-12-01", {nothing_found(Foot::rh)});
  TurnRecorded body = made.farm.turn_body(cow_412, "2026-12-22", {});
  body.turn.end = TurnEnd::not_done;
  body.turn.end_reason = "not in the pen";
  made.farm.turn(body);
  CHECK_FALSE(row_of(made).open);
  CHECK(made.farm.rows_of(cow_412).cows.at(0).left_on == day("2026-12-10"));
}

namespace {

/// A turn called as 412's, her wrap told to be off, then the turn found to be 421's.
Made corrected_after(const std::function<void(Made&)>& told) {
  Made made = with_task();
  const EntryId wrong = made.farm.last().envelope.id;
  told(made);
  TurnRecorded body = made.farm.turn_body(cow_421, "2026-11-24", {nothing_found(Foot::lh)});
  body.tasks = {wrap_off(EntryId{named_id("the turn")})};
  made.farm.correct(made.farm.entry(wrong), body);
  return made;
}

void tell_wrap_off(Made& made, CowId of) {
  TaskClosedBody body;
  body.cow = of;
  body.day = day("2026-11-27");
  body.news = News::wrap_off;
  body.closes = {{made.task, "wrap taken off"}};
  made.farm.write(body);
}

}  // namespace

TEST_CASE("a task closed under a wrong number stays closed when the turn goes to the right cow") {
  const Made made = corrected_after([](Made& so_far) { tell_wrap_off(so_far, cow_412); });
  const Rows rows = made.farm.rows_of(cow_421);
  REQUIRE(rows.tasks.size() == 1);
  CHECK_FALSE(rows.tasks[0].open);
  CHECK(rows.tasks[0].closed_how == "wrap taken off");
  CHECK(made.farm.rows_of(cow_412).tasks.empty());
}

TEST_CASE("what was told of a cow that the turn never counted as closes nothing") {
  const Made made = corrected_after([](Made& so_far) { tell_wrap_off(so_far, cow_named("77")); });
  const Rows rows = made.farm.rows_of(cow_421);
  REQUIRE(rows.tasks.size() == 1);
  CHECK(rows.tasks[0].open);
}

TEST_CASE("a cow that left under a wrong number takes no task of the right cow with her") {
  const Made made = corrected_after([](Made& so_far) { leave(so_far, "2026-11-27"); });
  const Rows rows = made.farm.rows_of(cow_421);
  REQUIRE(rows.tasks.size() == 1);
  CHECK(rows.tasks[0].open);
}

TEST_CASE("a task moved under a wrong number stays moved, and later words go before earlier") {
  const Made made = corrected_after([](Made& so_far) {
    const TaskId task = so_far.task;
    so_far.farm.write(
        TaskMoved{cow_412, task, day("2026-12-03"), day("2026-12-05"), "farmer away"});
  });
  CHECK(made.farm.rows_of(cow_421).tasks.at(0).due == day("2026-12-03"));
  Made moved_on = made;
  moved_on.farm.write(
      TaskMoved{cow_421, made.task, day("2026-12-08"), day("2026-12-09"), "still away"});
  CHECK(moved_on.farm.rows_of(cow_421).tasks.at(0).due == day("2026-12-08"));
}

TEST_CASE("of two tasks with one id the one made first stands") {
  Made made = with_task();
  TurnRecorded body = made.farm.turn_body(cow_412, "2026-12-22", {});
  body.tasks = {wrap_off(EntryId{named_id("the turn")})};
  body.tasks[0].words = "made again";
  made.farm.turn(body);
  CHECK(row_of(made).words == "wrap off left hind");
}

}  // namespace evenclaw
