#include "core/trade/follow_up.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>

#include "core/base/random.hpp"
#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

std::vector<TaskMade> made(const Turn& turn, const CowPast& past = {}) {
  return tasks_made(turn, past, first_of_november, entry(99));
}

Turn with_act(const Action& action) {
  return cow({foot(Foot::lh, {}, {action})});
}

Past blocked(Claw claw, int days_ago) {
  return Past().then(with_act(act(ActionKind::block_on, claw)), first_of_november - days_ago);
}

Past wrapped(int days_ago) {
  return Past().then(with_act(act(ActionKind::wrap_on)), first_of_november - days_ago);
}

Names how_closed(const Turn& turn, const Past& past) {
  Names words;
  for (const TaskClosed& closed : tasks_closed(turn, past.known, first_of_november)) {
    for (const TaskRow& task : past.known.rows.tasks) {
      if (task.task == closed.task) words.push_back(task.words + ": " + closed.how);
    }
  }
  return words;
}

Names words_of(const std::vector<TaskMade>& tasks) {
  Names words;
  for (const TaskMade& task : tasks) words.push_back(task.words);
  return words;
}

void check_days(const TaskMade& task, int earliest, int due, int overdue) {
  CHECK(task.earliest - first_of_november == earliest);
  CHECK(task.due - first_of_november == due);
  CHECK(task.overdue - first_of_november == overdue);
}

ActionKind any_act(RandomStream& random) {
  constexpr std::size_t kinds = std::size(EnumWords<ActionKind>::table);
  return EnumWords<ActionKind>::table[random.below(kinds)].value;
}

Claw any_claw(RandomStream& random) {
  return static_cast<Claw>(random.below(5));
}

TimeSaid any_time(RandomStream& random) {
  TimeSaid said;
  if (random.chance(0.3)) said.days = static_cast<int>(random.below(60));
  if (!said.days && random.chance(0.3)) said.weekday = static_cast<Weekday>(random.below(7));
  return said;
}

Turn any_turn(RandomStream& random) {
  Turn turn = cow({});
  for (const Foot foot : all_feet) {
    FootCall call;
    call.foot = foot;
    call.state = static_cast<FootState>(random.below(4));
    const std::uint32_t acts = random.below(4);
    for (std::uint32_t i = 0; i < acts; ++i) {
      call.actions.push_back(act(any_act(random), any_claw(random), any_time(random)));
    }
    turn.feet.push_back(call);
  }
  if (random.chance(0.3)) turn.actions.push_back(act(ActionKind::vet));
  turn.walks_sound = random.chance(0.2);
  return turn;
}

}  // namespace

TEST_CASE("a wrap comes off after three to seven days, by the farmer") {
  const std::vector<TaskMade> tasks = made(with_act(act(ActionKind::wrap_on)));
  REQUIRE(tasks.size() == 1);
  check_days(tasks[0], 3, 5, 8);
  CHECK(tasks[0].owner == Owner::farmer);
  CHECK(tasks[0].words == "wrap off left hind");
  CHECK(tasks[0].rule == "wrap-off");
}

TEST_CASE("a day said for the wrap comes before the rule") {
  const std::vector<TaskMade> tasks =
      made(with_act(act(ActionKind::wrap_on, Claw::none, on(Weekday::thursday))));
  REQUIRE(tasks.size() == 1);
  check_days(tasks[0], 2, 4, 5);
}

TEST_CASE("a day said late is kept, and earlier by no more than the rule allows") {
  const std::vector<TaskMade> tasks =
      made(with_act(act(ActionKind::wrap_on, Claw::none, in_days(10))));
  REQUIRE(tasks.size() == 1);
  check_days(tasks[0], 8, 10, 11);
}

TEST_CASE("a task is never due before the visit that made it") {
  const std::vector<TaskMade> tasks =
      made(with_act(act(ActionKind::wrap_on, Claw::none, in_days(1))));
  REQUIRE(tasks.size() == 1);
  check_days(tasks[0], 0, 1, 2);
}

TEST_CASE("a block is seen after 5-11 days, checked at four weeks and off before six") {
  const std::vector<TaskMade> tasks = made(with_act(act(ActionKind::block_on, Claw::inside)));
  REQUIRE(words_of(tasks) == Names{"block still on? left hind, inside claw",
                                   "block check left hind, inside claw",
                                   "block off left hind, inside claw"});
  check_days(tasks[0], 5, 8, 12);
  check_days(tasks[1], 21, 28, 35);
  check_days(tasks[2], 28, 35, 42);
  CHECK(tasks[0].owner == Owner::farmer);
  CHECK(tasks[1].owner == Owner::trimmer);
  CHECK(tasks[2].owner == Owner::trimmer);
}

TEST_CASE("a block said to come off in a week needs no look, in three weeks no check at four") {
  CHECK(words_of(made(with_act(act(ActionKind::block_on, Claw::inside, in_days(7))))) ==
        Names{"block off left hind, inside claw"});
  const std::vector<TaskMade> tasks =
      made(with_act(act(ActionKind::block_on, Claw::inside, in_days(21))));
  REQUIRE(words_of(tasks) ==
          Names{"block still on? left hind, inside claw", "block off left hind, inside claw"});
  check_days(tasks[1], 14, 21, 22);
}

TEST_CASE("see again at the time said, else at about four weeks") {
  const std::vector<TaskMade> said =
      made(with_act(act(ActionKind::see_again, Claw::none, in_days(14))));
  const std::vector<TaskMade> unsaid = made(with_act(act(ActionKind::see_again)));
  REQUIRE(said.size() == 1);
  REQUIRE(unsaid.size() == 1);
  check_days(said[0], 7, 14, 15);
  check_days(unsaid[0], 21, 28, 35);
  CHECK(said[0].owner == Owner::trimmer);
  CHECK(said[0].words == "see again left hind");
}

TEST_CASE("the vet is rung today") {
  const std::vector<TaskMade> tasks = made(with_act(act(ActionKind::vet)));
  REQUIRE(tasks.size() == 1);
  check_days(tasks[0], 0, 0, 1);
  CHECK(tasks[0].owner == Owner::vet);
}

TEST_CASE("acts on the whole cow make tasks without a foot") {
  Turn turn = cow({fine(Foot::lh)});
  turn.actions = {act(ActionKind::vet), act(ActionKind::see_again), act(ActionKind::told_farmer)};
  const std::vector<TaskMade> tasks = made(turn);
  CHECK(words_of(tasks) == Names{"vet to see her, farmer rings", "see her again"});
  CHECK_FALSE(tasks[0].foot.has_value());
}

TEST_CASE("told the farmer, spray, paste and opening make no task") {
  for (const ActionKind kind :
       {ActionKind::told_farmer, ActionKind::spray, ActionKind::paste, ActionKind::opened}) {
    CHECK(made(with_act(act(kind))).empty());
  }
}

TEST_CASE("a block still on that nobody knew of stays open, and no day is made up for it") {
  const std::vector<TaskMade> tasks = made(with_act(act(ActionKind::block_still_on)));
  REQUIRE(words_of(tasks) == Names{"ask since when a block is on left hind"});
  CHECK(tasks[0].due == first_of_november);
  CHECK(words_of(made(with_act(act(ActionKind::wrap_still_on)))) ==
        Names{"ask since when a wrap is on left hind"});
  CHECK(made(with_act(act(ActionKind::wrap_still_on)), wrapped(5).known).empty());
}

TEST_CASE("the vet called where treatment failed twice is told that it does not heal") {
  const Turn again = with_act(act(ActionKind::block_again, Claw::inside));
  const Past past = Past().then(again, first_of_november - 21);
  Turn now = with_act(act(ActionKind::block_again, Claw::inside));
  CHECK(words_of(made(now, past.known)).size() == 3);  // nobody called the vet: no task for him
  now.feet.front().actions.push_back(act(ActionKind::vet));
  CHECK(words_of(made(now, past.known)).back() ==
        "vet to see left hind, farmer rings: it does not heal");
  CHECK(words_of(made(now)).back() == "vet to see left hind, farmer rings");
  Turn of_her = again;
  of_her.actions = {act(ActionKind::vet)};
  CHECK(words_of(made(of_her, past.known)).back() ==
        "vet to see her, farmer rings: it does not heal");
}

TEST_CASE("a second block stacked on the first makes no second set of tasks") {
  const Turn both = cow({foot(
      Foot::lh, {}, {act(ActionKind::block_on, Claw::inside), act(ActionKind::block_stacked)})});
  CHECK(made(both).size() == 3);
  const Turn later = with_act(act(ActionKind::block_stacked, Claw::inside));
  CHECK(made(later, blocked(Claw::inside, 14).known).empty());
}

TEST_CASE("a block stacked on one nobody recorded makes its tasks") {
  const Turn turn = with_act(act(ActionKind::block_stacked, Claw::inside));
  CHECK(made(turn).size() == 3);
  CHECK(made(turn, blocked(Claw::outside, 14).known).size() == 3);
}

TEST_CASE("a block stacked after the old one came off starts anew") {
  const Turn turn = cow({foot(Foot::lh, {},
                              {act(ActionKind::block_came_off, Claw::inside),
                               act(ActionKind::block_stacked, Claw::inside)})});
  CHECK(made(turn, blocked(Claw::inside, 14).known).size() == 3);
}

TEST_CASE("said twice of the same foot, the later time counts") {
  const Turn turn = cow({foot(Foot::lh, {},
                              {act(ActionKind::see_again, Claw::none, in_days(14)),
                               act(ActionKind::see_again, Claw::none, in_days(7))})});
  const std::vector<TaskMade> tasks = made(turn);
  REQUIRE(tasks.size() == 1);
  CHECK(tasks[0].due == first_of_november + 7);
}

TEST_CASE(
    "a task keeps its id whatever else of the turn is corrected, and on another foot is new") {
  const auto id_of = [](const Turn& turn, const CowPast& past) {
    return made(turn, past).front().task;
  };
  const Action wrap = act(ActionKind::wrap_on);
  const TaskId wrapped_left = id_of(cow({foot(Foot::lh, {}, {wrap})}), {});
  const Finding dd = found(Lesion::dd, Claw::none, Degree::bad);
  CHECK(id_of(cow({foot(Foot::lh, {dd}, {act(ActionKind::wrap_on, Claw::none, in_days(2))})}),
              {}) == wrapped_left);
  const Turn see_first = cow({foot(Foot::lh, {}, {act(ActionKind::see_again), wrap})});
  CHECK(made(see_first).back().task == wrapped_left);
  CHECK(id_of(cow({foot(Foot::rh, {}, {wrap})}), {}) != wrapped_left);
}

TEST_CASE("a corrected turn takes over the ids of tasks that stay the same tasks") {
  const struct {
    Action before;
    Foot foot_after;
    Action after;
    bool is_same;
  } table[] = {
      {act(ActionKind::wrap_on), Foot::lh, act(ActionKind::wrap_on), true},
      {act(ActionKind::wrap_on), Foot::rh, act(ActionKind::wrap_on), false},
      {act(ActionKind::see_again), Foot::lh, act(ActionKind::see_again), true},
      {act(ActionKind::see_again), Foot::lh, act(ActionKind::vet), false},
      {act(ActionKind::block_on), Foot::lh, act(ActionKind::block_on, Claw::inside), true},
      {act(ActionKind::block_on, Claw::outside), Foot::lh, act(ActionKind::block_on, Claw::inside),
       false},
  };

  for (const auto& row : table) {
    CAPTURE(word_of(row.before.kind));
    CAPTURE(word_of(row.after.kind));
    std::vector<TaskMade> before = made(with_act(row.before));
    for (TaskMade& task : before) task.task = TaskId{uuid_derived("by place: " + task.words)};
    const auto after = with_ids_kept(made(cow({foot(row.foot_after, {}, {row.after})})), before);
    REQUIRE(after.size() == before.size());
    for (std::size_t i = 0; i < after.size(); ++i) {
      CHECK((after[i].task == before[i].task) == row.is_same);
    }
  }
}

TEST_CASE("a wrap taken off or lost closes its task, one left on or unknown does not") {
  const Past past = wrapped(5);
  CHECK(how_closed(with_act(act(ActionKind::wrap_off)), past) ==
        Names{"wrap off left hind: wrap taken off"});
  CHECK(how_closed(with_act(act(ActionKind::wrap_came_off)), past) ==
        Names{"wrap off left hind: wrap came off by itself"});
  CHECK(how_closed(with_act(act(ActionKind::wrap_still_on)), past).empty());
  CHECK(how_closed(with_act(act(ActionKind::wrap_unknown)), past).empty());
}

TEST_CASE("a wrap taken off one foot leaves the task of the other") {
  CHECK(how_closed(cow({foot(Foot::rh, {}, {act(ActionKind::wrap_off)})}), wrapped(5)).empty());
}

TEST_CASE("a new wrap closes the old task and makes a new one") {
  Past past = wrapped(5);
  const Turn turn =
      cow({foot(Foot::lh, {}, {act(ActionKind::wrap_off), act(ActionKind::wrap_on)})});
  CHECK(how_closed(turn, past) == Names{"wrap off left hind: wrap taken off"});
  past.then(turn, first_of_november);
  REQUIRE(past.known.rows.tasks.size() == 2);
  CHECK_FALSE(past.known.rows.tasks[0].open);
  CHECK(past.known.rows.tasks[1].open);
  CHECK(past.known.rows.tasks[1].due == first_of_november + 5);
}

TEST_CASE("a block taken off or lost closes first look, check and removal") {
  for (const ActionKind kind : {ActionKind::block_off, ActionKind::block_came_off}) {
    CHECK(how_closed(with_act(act(kind)), blocked(Claw::inside, 20)).size() == 3);
    CHECK(how_closed(with_act(act(kind, Claw::inside)), blocked(Claw::inside, 20)).size() == 3);
    CHECK(how_closed(with_act(act(kind, Claw::outside)), blocked(Claw::inside, 20)).empty());
  }
}

TEST_CASE("a refitted block closes the tasks of the lost one and makes its own") {
  const Turn turn = with_act(act(ActionKind::block_refitted, Claw::inside));
  const Past past = blocked(Claw::inside, 20);
  CHECK(how_closed(turn, past) == Names{"block still on? left hind, inside claw: block refitted",
                                        "block check left hind, inside claw: block refitted",
                                        "block off left hind, inside claw: block refitted"});
  CHECK(made(turn, past.known).size() == 3);
}

TEST_CASE("a block seen on is the check, when the check was due, and never the removal") {
  const Turn turn = with_act(act(ActionKind::block_still_on));
  CHECK(how_closed(turn, blocked(Claw::inside, 28)) ==
        Names{"block still on? left hind, inside claw: block still on",
              "block check left hind, inside claw: block still on"});
  CHECK(how_closed(turn, blocked(Claw::inside, 14)) ==
        Names{"block still on? left hind, inside claw: block still on"});
  CHECK(how_closed(turn, blocked(Claw::inside, 3)).empty());
}

TEST_CASE("a block on which a second was stacked was seen on") {
  const Turn turn = with_act(act(ActionKind::block_stacked, Claw::inside));
  CHECK(how_closed(turn, blocked(Claw::inside, 14)) ==
        Names{"block still on? left hind, inside claw: block stacked"});
  CHECK(how_closed(turn, blocked(Claw::inside, 3)).empty());
}

TEST_CASE("still on with a day said moves the day it comes off") {
  Past past = wrapped(5);
  const Turn wrap = with_act(act(ActionKind::wrap_still_on, Claw::none, in_days(2)));
  CHECK(how_closed(wrap, past) == Names{"wrap off left hind: wrap still on"});
  REQUIRE(made(wrap, past.known).size() == 1);
  CHECK(made(wrap, past.known)[0].due == first_of_november + 2);
  for (const ActionKind kind : {ActionKind::block_still_on, ActionKind::block_stacked}) {
    const Turn block = with_act(act(kind, Claw::inside, in_days(14)));
    const Names closed = how_closed(block, blocked(Claw::inside, 14));
    CHECK(std::count(closed.begin(), closed.end(),
                     "block off left hind, inside claw: " +
                         std::string(kind == ActionKind::block_stacked ? "block stacked"
                                                                       : "block still on")) == 1);
    CHECK(words_of(made(block, blocked(Claw::inside, 14).known)) ==
          Names{"block off left hind, inside claw"});
  }
}

TEST_CASE("a new block whose side nobody called closes nothing of the old one") {
  CHECK(how_closed(with_act(act(ActionKind::block_on)), blocked(Claw::inside, 20)).empty());
}

TEST_CASE("off without a side closes nothing when both claws were blocked") {
  Past past = blocked(Claw::inside, 20);
  past.then(with_act(act(ActionKind::block_on, Claw::outside)), first_of_november - 10);
  CHECK(how_closed(with_act(act(ActionKind::block_off)), past).empty());
  CHECK(how_closed(with_act(act(ActionKind::block_off, Claw::both)), past).size() == 6);
}

TEST_CASE("lifting the foot closes its look, from the earliest day on") {
  Past past;
  past.then(with_act(act(ActionKind::see_again, Claw::none, in_days(28))), first_of_november - 28);
  CHECK(how_closed(cow({fine(Foot::lh)}), past) ==
        Names{"see again left hind: looked at, nothing found"});
  CHECK(how_closed(cow({foot(Foot::lh, {found(Lesion::su, Claw::outside)})}), past) ==
        Names{"see again left hind: looked at, sole ulcer"});
  CHECK(how_closed(cow({fine(Foot::rh)}), past).empty());
  CHECK(how_closed(cow({with_state(Foot::lh, FootState::not_lifted)}), past).empty());
  CHECK(how_closed(with_act(act(ActionKind::spray)), past).empty());
}

TEST_CASE("a foot lifted three days later is not the look of four weeks") {
  Past past;
  past.then(with_act(act(ActionKind::see_again, Claw::none, in_days(28))), first_of_november - 3);
  CHECK(how_closed(cow({fine(Foot::lh)}), past).empty());
}

TEST_CASE("a look at the whole cow is closed by any foot that was lifted") {
  Turn see_again = cow({});
  see_again.actions = {act(ActionKind::see_again, Claw::none, in_days(7))};
  Past past;
  past.then(see_again, first_of_november - 7);
  CHECK(how_closed(cow({fine(Foot::rh)}), past) ==
        Names{"see her again: looked at, nothing found"});
}

TEST_CASE("the vet is never crossed off by a turn") {
  Past past;
  past.then(with_act(act(ActionKind::vet)), first_of_november - 7);
  CHECK(how_closed(cow({fine(Foot::lh)}), past).empty());
}

TEST_CASE("walks sound closes the watching") {
  Past past;
  TaskRow watch;
  watch.task = {uuid_derived("watch")};
  watch.kind = TaskKind::watch_her_walk;
  watch.words = "watch her walk";
  past.known.rows.tasks.push_back(watch);
  Turn turn = cow({fine(Foot::lh)});
  CHECK(how_closed(turn, past).empty());
  turn.walks_sound = true;
  CHECK(how_closed(turn, past) == Names{"watch her walk: walks sound"});
}

TEST_CASE("who comes lame or is scored has been watched, from the earliest day on") {
  Turn scored = cow({fine(Foot::lh)});
  scored.mobility = {MobilityScale::zero_to_three, 1};
  const Past watched = Past().then(lame(cow({fine(Foot::lh)}), {Foot::lh}), first_of_november - 7);
  const std::string task = "watch her walk, ring if still lame: ";
  CHECK(how_closed(lame(cow({fine(Foot::lh)}), {Foot::lh}), watched) == Names{task + "came lame"});
  CHECK(how_closed(scored, watched) == Names{task + "walk scored 1 of 3"});
  const Past yesterday =
      Past().then(lame(cow({fine(Foot::lh)}), {Foot::lh}), first_of_november - 6);
  CHECK(how_closed(scored, yesterday).empty());
}

TEST_CASE("whatever is said, every task lies in order, has its own id and short words") {
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    CAPTURE(seed);
    RandomStream random(seed, 1);
    Past past;
    past.then(any_turn(random), first_of_november - 40)
        .then(any_turn(random), first_of_november - 20);
    const Turn turn = any_turn(random);
    const std::vector<TaskMade> tasks = made(turn, past.known);
    std::set<TaskId> ids;
    for (const TaskMade& task : tasks) {
      CHECK(first_of_november <= task.earliest);
      CHECK(task.earliest <= task.due);
      CHECK(task.due < task.overdue);
      CHECK(task.words.size() <= 60);
      CHECK_FALSE(task.rule.empty());
      ids.insert(task.task);
    }
    CHECK(ids.size() == tasks.size());
    CHECK(tasks == made(turn, past.known));
  }
}

TEST_CASE("whatever is said, a task is closed at most once, was open, and is told how") {
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    CAPTURE(seed);
    RandomStream random(seed, 2);
    Past past;
    past.then(any_turn(random), first_of_november - 40)
        .then(any_turn(random), first_of_november - 20);
    std::set<TaskId> open;
    for (const TaskRow& task : past.known.rows.tasks) {
      if (task.open) open.insert(task.task);
    }
    for (const TaskClosed& closed : tasks_closed(any_turn(random), past.known, first_of_november)) {
      CHECK(open.erase(closed.task) == 1);
      CHECK_FALSE(closed.how.empty());
    }
  }
}

TEST_CASE("after every turn a wrap that is on has exactly one open task") {
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    CAPTURE(seed);
    RandomStream random(seed, 3);
    Past past;
    for (int visit = 0; visit < 4; ++visit)
      past.then(any_turn(random), first_of_november - 40 + visit * 10);
    for (const Foot foot : all_feet) {
      int on = 0;
      int open = 0;
      for (const OnFootRow& row : past.known.rows.on_feet) {
        on += row.foot == foot && row.fixture == Fixture::wrap && row.ended == FixtureEnd::still_on;
      }
      for (const TaskRow& task : past.known.rows.tasks) {
        open += task.open && task.foot == foot && task.kind == TaskKind::wrap_off;
      }
      CHECK(on <= open);
      CHECK(open <= 1);
    }
  }
}

TEST_CASE("her walk is watched by the farmer until the day that was said") {
  Turn turn = cow({foot(Foot::lh, {})});
  turn.actions.push_back(act(ActionKind::watch_her_walk, Claw::none, in_days(14)));
  const std::vector<TaskMade> tasks = made(turn);
  REQUIRE(tasks.size() == 1);
  check_days(tasks[0], 7, 14, 15);
  CHECK(tasks[0].kind == TaskKind::watch_her_walk);
  CHECK(tasks[0].owner == Owner::farmer);
  CHECK_FALSE(tasks[0].foot);
}

TEST_CASE("her walk is not watched in the week after the trim unless a day in it was said") {
  const struct {
    int said;
    int earliest;
    int due;
  } table[] = {{3, 3, 3}, {7, 7, 7}, {10, 7, 10}, {14, 7, 14}, {28, 21, 28}};

  for (const auto& row : table) {
    CAPTURE(row.said);
    Turn turn = cow({});
    turn.actions = {act(ActionKind::watch_her_walk, Claw::none, in_days(row.said))};
    const std::vector<TaskMade> tasks = made(turn);
    REQUIRE(tasks.size() == 1);
    check_days(tasks[0], row.earliest, row.due, row.due + 1);
  }
  for (const FollowUpRule& rule : all_follow_up_rules()) {
    if (rule.kind == TaskKind::watch_her_walk) CHECK(rule.earliest_days >= 7);
  }
}

TEST_CASE("what a finding asked for is asked for anew at the next visit, and never twice") {
  const Turn ulcer = cow({foot(Foot::lh, {found(Lesion::su, Claw::outside)})});
  const Names both = {"look at left hind, ring if no better: looked at, sole ulcer",
                      "see again left hind: looked at, sole ulcer"};
  Past past = Past().then(ulcer, first_of_november - 3);
  CHECK(how_closed(ulcer, past) == both);
  past.then(ulcer, first_of_november);
  int open = 0;
  for (const TaskRow& task : past.known.rows.tasks) open += task.open ? 1 : 0;
  CHECK(open == 2);
  CHECK(how_closed(cow({fine(Foot::rh)}), past).empty());
}

TEST_CASE("called again the same day a foot keeps its looks, unless a block goes on") {
  const Turn ulcer = cow({foot(Foot::lh, {found(Lesion::su, Claw::outside)})});
  const Past past = Past().then(ulcer, first_of_november);
  CHECK(how_closed(ulcer, past).empty());
  CHECK(made(ulcer, past.known).empty());
  CHECK(how_closed(with_act(act(ActionKind::block_on, Claw::inside)), past) ==
        Names{"look at left hind, ring if no better: new block on",
              "see again left hind: new block on"});
}
