#include "core/log/fates_in_doubt.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/told_both_ways.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

constexpr const char* put_on_day = "2026-10-20";
constexpr const char* visit_day = "2026-10-27";
constexpr const char* later_day = "2026-10-30";

enum class By { turn, news, asked_news };

/// One word on the wrap of her left hind, or the block inside.
struct Word {
  ActionKind said;
  By by = By::turn;
  const char* day = visit_day;
  const char* device = "tablet";
  Claw claw = Claw::none;
};

TaskMade wrap_task() {
  std::vector<TaskMade> made = {
      task_from(wrap_off_rule, {Foot::lh, Claw::none, day(put_on_day)}, day(put_on_day))};
  name_tasks(made, EntryId{named_id("the turn that put it on")});
  return made.front();
}

TaskMade block_task() {
  std::vector<TaskMade> made = {
      task_from(block_off_rule, {Foot::lh, Claw::inside, day(put_on_day)}, day(put_on_day))};
  name_tasks(made, EntryId{named_id("the turn that put it on")});
  return made.front();
}

bool tells_off(ActionKind said) {
  return is_off_after(fixture_said(said)->step);
}

std::vector<TaskClosed> closed_by(const Word& word) {
  if (!tells_off(word.said) || word.by == By::asked_news) return {};
  const bool is_wrap = fixture_said(word.said)->fixture == Fixture::wrap;
  return {{is_wrap ? wrap_task().task : block_task().task, "off"}};
}

void tell(Farm& farm, const Word& word) {
  farm.write_on(word.device);
  if (word.by == By::turn) {
    TurnRecorded turn =
        farm.turn_body(cow_412, word.day, {foot(Foot::lh, {}, {act(word.said, word.claw)})});
    turn.closes = closed_by(word);
    farm.turn(std::move(turn));
    return;
  }
  TaskClosedBody news;
  news.cow = cow_412;
  if (std::string(word.day) == visit_day) news.visit = farm.visit(word.day);
  news.day = day(word.day);
  for (const auto& each : EnumWords<News>::table) {
    if (fixture_said(each.value) == fixture_said(word.said)) news.news = each.value;
  }
  news.words = std::string("412 ") + std::string(word_of(word.said));
  if (word.by == By::asked_news) news.asked = "Is it off, or still on?";
  news.closes = closed_by(word);
  farm.write(news);
}

/// A wrap and a block inside are put on the left hind, with their tasks.
Farm blocked_and_wrapped() {
  Farm farm;
  farm.write_on("tablet");
  TurnRecorded first = farm.turn_body(
      cow_412, put_on_day,
      {foot(Foot::lh, {}, {act(ActionKind::wrap_on), act(ActionKind::block_on, Claw::inside)})});
  first.tasks = {wrap_task(), block_task()};
  farm.turn(std::move(first));
  farm.visit(visit_day);
  return farm;
}

struct Stands {
  OnFootRow on_foot;
  TaskRow task;
};

Stands stands(const Farm& farm, Fixture fixture) {
  const Rows rows = farm.rows_of(cow_412);
  Stands all;
  for (const OnFootRow& row : rows.on_feet) {
    if (row.fixture == fixture) all.on_foot = row;
  }
  for (const TaskRow& row : rows.tasks) {
    if (is_task_of(fixture, row.kind)) all.task = row;
  }
  return all;
}

}  // namespace

TEST_CASE("a wrap told off and told still on stays on, and is to be taken off, until it is clear") {
  constexpr ActionKind off = ActionKind::wrap_off;
  constexpr ActionKind on = ActionKind::wrap_still_on;

  enum class End { in_doubt, still_on, is_off };

  const struct {
    const char* why;
    std::vector<Word> said;
    End end;
    const char* off_on = "";
  } table[] = {
      {"off", {{off, By::news}}, End::is_off, visit_day},
      {"off, then seen on in the crush", {{off, By::news}, {on}}, End::in_doubt},
      {"off, then told on and asked", {{off, By::news}, {on, By::asked_news}}, End::in_doubt},
      {"off at the first call, on at the second", {{off}, {on}}, End::in_doubt},
      {"found on, then taken off", {{on}, {off}}, End::is_off, visit_day},
      {"told on, then told off", {{on, By::news}, {off, By::news}}, End::is_off, visit_day},
      {"on one tablet on, on another off",
       {{on}, {off, By::news, visit_day, "other"}},
       End::in_doubt},
      {"and told once more on one of them",
       {{on}, {off, By::news, visit_day, "other"}, {off, By::news}},
       End::in_doubt},
      {"told off last", {{off, By::news}, {on}, {off, By::news}}, End::is_off, visit_day},
      {"told on last", {{off, By::news}, {on, By::asked_news}, {on, By::news}}, End::still_on},
      {"off, as told after the visit",
       {{off, By::news}, {on, By::asked_news}, {off, By::news, later_day}},
       End::is_off,
       later_day},
      {"on, as told after the visit",
       {{off, By::news}, {on, By::asked_news}, {on, By::news, later_day}},
       End::still_on},
      {"taken off at the next visit",
       {{off, By::news}, {on, By::asked_news}, {off, By::turn, later_day}},
       End::is_off,
       later_day},
  };

  for (const auto& row : table) {
    CAPTURE(row.why);
    Farm farm = blocked_and_wrapped();
    for (const Word& word : row.said) tell(farm, word);
    const Stands wrap = stands(farm, Fixture::wrap);
    CHECK((wrap.on_foot.ended == FixtureEnd::still_on) == (row.end != End::is_off));
    CHECK(wrap.task.open == (row.end != End::is_off));
    CHECK(is_told_both_ways(wrap.task) == (row.end == End::in_doubt));
    if (row.end != End::is_off) continue;
    CHECK(wrap.on_foot.ended_on == day(row.off_on));
    CHECK(wrap.task.closed_on == day(row.off_on));
  }
}

TEST_CASE("off and still on in one turn is in doubt, whichever was said first") {
  const Action off = act(ActionKind::wrap_off);
  const Action on = act(ActionKind::wrap_still_on);
  for (const std::vector<Action>& said : {std::vector{off, on}, std::vector{on, off}}) {
    Farm farm = blocked_and_wrapped();
    TurnRecorded turn = farm.turn_body(cow_412, visit_day, {foot(Foot::lh, {}, said)});
    turn.closes = {{wrap_task().task, "wrap taken off"}};
    const EntryId told = farm.turn(turn);
    CHECK(stands(farm, Fixture::wrap).on_foot.ended == FixtureEnd::still_on);
    CHECK(is_told_both_ways(stands(farm, Fixture::wrap).task));

    turn.turn.feet.front().actions = {off};
    farm.correct(farm.entry(told), turn);
    CHECK(stands(farm, Fixture::wrap).on_foot.ended_on == day(visit_day));
    CHECK(stands(farm, Fixture::wrap).task.closed_on == day(visit_day));
  }
}

TEST_CASE("a block told off one claw and still on the other is in no doubt") {
  const struct {
    Claw on;
    bool is_in_doubt;
  } table[] = {{Claw::outside, false}, {Claw::inside, true}, {Claw::not_called, true}};

  for (const auto& row : table) {
    CAPTURE(word_of(row.on));
    Farm farm = blocked_and_wrapped();
    tell(farm, {ActionKind::block_off, By::turn, visit_day, "tablet", Claw::inside});
    tell(farm, {ActionKind::block_still_on, By::turn, visit_day, "tablet", row.on});
    CHECK(is_told_both_ways(stands(farm, Fixture::block).task) == row.is_in_doubt);
    CHECK(stands(farm, Fixture::wrap).task.open);
  }
}

TEST_CASE("where a new wrap was put on, one told still on is that one") {
  Farm farm = blocked_and_wrapped();
  TurnRecorded turn =
      farm.turn_body(cow_412, visit_day,
                     {foot(Foot::lh, {}, {act(ActionKind::wrap_off), act(ActionKind::wrap_on)})});
  turn.closes = {{wrap_task().task, "wrap taken off"}};
  farm.turn(std::move(turn));
  tell(farm, {ActionKind::wrap_still_on, By::turn, visit_day, "other"});
  CHECK_FALSE(stands(farm, Fixture::wrap).task.open);
}

TEST_CASE("a wrap that was told on once more with a new task is to be taken off once") {
  Farm farm = blocked_and_wrapped();
  tell(farm, {ActionKind::wrap_off, By::news});
  tell(farm, {ActionKind::wrap_still_on, By::asked_news});
  TaskClosedBody on;
  on.cow = cow_412;
  on.visit = farm.visit(visit_day);
  on.day = day(visit_day);
  on.news = News::wrap_still_on;
  on.words = "412 wrap still on";
  on.tasks = {task_from(wrap_off_rule, {Foot::lh, Claw::none, day(visit_day)}, day(visit_day))};
  name_tasks(on.tasks, EntryId{named_id("told on once more")});
  farm.write(on);
  const Rows rows = farm.rows_of(cow_412);
  CHECK(std::count_if(rows.tasks.begin(), rows.tasks.end(), [](const TaskRow& task) {
          return task.open && task.kind == TaskKind::wrap_off;
        }) == 1);
  CHECK(stands(farm, Fixture::wrap).on_foot.ended == FixtureEnd::still_on);
}

}  // namespace evenclaw
