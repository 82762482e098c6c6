// Each kind of task can be closed by something that is said, and by nothing else.
#include <doctest/doctest.h>

#include <functional>
#include <set>
#include <string>
#include <vector>

#include "core/trade/follow_up.hpp"
#include "core/trade/follow_up_decided.hpp"
#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

/// One open task of the left hind, inside claw for a block, that may be done by now.
struct OpenTask {
  const char* name;
  TaskKind kind;
  Owner owner;
};

constexpr OpenTask open_kinds[] = {
    {"wrap off", TaskKind::wrap_off, Owner::farmer},
    {"first look at a block", TaskKind::block_check, Owner::farmer},
    {"block check", TaskKind::block_check, Owner::trimmer},
    {"block off", TaskKind::block_off, Owner::trimmer},
    {"farmer's look", TaskKind::look_at_foot, Owner::farmer},
    {"trimmer's look", TaskKind::look_at_foot, Owner::trimmer},
    {"watching", TaskKind::watch_her_walk, Owner::farmer},
    {"vet", TaskKind::vet, Owner::vet},
    {"held back", TaskKind::withdrawal_end, Owner::farmer},
};

Past with(const OpenTask& open) {
  Past past;
  TaskRow task;
  task.task = {uuid_derived(open.name)};
  task.kind = open.kind;
  task.owner = open.owner;
  const bool is_of_foot =
      open.kind != TaskKind::watch_her_walk && open.kind != TaskKind::withdrawal_end;
  if (is_of_foot) task.foot = Foot::lh;
  const bool is_of_block = open.kind == TaskKind::block_check || open.kind == TaskKind::block_off;
  if (is_of_block) task.claw = Claw::inside;
  task.earliest = first_of_november - 3;
  task.due = first_of_november;
  task.overdue = first_of_november + 1;
  past.known.rows.tasks = {task};
  if (is_of_block || open.kind == TaskKind::wrap_off) {
    OnFootRow row;
    row.foot = Foot::lh;
    row.claw = task.claw;
    row.fixture = is_of_block ? Fixture::block : Fixture::wrap;
    row.since = first_of_november - 10;
    past.known.rows.on_feet = {row};
  }
  return past;
}

using Kinds = std::set<std::string>;

/// The kinds that something said closes.
Kinds closed_by(const std::function<std::size_t(const CowPast&)>& closings) {
  Kinds closed;
  for (const OpenTask& open : open_kinds) {
    if (closings(with(open).known) > 0) closed.insert(open.name);
  }
  return closed;
}

Kinds closed_by(const Turn& turn) {
  return closed_by(
      [&](const CowPast& past) { return tasks_closed(turn, past, first_of_november).size(); });
}

Kinds closed_by(News news) {
  return closed_by([&](const CowPast& past) {
    return effect_of({"412", news, {}}, past, first_of_november, entry(99)).closes.size();
  });
}

const Kinds of_a_wrap = {"wrap off"};
const Kinds of_a_block = {"first look at a block", "block check", "block off"};
const Kinds looks = {"farmer's look", "trimmer's look"};

Kinds expected_of(ActionKind kind) {
  switch (decision_on(kind).follow_up) {
    case ActFollowUp::wrap_on:
    case ActFollowUp::wrap_off:
      return of_a_wrap;
    case ActFollowUp::block_on:
    case ActFollowUp::block_off:
      return of_a_block;
    case ActFollowUp::block_kept:
      // A second block on top tells that the first is on, and nothing of the claw.
      if (kind == ActionKind::block_stacked) return {"first look at a block"};
      return {"first look at a block", "block check"};
    case ActFollowUp::wrap_kept:
    case ActFollowUp::look:
    case ActFollowUp::walk:
    case ActFollowUp::vet:
    case ActFollowUp::pain_relief:
    case ActFollowUp::look_after_dd:
    case ActFollowUp::look_after_cut:
    case ActFollowUp::withdrawal:
    case ActFollowUp::none:
      return {};
  }
  return {};
}

Kinds expected_of(News news) {
  switch (news) {
    case News::wrap_off:
    case News::wrap_came_off:
      return of_a_wrap;
    case News::wrap_still_on:
    case News::kicks:
    case News::jumps:
    case News::lies_down:
    case News::needs_hoist:
    case News::kicks_no_more:
    case News::jumps_no_more:
    case News::lies_down_no_more:
    case News::hoist_no_more:
      return {};
    case News::block_off:
    case News::block_came_off:
      return of_a_block;
    case News::block_still_on:
      return {"first look at a block"};
    case News::looked_at:
      return {"farmer's look", "trimmer's look", "first look at a block"};
    case News::vet_came:
      return {"vet"};
    case News::still_lame:
      return {"farmer's look", "watching"};
    case News::walks_sound:
      return {"watching"};
    case News::gone:
      return {"wrap off",      "first look at a block", "block check", "block off",
              "farmer's look", "trimmer's look",        "watching",    "vet"};
  }
  return {};
}

}  // namespace

TEST_CASE("an act on the foot closes the tasks of what it concerns, and no others") {
  for (const auto& row : EnumWords<ActionKind>::table) {
    CAPTURE(row.word);
    CHECK(closed_by(cow({foot(Foot::lh, {}, {act(row.value, Claw::inside)})})) ==
          expected_of(row.value));
    CHECK(closed_by(cow({foot(Foot::rh, {}, {act(row.value, Claw::inside)})})).empty());
  }
}

TEST_CASE("an act on the whole cow closes nothing") {
  for (const auto& row : EnumWords<ActionKind>::table) {
    CAPTURE(row.word);
    Turn turn = cow({});
    turn.actions = {act(row.value)};
    CHECK(closed_by(turn).empty());
  }
}

TEST_CASE("a foot lifted closes its looks, whatever lesion was found on it") {
  CHECK(closed_by(cow({fine(Foot::lh)})) == looks);
  for (const auto& row : EnumWords<Lesion>::table) {
    CAPTURE(row.word);
    CHECK(closed_by(cow({foot(Foot::lh, {found(row.value)})})) == looks);
    CHECK(closed_by(cow({foot(Foot::rh, {found(row.value)})})).empty());
  }
  CHECK(closed_by(cow({with_state(Foot::lh, FootState::not_lifted)})).empty());
  CHECK(closed_by(cow({with_state(Foot::lh, FootState::unsaid)})).empty());
}

TEST_CASE("how she walks closes the watching and nothing else") {
  Turn sound = cow({});
  sound.walks_sound = true;
  Turn scored = cow({});
  scored.mobility = {MobilityScale::one_to_five, 2};
  for (const Turn& turn : {sound, scored, lame(cow({}), {Foot::lh})}) {
    CHECK(closed_by(turn) == Kinds{"watching"});
  }
  for (const auto& row : EnumWords<Reason>::table) {
    CAPTURE(row.word);
    Turn turn = cow({});
    turn.reason = row.value;
    CHECK(closed_by(turn).empty() == (row.value != Reason::lame));
  }
}

TEST_CASE("each piece of news closes what it tells of, and no others") {
  for (const auto& row : EnumWords<News>::table) {
    CAPTURE(row.word);
    CHECK(closed_by(row.value) == expected_of(row.value));
  }
}

TEST_CASE("every kind of task can be closed by something said besides that she is gone") {
  Kinds closable;
  const auto add = [&](const Kinds& kinds) { closable.insert(kinds.begin(), kinds.end()); };
  for (const auto& row : EnumWords<ActionKind>::table) add(expected_of(row.value));
  for (const auto& row : EnumWords<News>::table) {
    if (row.value != News::gone) add(expected_of(row.value));
  }
  for (const OpenTask& open : open_kinds) {
    CAPTURE(open.name);
    // What is held back ends with its day; a turn after it closes it.
    if (open.kind == TaskKind::withdrawal_end) continue;
    CHECK(closable.count(open.name) == 1);
  }
}

TEST_CASE("what is held back is closed by any turn after its last day, and not before") {
  const Past past = with({"held back", TaskKind::withdrawal_end, Owner::farmer});
  CHECK(tasks_closed(cow({}), past.known, first_of_november).empty());
  CHECK(tasks_closed(cow({}), past.known, first_of_november + 1).size() == 1);
}

TEST_CASE("every kind that is written down stands in this table, and a routine trim is not") {
  std::set<TaskKind> kinds;
  for (const OpenTask& open : open_kinds) kinds.insert(open.kind);
  CHECK(kinds.size() + 1 == std::size(EnumWords<TaskKind>::table));
  CHECK(kinds.count(TaskKind::routine_trim) == 0);
  for (const FollowUpRule& rule : all_follow_up_rules()) CHECK(kinds.count(rule.kind) == 1);
}
