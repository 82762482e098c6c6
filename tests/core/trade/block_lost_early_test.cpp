#include "core/trade/block_lost_early.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

Past blocked(const Finding& finding, int days_ago = 7) {
  return Past().then(cow({foot(Foot::lh, {finding}, {act(ActionKind::block_on, Claw::inside)})}),
                     first_of_november - days_ago);
}

const Finding ulcer = found(Lesion::su, Claw::outside);

NewsEffect effect_told_of(News news, const Past& past, FootSet feet = {}) {
  return effect_of({"412", news, feet}, past.known, first_of_november, entry(99));
}

Names words_of(const std::vector<TaskMade>& tasks) {
  Names words;
  for (const TaskMade& task : tasks) words.push_back(task.words);
  return words;
}

const Names rung = {"ring trimmer: block lost early, left hind"};

/// What a turn with that foot makes.
Names made_in_crush(const FootCall& call, const Past& past) {
  return words_of(tasks_made(cow({call}), past.known, first_of_november, entry(77)));
}

}  // namespace

TEST_CASE("a block lost early over an ulcer is rung about the same day") {
  const NewsEffect effect = effect_told_of(News::block_came_off, blocked(ulcer));
  REQUIRE(words_of(effect.makes) == rung);
  CHECK(effect.makes[0].due == first_of_november);
  CHECK(effect.makes[0].owner == Owner::farmer);
  CHECK(effect.closes.size() == 3);
}

TEST_CASE("a block taken off, lost in its fifth week or over nothing that hurts is let be") {
  CHECK(effect_told_of(News::block_off, blocked(ulcer)).makes.empty());
  CHECK(effect_told_of(News::block_came_off, blocked(ulcer, 27)).makes.size() == 1);
  CHECK(effect_told_of(News::block_came_off, blocked(ulcer, 28)).makes.empty());
  CHECK(effect_told_of(News::block_came_off, blocked(found(Lesion::hhe))).makes.empty());
}

TEST_CASE(
    "a block found to be lost in the crush is rung about unless somebody dealt with the foot") {
  const Action lost = act(ActionKind::block_came_off);
  const Past past = blocked(ulcer);
  CHECK(made_in_crush(foot(Foot::lh, {}, {lost}), past) == rung);
  CHECK(made_in_crush(fine(Foot::lh, {lost}), past).empty());
  const Names again = made_in_crush(foot(Foot::lh, {}, {lost, act(ActionKind::vet)}), past);
  CHECK(again == Names{"vet to see left hind, farmer rings"});
  const FootCall blocked_anew = foot(Foot::lh, {}, {lost, act(ActionKind::block_on, Claw::inside)});
  for (const std::string& words : made_in_crush(blocked_anew, past)) CHECK(words != rung[0]);
}

TEST_CASE("the foot seen, blocked again, or the block told still on: nobody has to ring") {
  TaskRow lost;
  lost.kind = TaskKind::look_at_foot;
  lost.rule = "block-lost-early";
  lost.foot = Foot::lh;
  lost.made_on = lost.earliest = lost.due = first_of_november - 1;
  Past past;
  past.known.rows.tasks = {lost};
  const auto closings = [&](const FootCall& call) {
    return tasks_closed(cow({call}), past.known, first_of_november).size();
  };
  CHECK(closings(foot(Foot::lh, {ulcer})) == 1);
  CHECK(closings(foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::inside)})) == 1);
  CHECK(closings(foot(Foot::lh, {}, {act(ActionKind::block_still_on)})) == 1);
  CHECK(closings(foot(Foot::lh, {}, {act(ActionKind::wrap_on)})) == 0);
  CHECK(closings(foot(Foot::rh, {ulcer})) == 0);
  CHECK(effect_told_of(News::block_still_on, past).closes.size() == 1);
  CHECK(effect_told_of(News::block_still_on, past, {Foot::rh}).closes.empty());
}
