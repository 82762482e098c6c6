#include "core/log/feet_of_news.hpp"

#include <doctest/doctest.h>

#include <string_view>
#include <utility>
#include <vector>

#include "core/trade/follow_up_rules.hpp"
#include "core/trade/task_rows.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

constexpr const char* put_on_day = "2026-10-20";

TaskMade wrap_task(Foot foot, std::string_view made_by) {
  std::vector<TaskMade> made = {
      task_from(wrap_off_rule, {foot, Claw::none, day(put_on_day)}, day(put_on_day))};
  name_tasks(made, EntryId{named_id(made_by)});
  return made.front();
}

/// A turn makes the task of her left hind, news that of her right front.
CowStory story() {
  Farm farm;
  TurnRecorded turn =
      farm.turn_body(cow_412, put_on_day, {foot(Foot::lh, {}, {act(ActionKind::wrap_on)})});
  turn.tasks = {wrap_task(Foot::lh, "the turn")};
  farm.turn(std::move(turn));
  TaskClosedBody news;
  news.cow = cow_412;
  news.day = day(put_on_day);
  news.words = "412 RF wrap still on";
  news.feet = {Foot::rf};
  news.tasks = {wrap_task(Foot::rf, "the news")};
  farm.write(news);
  return story_of(farm.herd(), std::vector<CowId>{cow_412}, farm.entries());
}

TaskClosedBody wrap_off(FootSet feet, std::vector<TaskId> tasks) {
  TaskClosedBody news;
  news.feet = feet;
  for (const TaskId task : tasks) news.closes.push_back({task, "off"});
  return news;
}

}  // namespace

TEST_CASE(
    "news of a wrap is of the feet it names, else of those whose tasks it closed, else of all") {
  const TaskId of_turn = wrap_task(Foot::lh, "the turn").task;
  const TaskId of_news = wrap_task(Foot::rf, "the news").task;
  const TaskId of_nobody = wrap_task(Foot::rh, "nobody").task;

  const struct {
    const char* why;
    TaskClosedBody news;
    FootSet feet;
  } cases[] = {
      {"the foot is named", wrap_off({Foot::rh}, {of_turn}), {Foot::rh}},
      {"the task a turn made", wrap_off({}, {of_turn}), {Foot::lh}},
      {"the task news made", wrap_off({}, {of_news}), {Foot::rf}},
      {"both", wrap_off({}, {of_turn, of_news}), {Foot::lh, Foot::rf}},
      {"a task nobody knows", wrap_off({}, {of_nobody}), four_feet},
      {"no foot and no task", wrap_off({}, {}), four_feet},
  };

  const CowStory told = story();
  for (const auto& each : cases) {
    CAPTURE(each.why);
    CHECK(FeetOfNews(told).of(each.news) == each.feet);
  }
}

}  // namespace evenclaw
