#include <doctest/doctest.h>

#include "core/trade/follow_up.hpp"
#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

NewsEffect after(News news, const Past& past, FootSet feet = {}) {
  return effect_of({"412", news, feet}, past.known, first_of_november, entry(99));
}

Names how_closed(const NewsEffect& effect, const Past& past) {
  Names words;
  for (const TaskClosed& closed : effect.closes) {
    for (const TaskRow& task : past.known.rows.tasks) {
      if (task.task == closed.task) words.push_back(task.words + ": " + closed.how);
    }
  }
  return words;
}

Past with_acts(std::vector<std::pair<Foot, Action>> acts, int days_ago = 10) {
  Turn turn = cow({});
  for (const auto& [where, action] : acts) {
    FootCall* call = find_foot(turn, where);
    if (call == nullptr) {
      turn.feet.push_back(foot(where, {}));
      call = &turn.feet.back();
    }
    call->actions.push_back(action);
  }
  return Past().then(turn, first_of_november - days_ago);
}

Past two_wraps() {
  return with_acts({{Foot::lh, act(ActionKind::wrap_on)}, {Foot::rh, act(ActionKind::wrap_on)}});
}

}  // namespace

TEST_CASE("wrap off, said at home, closes the only wrap") {
  const Past past = with_acts({{Foot::lh, act(ActionKind::wrap_on)}});
  const NewsEffect effect = after(News::wrap_off, past);
  CHECK(how_closed(effect, past) == Names{"wrap off left hind: wrap taken off"});
  CHECK_FALSE(effect.unclear.has_value());
}

TEST_CASE("a wrap that came off by itself is told apart from one taken off") {
  const Past past = with_acts({{Foot::lh, act(ActionKind::wrap_on)}});
  CHECK(how_closed(after(News::wrap_came_off, past), past) ==
        Names{"wrap off left hind: wrap came off by itself"});
}

TEST_CASE("wrap off with two wraps on is asked about and closes nothing") {
  const NewsEffect effect = after(News::wrap_off, two_wraps());
  CHECK(effect.closes.empty());
  REQUIRE(effect.unclear.has_value());
  CHECK(*effect.unclear == "Which wrap: left hind or right hind?");
}

TEST_CASE("a foot named makes it clear, and all four mean every wrap") {
  const Past past = two_wraps();
  CHECK(how_closed(after(News::wrap_off, past, {Foot::rh}), past) ==
        Names{"wrap off right hind: wrap taken off"});
  CHECK(after(News::wrap_off, past, four_feet).closes.size() == 2);
}

TEST_CASE("wraps off and blocks off mean all that are on her") {
  const NewsSaid wraps{"412", News::wrap_off, {}, true};
  const NewsEffect unwrapped = effect_of(wraps, two_wraps().known, first_of_november, entry(99));
  CHECK(unwrapped.closes.size() == 2);
  CHECK_FALSE(unwrapped.unclear);

  const Past blocked = with_acts({{Foot::lh, act(ActionKind::block_on, Claw::inside)},
                                  {Foot::lh, act(ActionKind::block_on, Claw::outside)},
                                  {Foot::rh, act(ActionKind::block_on, Claw::inside)}});
  const NewsSaid blocks{"412", News::block_off, {}, true};
  CHECK(effect_of(blocks, blocked.known, first_of_november, entry(99)).closes.size() == 9);
  CHECK(effect_of(blocks, Past().known, first_of_november, entry(99)).unclear);
}

TEST_CASE("a foot named with wraps off means that foot alone") {
  const NewsSaid said{"412", News::wrap_off, {Foot::lh}, true};
  CHECK(effect_of(said, two_wraps().known, first_of_november, entry(99)).closes.size() == 1);
}

TEST_CASE("a wrap off on the foot without one is asked about") {
  const Past past = with_acts({{Foot::lh, act(ActionKind::wrap_on)}});
  const NewsEffect effect = after(News::wrap_off, past, {Foot::rh});
  CHECK(effect.closes.empty());
  CHECK(effect.unclear == "Her wrap is on left hind, not on right hind. Which is right?");
}

TEST_CASE("news never silently means the wrap that was put on at this visit, nor with its foot") {
  const Past past = with_acts({{Foot::lh, act(ActionKind::wrap_on)}}, 0).in_same_visit();
  for (const News news : {News::wrap_off, News::wrap_came_off}) {
    const NewsEffect effect = after(news, past);
    CHECK(effect.closes.empty());
    CHECK(effect.unclear ==
          "Her wrap on left hind was put on at this visit. Is that one off? Then say the foot.");
    const NewsEffect named = after(news, past, {Foot::lh});
    CHECK(named.closes.empty());
    CHECK(named.unclear ==
          "Her wrap on left hind was put on at this visit. Is that one off? Then say this again.");
    const NewsSaid said{"412", news, {Foot::lh}, false};
    const NewsEffect sure = effect_of(said, past.known, first_of_november, entry(99), true);
    CHECK(sure.closes.size() == 1);
    CHECK_FALSE(sure.unclear);
  }
}

TEST_CASE("a foot with the wrap of this visit is asked about beside one with an old wrap") {
  Past past = with_acts({{Foot::rh, act(ActionKind::wrap_on)}});
  const VisitId before{entry(7).value};
  for (TaskRow& task : past.known.rows.tasks) task.visit = before;
  for (OnFootRow& row : past.known.rows.on_feet) row.visit = before;
  Turn turn = cow({foot(Foot::lh, {})});
  turn.feet.front().actions.push_back(act(ActionKind::wrap_on));
  past.then(turn, first_of_november).in_same_visit();
  CHECK(after(News::wrap_off, past, {Foot::lh, Foot::rh}).unclear ==
        "Her wrap on left hind was put on at this visit. Is that one off? Then say this again.");
  CHECK(how_closed(after(News::wrap_off, past, {Foot::rh}), past) ==
        Names{"wrap off right hind: wrap taken off"});
  const NewsSaid both{"412", News::wrap_off, {Foot::lh, Foot::rh}, false};
  CHECK(effect_of(both, past.known, first_of_november, entry(99), true).closes.size() == 2);
}

TEST_CASE("two wraps of this visit are asked about as two") {
  const Past past =
      with_acts({{Foot::lh, act(ActionKind::wrap_on)}, {Foot::rh, act(ActionKind::wrap_on)}}, 0)
          .in_same_visit();
  const NewsSaid wraps{"412", News::wrap_off, {}, true};
  CHECK(effect_of(wraps, past.known, first_of_november, entry(99)).unclear ==
        "Her wraps on both hinds were put on at this visit. Are those off? Then say the foot.");
}

TEST_CASE("with an old wrap and one of this visit on her, the old one came off") {
  Past past = with_acts({{Foot::rh, act(ActionKind::wrap_on)}});
  const VisitId before{entry(7).value};
  for (TaskRow& task : past.known.rows.tasks) task.visit = before;
  for (OnFootRow& row : past.known.rows.on_feet) row.visit = before;
  Turn turn = cow({foot(Foot::lh, {})});
  turn.feet.front().actions.push_back(act(ActionKind::wrap_on));
  past.then(turn, first_of_november).in_same_visit();
  const NewsSaid wraps{"412", News::wrap_off, {}, true};
  const NewsEffect effect = effect_of(wraps, past.known, first_of_november, entry(99));
  CHECK(how_closed(effect, past) == Names{"wrap off right hind: wrap taken off"});
}

TEST_CASE("a look asked for at this visit is not the one that was done") {
  const Past past = with_acts({{Foot::lh, act(ActionKind::see_again)}}, 0).in_same_visit();
  CHECK(after(News::looked_at, past).closes.empty());
}

TEST_CASE("a wrap off on a cow without one may be another cow") {
  const NewsEffect effect = after(News::wrap_off, Past());
  CHECK(effect.unclear == "No wrap is known on her. Was it another cow?");
}

TEST_CASE("block off closes first look, check and removal") {
  const Past past = with_acts({{Foot::lh, act(ActionKind::block_on, Claw::inside)}});
  CHECK(after(News::block_off, past).closes.size() == 3);
  CHECK(after(News::block_came_off, past).closes.size() == 3);
}

TEST_CASE("block off with a block on each claw is asked about") {
  const Past past = with_acts({{Foot::lh, act(ActionKind::block_on, Claw::inside)},
                               {Foot::lh, act(ActionKind::block_on, Claw::outside)}});
  const NewsEffect effect = after(News::block_off, past);
  CHECK(effect.closes.empty());
  CHECK(effect.unclear == "Which block of left hind: outside or inside?");
}

TEST_CASE("still on is the farmer's first look at a block, never the trimmer's check") {
  const Past past = with_acts(
      {{Foot::lh, act(ActionKind::block_on, Claw::inside)}, {Foot::rh, act(ActionKind::wrap_on)}},
      30);
  const Names first_look = {"block still on? left hind, inside claw: block still on"};
  CHECK(how_closed(after(News::block_still_on, past), past) == first_look);
  CHECK(how_closed(after(News::block_still_on, past, {Foot::lh}), past) == first_look);
  CHECK(after(News::wrap_still_on, past).closes.empty());
  CHECK(how_closed(after(News::looked_at, past), past) ==
        Names{"block still on? left hind, inside claw: looked at"});
}

TEST_CASE("a block said to be on before its first look, or one of several, closes nothing") {
  const Past young = with_acts({{Foot::lh, act(ActionKind::block_on, Claw::inside)}}, 4);
  CHECK(after(News::block_still_on, young).closes.empty());
  const Past two = with_acts({{Foot::lh, act(ActionKind::block_on, Claw::inside)},
                              {Foot::rh, act(ActionKind::block_on, Claw::inside)}});
  CHECK(after(News::block_still_on, two).closes.empty());
  CHECK(after(News::block_still_on, two, {Foot::lh}).closes.size() == 1);
  const NewsSaid all{"412", News::block_still_on, {}, true};
  CHECK(effect_of(all, two.known, first_of_november, entry(99)).closes.size() == 2);
}

TEST_CASE("looked at means what may be looked at by now, not the look of weeks later") {
  const Turn ulcer = cow({foot(Foot::lh, {found(Lesion::su, Claw::outside)})});
  const Past after_a_week = Past().then(ulcer, first_of_november - 7);
  CHECK(how_closed(after(News::looked_at, after_a_week), after_a_week) ==
        Names{"look at left hind, ring if no better: looked at"});
  const Past after_four = Past().then(ulcer, first_of_november - 28);
  CHECK(after(News::looked_at, after_four).closes.size() == 2);
}

TEST_CASE("still lame answers what the farmer was to look at, and the trimmer looks today") {
  const Turn ulcer = cow({foot(Foot::lh, {found(Lesion::su, Claw::outside)})});
  const Past seen = Past().then(ulcer, first_of_november - 9);
  const NewsEffect effect = after(News::still_lame, seen);
  CHECK(how_closed(effect, seen) == Names{"look at left hind, ring if no better: still lame"});
  CHECK(effect.makes.size() == 1);
  const Past watched = Past().then(lame(cow({fine(Foot::lh)}), {Foot::lh}), first_of_november - 14);
  CHECK(how_closed(after(News::still_lame, watched), watched) ==
        Names{"watch her walk, ring if still lame: still lame"});
  const Past too_early =
      Past().then(lame(cow({fine(Foot::lh)}), {Foot::lh}), first_of_november - 3);
  CHECK(after(News::still_lame, too_early).closes.empty());
}

TEST_CASE("still on where nothing was known is asked about: since when is it on?") {
  const Past past = with_acts({{Foot::rh, act(ActionKind::wrap_on)}});
  CHECK(after(News::block_still_on, past).unclear ==
        "No block is known on her. Since when is it on?");
  CHECK(after(News::wrap_still_on, past, {Foot::lh}).unclear ==
        "No wrap is known on left hind. Since when is it on?");
  CHECK_FALSE(after(News::wrap_still_on, past, {Foot::rh}).unclear);
}

TEST_CASE("still on where nothing was known stays open, of its foot or of her") {
  const NewsEffect of_foot = after(News::wrap_still_on, Past(), {Foot::lh});
  REQUIRE(of_foot.makes.size() == 1);
  CHECK(of_foot.makes[0].words == "ask since when a wrap is on left hind");
  const NewsEffect of_her = after(News::block_still_on, Past());
  REQUIRE(of_her.makes.size() == 1);
  CHECK(of_her.makes[0].words == "ask since when a block is on her");
  CHECK_FALSE(of_her.makes[0].foot.has_value());
}

TEST_CASE("one told of no foot is known from then on: where it is, and that it is off, closes it") {
  Past past;
  TaskRow somewhere;
  somewhere.task.value = uuid_derived("a block somewhere on her");
  somewhere.kind = TaskKind::block_off;
  somewhere.words = "ask since when a block is on her";
  past.known.rows.tasks = {somewhere};
  CHECK_FALSE(after(News::block_still_on, past).unclear);
  CHECK(how_closed(after(News::block_still_on, past, {Foot::rh}), past) ==
        Names{somewhere.words + ": block still on"});
  CHECK(how_closed(after(News::block_off, past), past) ==
        Names{somewhere.words + ": block taken off"});
  CHECK(how_closed(after(News::block_off, past, {Foot::rh}), past) ==
        Names{somewhere.words + ": block taken off"});
  CHECK(tasks_closed(cow({foot(Foot::rh, {}, {act(ActionKind::block_came_off)})}), past.known,
                     first_of_november)
            .size() == 1);
  CHECK(after(News::wrap_off, past).unclear == "No wrap is known on her. Was it another cow?");
}

TEST_CASE("a look done is crossed off, and asked about when two are open") {
  const Past one = with_acts({{Foot::lh, act(ActionKind::see_again)}});
  CHECK(how_closed(after(News::looked_at, one), one) == Names{"see again left hind: looked at"});
  const Past two =
      with_acts({{Foot::lh, act(ActionKind::see_again)}, {Foot::rh, act(ActionKind::see_again)}});
  CHECK(after(News::looked_at, two).closes.empty());
  CHECK(after(News::looked_at, two).unclear ==
        "Which foot was looked at: left hind or right hind?");
  CHECK(after(News::looked_at, two, {Foot::lh}).closes.size() == 1);
}

TEST_CASE("the vet came once for all her feet, unless a foot is named") {
  const Past past = with_acts({{Foot::lh, act(ActionKind::vet)}, {Foot::rh, act(ActionKind::vet)}});
  CHECK(after(News::vet_came, past).closes.size() == 2);
  CHECK(how_closed(after(News::vet_came, past, {Foot::lh}), past) ==
        Names{"vet to see left hind, farmer rings: vet came"});
}

TEST_CASE("still lame makes a look due today") {
  const NewsEffect effect = after(News::still_lame, Past());
  REQUIRE(effect.makes.size() == 1);
  const TaskMade& look = effect.makes[0];
  CHECK(look.kind == TaskKind::look_at_foot);
  CHECK(look.owner == Owner::trimmer);
  CHECK(look.earliest == first_of_november);
  CHECK(look.due == first_of_november);
  CHECK(look.overdue == first_of_november + 1);
  CHECK(look.words == "still lame, look at her feet");
  CHECK(look.rule == "still-lame");
  CHECK(effect.closes.empty());
}

TEST_CASE("still lame on a foot that was named looks at that foot") {
  const NewsEffect effect = after(News::still_lame, Past(), hind_feet);
  REQUIRE(effect.makes.size() == 2);
  CHECK(effect.makes[0].words == "still lame, look at left hind");
  CHECK(effect.makes[1].words == "still lame, look at right hind");
  CHECK(effect.makes[0].task != effect.makes[1].task);
}

TEST_CASE("still lame makes no second look when one is due already") {
  const Past due = with_acts({{Foot::lh, act(ActionKind::see_again, Claw::none, in_days(10))}}, 10);
  CHECK(after(News::still_lame, due).makes.empty());
  CHECK(after(News::still_lame, due, {Foot::lh}).makes.empty());
  CHECK(after(News::still_lame, due, {Foot::rh}).makes.size() == 1);
}

TEST_CASE("still lame does not wait for a look that is weeks away") {
  const Past later =
      with_acts({{Foot::lh, act(ActionKind::see_again, Claw::none, in_days(28))}}, 3);
  CHECK(after(News::still_lame, later).makes.size() == 1);
}

TEST_CASE("gone closes all her tasks") {
  const Past past = with_acts({{Foot::lh, act(ActionKind::block_on, Claw::inside)},
                               {Foot::rh, act(ActionKind::wrap_on)},
                               {Foot::rh, act(ActionKind::vet)}});
  const NewsEffect effect = after(News::gone, past);
  CHECK(effect.closes.size() == 5);
  for (const TaskClosed& closed : effect.closes) CHECK(closed.how == "gone");
}

TEST_CASE("gone leaves the ends of withdrawals open: a buyer has to know of them") {
  Past past = with_acts({{Foot::rh, act(ActionKind::wrap_on)}});
  TaskRow end;
  end.task = {uuid_derived("end")};
  end.kind = TaskKind::withdrawal_end;
  past.known.rows.tasks.push_back(end);
  const NewsEffect effect = after(News::gone, past);
  REQUIRE(effect.closes.size() == 1);
  CHECK(effect.closes.front().task != end.task);
}

TEST_CASE("walks sound closes the watching and nothing else") {
  Past past = with_acts({{Foot::lh, act(ActionKind::see_again)}});
  TaskRow watch;
  watch.task = {uuid_derived("watch")};
  watch.kind = TaskKind::watch_her_walk;
  watch.words = "watch her walk";
  past.known.rows.tasks.push_back(watch);
  CHECK(how_closed(after(News::walks_sound, past), past) == Names{"watch her walk: walks sound"});
}

TEST_CASE(
    "walks sound on a later day closes the look at one who was lame still, not that of a sore") {
  Past past = with_acts({{Foot::lh, act(ActionKind::see_again)}});
  TaskRow look;
  look.task = {uuid_derived("look")};
  look.kind = TaskKind::look_at_foot;
  look.owner = Owner::trimmer;
  look.rule = "still-lame";
  look.words = "still lame, look at her feet";
  look.made_on = first_of_november - 1;
  past.known.rows.tasks.push_back(look);
  CHECK(how_closed(after(News::walks_sound, past), past) ==
        Names{"still lame, look at her feet: walks sound"});
  past.known.rows.tasks.back().made_on = first_of_november;
  CHECK(how_closed(after(News::walks_sound, past), past).empty());
}

TEST_CASE("the look at one who was lame still stays where it stands for that at a sore") {
  Past past;
  TaskRow sore;
  sore.task = {uuid_derived("sore")};
  sore.kind = TaskKind::look_at_foot;
  sore.foot = Foot::lh;
  sore.open = false;
  sore.closed_on = first_of_november - 1;
  sore.closed_how = "still lame";
  TaskRow look;
  look.task = {uuid_derived("look")};
  look.kind = TaskKind::look_at_foot;
  look.rule = "still-lame";
  look.made_on = first_of_november - 1;
  past.known.rows.tasks = {sore, look};
  CHECK(how_closed(after(News::walks_sound, past), past).empty());
  past.known.rows.tasks.back().foot = Foot::rh;
  CHECK(how_closed(after(News::walks_sound, past), past).size() == 1);
}

TEST_CASE("news never closes a task that is closed already") {
  Past past = with_acts({{Foot::lh, act(ActionKind::wrap_on)}});
  past.then(cow({foot(Foot::lh, {}, {act(ActionKind::wrap_off)})}), first_of_november - 3);
  for (const auto& row : EnumWords<News>::table) {
    CHECK(after(row.value, past).closes.empty());
  }
}
