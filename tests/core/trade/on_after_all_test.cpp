#include "core/trade/on_after_all.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

NewsSaid still_on(News news, FootSet feet = {}) {
  return {"412", news, feet};
}

/// Wrapped ten days ago for three days, and taken off today.
Past wrap_taken_off() {
  return Past()
      .then(cow({foot(Foot::lh, {}, {act(ActionKind::wrap_on, Claw::none, in_days(3))})}),
            first_of_november - 10)
      .then(cow({fine(Foot::lh, {act(ActionKind::wrap_off)})}), first_of_november);
}

Names words_of(const NewsEffect& effect) {
  Names words;
  for (const TaskMade& task : effect.makes) words.push_back(task.words);
  return words;
}

}  // namespace

TEST_CASE("a wrap that went off lately and is not on again is said to be off") {
  const Past past = wrap_taken_off();
  const FootSet lh{Foot::lh};

  const struct {
    const char* why;
    NewsSaid news;
    Day from;
    FootSet feet;
  } rows[] = {{"no foot named", still_on(News::wrap_still_on), first_of_november, lh},
              {"its foot", still_on(News::wrap_still_on, lh), first_of_november, lh},
              {"another foot", still_on(News::wrap_still_on, {Foot::rh}), first_of_november, {}},
              {"a block", still_on(News::block_still_on), first_of_november, {}},
              {"off before that", still_on(News::wrap_still_on), first_of_november + 1, {}},
              {"news of neither", still_on(News::still_lame), first_of_november, {}}};

  for (const auto& row : rows) {
    CAPTURE(row.why);
    CHECK(said_to_be_off(row.news, past.known.rows, row.from) == row.feet);
  }
}

TEST_CASE("a new wrap on the foot of the old one is not said to be off") {
  Past past = wrap_taken_off();
  past.then(cow({foot(Foot::lh, {}, {act(ActionKind::wrap_on)})}), first_of_november);
  CHECK(said_to_be_off(still_on(News::wrap_still_on), past.known.rows, first_of_november).empty());
}

TEST_CASE("on after all, it is to be taken off once more, and no task of it is in the past") {
  const Past past = wrap_taken_off();
  const NewsEffect effect = on_after_all(still_on(News::wrap_still_on), {Foot::lh}, past.known.rows,
                                         first_of_november, {first_of_november, entry(99)});
  REQUIRE(words_of(effect) == Names{"wrap off left hind"});
  CHECK(effect.makes.front().due == first_of_november);
  CHECK(effect.makes.front().earliest == first_of_november);
  CHECK(effect.makes.front().overdue > first_of_november);
  CHECK(effect.closes.empty());
  CHECK_FALSE(effect.unclear.has_value());
}

TEST_CASE("a block that is on after all is checked and taken off when it was to be") {
  const Past past =
      Past()
          .then(cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::inside)})}),
                first_of_november - 7)
          .then(cow({fine(Foot::lh, {act(ActionKind::block_off)})}), first_of_november);
  const NewsEffect effect =
      on_after_all(still_on(News::block_still_on), {Foot::lh}, past.known.rows, first_of_november,
                   {first_of_november, entry(99)});
  REQUIRE(effect.makes.size() == 3);  // the farmer's look, the check, block off
  for (const TaskMade& made : effect.makes) {
    CAPTURE(made.words);
    for (const TaskRow& task : past.known.rows.tasks) {
      if (task.rule == made.rule) CHECK(task.due == made.due);
    }
  }
}

TEST_CASE("one that is on after all without a task of its own is taken off today") {
  Past past = wrap_taken_off();
  past.known.rows.tasks.clear();
  const NewsEffect effect = on_after_all(still_on(News::wrap_still_on), {Foot::lh}, past.known.rows,
                                         first_of_november, {first_of_november, entry(99)});
  REQUIRE(words_of(effect) == Names{"wrap off left hind"});
  CHECK(effect.makes.front().due == first_of_november);
}
