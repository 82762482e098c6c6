#include "core/log/fixtures.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

constexpr const char* days[] = {"2026-09-01", "2026-10-01", "2026-11-01"};

/// What was done to the left hind, visit by visit; the rows by the day they went on.
std::vector<OnFootRow> done(const std::vector<std::vector<Action>>& visits) {
  Farm farm;
  for (std::size_t i = 0; i < visits.size(); ++i) {
    farm.turn(cow_412, days[i], {foot(Foot::lh, {}, visits[i])});
  }
  std::vector<OnFootRow> rows = farm.rows_of(cow_412).on_feet;
  std::sort(rows.begin(), rows.end(), [](const OnFootRow& a, const OnFootRow& b) {
    return std::tie(a.since, a.position) < std::tie(b.since, b.position);
  });
  return rows;
}

const Action wrap_on = act(ActionKind::wrap_on);
const Action block_on = act(ActionKind::block_on, Claw::inside);

}  // namespace

TEST_CASE("a wrap is on from its day until it is told to be off") {
  const struct {
    ActionKind said;
    FixtureEnd ended;
    std::optional<Day> ended_on;
  } table[] = {
      {ActionKind::wrap_off, FixtureEnd::taken_off, day(days[1])},
      {ActionKind::wrap_came_off, FixtureEnd::came_off, day(days[1])},
      {ActionKind::wrap_still_on, FixtureEnd::still_on, std::nullopt},
      {ActionKind::wrap_unknown, FixtureEnd::unknown, day(days[1])},
      {ActionKind::block_off, FixtureEnd::still_on, std::nullopt},
  };

  for (const auto& row : table) {
    CAPTURE(word_of(row.said));
    const std::vector<OnFootRow> rows = done({{wrap_on}, {act(row.said)}});
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].fixture == Fixture::wrap);
    CHECK(rows[0].since == day(days[0]));
    CHECK(rows[0].ended == row.ended);
    CHECK(rows[0].ended_on == row.ended_on);
  }
}

TEST_CASE("a wrap told off stays off when the turn that put it on is corrected the same day") {
  Farm farm;
  const EntryId turn = farm.turn(cow_412, days[0], {foot(Foot::lh, {}, {wrap_on})});
  TaskClosedBody news;
  news.cow = cow_412;
  news.day = day(days[0]);
  news.news = News::wrap_came_off;
  farm.write(news);
  farm.correct(farm.entry(turn),
               farm.turn_body(cow_412, days[0], {foot(Foot::lh, {lesion(Lesion::dd)}, {wrap_on})}));
  const std::vector<OnFootRow> rows = farm.rows_of(cow_412).on_feet;
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].ended == FixtureEnd::came_off);
}

TEST_CASE("\"don't know\" ends nothing: later words still count") {
  const std::vector<OnFootRow> off =
      done({{wrap_on}, {act(ActionKind::wrap_unknown)}, {act(ActionKind::wrap_off)}});
  REQUIRE(off.size() == 1);
  CHECK(off[0].ended == FixtureEnd::taken_off);
  CHECK(off[0].ended_on == day(days[2]));
  const std::vector<OnFootRow> on =
      done({{wrap_on}, {act(ActionKind::wrap_unknown)}, {act(ActionKind::wrap_still_on)}});
  CHECK(on[0].ended == FixtureEnd::still_on);
  CHECK_FALSE(on[0].ended_on);
}

TEST_CASE("a block told off on one claw leaves the block on the other claw") {
  Farm farm;
  farm.turn(cow_412, days[0],
            {foot(Foot::lh, {}, {block_on, act(ActionKind::block_on, Claw::outside)})});
  farm.turn(cow_412, days[1], {foot(Foot::lh, {}, {act(ActionKind::block_off, Claw::outside)})});
  for (const OnFootRow& row : farm.rows_of(cow_412).on_feet) {
    CHECK((row.ended == FixtureEnd::still_on) == (row.claw == Claw::inside));
  }
}

TEST_CASE("a block told off without a claw means every block of the foot") {
  const std::vector<OnFootRow> rows =
      done({{block_on, act(ActionKind::block_on, Claw::outside)}, {act(ActionKind::block_off)}});
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].ended == FixtureEnd::taken_off);
  CHECK(rows[1].ended == FixtureEnd::taken_off);
}

TEST_CASE("one block over both claws told off on one of them stays on the other") {
  const std::vector<OnFootRow> rows =
      done({{act(ActionKind::block_on, Claw::both)}, {act(ActionKind::block_off, Claw::outside)}});
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].ended == FixtureEnd::still_on);
  CHECK(rows[0].claw == Claw::inside);
}

TEST_CASE("a block stacked on one belongs to it, on none it is one of its own") {
  const std::vector<OnFootRow> stacked = done({{block_on}, {act(ActionKind::block_stacked)}});
  REQUIRE(stacked.size() == 1);
  CHECK(stacked[0].since == day(days[0]));
  CHECK(done({{block_on, act(ActionKind::block_stacked, Claw::inside)}}).size() == 1);
  const std::vector<OnFootRow> alone = done({{act(ActionKind::block_stacked, Claw::inside)}});
  REQUIRE(alone.size() == 1);
  CHECK(alone[0].claw == Claw::inside);
}

TEST_CASE("a new block in the old one's place says how the old one went") {
  const struct {
    ActionKind again;
    FixtureEnd old_one;
  } table[] = {{ActionKind::block_refitted, FixtureEnd::came_off},
               {ActionKind::block_again, FixtureEnd::taken_off}};

  for (const auto& row : table) {
    const std::vector<OnFootRow> rows = done({{block_on}, {act(row.again)}});
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].ended == row.old_one);
    CHECK(rows[0].ended_on == day(days[1]));
    CHECK(rows[1].ended == FixtureEnd::still_on);
    CHECK(rows[1].claw == Claw::inside);
  }
}

TEST_CASE("a wrap put on where one is on means that the old one was taken off") {
  const std::vector<OnFootRow> rows = done({{wrap_on}, {wrap_on}});
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].ended == FixtureEnd::taken_off);
  CHECK(rows[1].ended == FixtureEnd::still_on);
}

TEST_CASE("a block on the other claw leaves the first where it is") {
  const std::vector<OnFootRow> rows =
      done({{block_on}, {act(ActionKind::block_on, Claw::outside)}});
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].ended == FixtureEnd::still_on);
  CHECK(rows[1].ended == FixtureEnd::still_on);
}

TEST_CASE("in one turn the old one goes and the new one comes, in whatever order it is said") {
  const std::vector<std::vector<Action>> orders = {{act(ActionKind::wrap_off), wrap_on},
                                                   {wrap_on, act(ActionKind::wrap_off)}};
  for (const std::vector<Action>& said : orders) {
    const std::vector<OnFootRow> rows = done({{wrap_on}, said});
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].ended == FixtureEnd::taken_off);
    CHECK(rows[1].ended == FixtureEnd::still_on);
  }
}

TEST_CASE("a block told to be on of which nobody knew is on from that day, until it is told off") {
  const std::vector<OnFootRow> rows =
      done({{act(ActionKind::block_still_on, Claw::outside)}, {act(ActionKind::block_still_on)}});
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].only_seen);
  CHECK(rows[0].since == day(days[0]));
  CHECK(rows[0].claw == Claw::outside);
  CHECK(rows[0].ended == FixtureEnd::still_on);
  const std::vector<OnFootRow> off =
      done({{act(ActionKind::block_still_on)}, {act(ActionKind::block_off)}});
  REQUIRE(off.size() == 1);
  CHECK(off[0].ended == FixtureEnd::taken_off);
}

TEST_CASE("news that a wrap nobody knew of is on a foot is kept though it is asked about") {
  Farm farm;
  farm.turn(cow_412, days[0], {foot(Foot::rh, {}, {wrap_on})});
  TaskClosedBody told;
  told.cow = cow_412;
  told.day = day(days[1]);
  told.news = News::wrap_still_on;
  told.feet = {Foot::lh};
  told.asked = "No wrap is known on left hind. Since when is it on?";
  farm.write(told);
  std::vector<Foot> seen;
  for (const OnFootRow& row : farm.rows_of(cow_412).on_feet) {
    if (row.only_seen) seen.push_back(row.foot);
  }
  CHECK(seen == std::vector<Foot>{Foot::lh});
}

TEST_CASE("a wrap told off without its foot being named means every foot") {
  Farm farm;
  farm.turn(cow_412, days[0], {foot(Foot::lh, {}, {wrap_on}), foot(Foot::rh, {}, {wrap_on})});
  TaskClosedBody told;
  told.cow = cow_412;
  told.day = day(days[1]);
  told.news = News::wrap_came_off;
  farm.write(told);
  for (const OnFootRow& row : farm.rows_of(cow_412).on_feet) {
    CHECK(row.ended == FixtureEnd::came_off);
    CHECK(row.ended_on == day(days[1]));
  }
}

TEST_CASE("news of one foot says nothing of the other, and news before a wrap nothing of it") {
  Farm farm;
  farm.turn(cow_412, days[1], {foot(Foot::lh, {}, {wrap_on}), foot(Foot::rh, {}, {wrap_on})});
  TaskClosedBody told;
  told.cow = cow_412;
  told.day = day("2026-10-05");
  told.news = News::wrap_off;
  told.feet = {Foot::rh};
  farm.write(told);
  told.day = day(days[0]);
  told.feet = {Foot::lh};
  farm.write(told);
  for (const OnFootRow& row : farm.rows_of(cow_412).on_feet) {
    CHECK((row.ended == FixtureEnd::taken_off) == (row.foot == Foot::rh));
  }
}

TEST_CASE("a wrap told off and then to be taken off once more is on again, on that foot only") {
  Farm farm;
  farm.turn(cow_412, days[0], {foot(Foot::lh, {}, {wrap_on}), foot(Foot::rh, {}, {wrap_on})});
  const auto still_on = [&] {
    std::vector<Foot> feet;
    for (const OnFootRow& row : farm.rows_of(cow_412).on_feet) {
      if (row.ended == FixtureEnd::still_on) feet.push_back(row.foot);
    }
    return feet;
  };
  TaskClosedBody news;
  news.cow = cow_412;
  news.day = day(days[1]);
  news.news = News::wrap_off;
  farm.write(news);
  REQUIRE(still_on().empty());
  news.news = News::wrap_still_on;
  farm.write(news);
  CHECK(still_on().empty());  // said in general, while none is known to be on
  TaskMade task;
  task.task = TaskId{uuid_derived("once more")};
  task.kind = TaskKind::wrap_off;
  task.foot = Foot::lh;
  news.tasks = {task};
  farm.write(news);
  CHECK(still_on() == std::vector<Foot>{Foot::lh});
  news.tasks.clear();
  news.news = News::wrap_off;
  farm.write(news);
  CHECK(still_on().empty());
}

}  // namespace evenclaw
