#include "core/trade/call_line/act_facts.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <iterator>

#include "core/trade/call_line/language.hpp"

using namespace evenclaw;

TEST_CASE("every act stands in the table at its own row and has words") {
  CHECK(all_acts().size() == std::size(EnumWords<ActionKind>::table));
  for (const ActFacts& facts : all_acts()) {
    CHECK(&facts_of(facts.kind) == &facts);
    CHECK_FALSE(english().say(facts.said_as, facts.kind).empty());
  }
}

TEST_CASE("what is put on can come off, what came off cannot") {
  CHECK(facts_of(ActionKind::wrap_on).time == ActTime::comes_off);
  CHECK(facts_of(ActionKind::block_again).time == ActTime::comes_off);
  CHECK(facts_of(ActionKind::wrap_off).time == ActTime::none);
  CHECK(facts_of(ActionKind::block_came_off).time == ActTime::none);
}

TEST_CASE("a lost block or wrap is seen without lifting the foot, putting one on needs it") {
  CHECK_FALSE(facts_of(ActionKind::block_came_off).needs_lifting);
  CHECK_FALSE(facts_of(ActionKind::wrap_still_on).needs_lifting);
  CHECK(facts_of(ActionKind::block_on).needs_lifting);
  CHECK(facts_of(ActionKind::spray).needs_lifting);
}

TEST_CASE("a block, a wrap, a spray and the knife need a foot; what the farm is told does not") {
  constexpr ActionKind of_the_cow[] = {ActionKind::vet,
                                       ActionKind::told_farmer,
                                       ActionKind::see_again,
                                       ActionKind::watch_her_walk,
                                       ActionKind::marked,
                                       ActionKind::to_straw,
                                       ActionKind::near_parlour,
                                       ActionKind::short_walk,
                                       ActionKind::cull_advised,
                                       ActionKind::photo,
                                       ActionKind::pain_relief_asked,
                                       ActionKind::pain_relief_given,
                                       ActionKind::vet_plan,
                                       ActionKind::blisters,
                                       ActionKind::went_down,
                                       ActionKind::near_calving,
                                       ActionKind::heavy_in_calf,
                                       ActionKind::sore_mouth,
                                       ActionKind::fever,
                                       ActionKind::given,
                                       ActionKind::injected,
                                       ActionKind::anaesthetised,
                                       ActionKind::withheld,
                                       ActionKind::milk_withheld,
                                       ActionKind::meat_withheld,
                                       ActionKind::no_withdrawal,
                                       ActionKind::kicks,
                                       ActionKind::jumps,
                                       ActionKind::lies_down,
                                       ActionKind::needs_hoist,
                                       ActionKind::kicks_no_more,
                                       ActionKind::jumps_no_more,
                                       ActionKind::lies_down_no_more,
                                       ActionKind::hoist_no_more};
  for (const ActFacts& facts : all_acts()) {
    const bool concerns_cow =
        std::find(std::begin(of_the_cow), std::end(of_the_cow), facts.kind) != std::end(of_the_cow);
    CAPTURE(word_of(facts.kind));
    CHECK(facts.on_whole_cow == concerns_cow);
    if (is_always_of_the_cow(facts.kind)) CHECK(facts.on_whole_cow);
  }
  for (const ActionKind kind : {ActionKind::vet, ActionKind::see_again, ActionKind::photo}) {
    CHECK_FALSE(is_always_of_the_cow(kind));  // of a foot as well
  }
}

TEST_CASE("a block is of wood or rubber, a mark of paint or a band, and nothing else of either") {
  CHECK(takes_material(ActionKind::block_on, Material::wood));
  CHECK(takes_material(ActionKind::block_refitted, Material::shoe));
  CHECK_FALSE(takes_material(ActionKind::block_on, Material::paint));
  CHECK(takes_material(ActionKind::marked, Material::paint));
  CHECK_FALSE(takes_material(ActionKind::marked, Material::rubber));
  CHECK_FALSE(takes_material(ActionKind::wrap_on, Material::plastic));
}

TEST_CASE("what is put on or given has a name and one who gives it, as has what is the vet's") {
  for (const ActFacts& facts : all_acts()) {
    const bool is_put_on = facts.kind == ActionKind::spray || facts.kind == ActionKind::paste ||
                           facts.kind == ActionKind::powder || facts.kind == ActionKind::gel;
    const bool is_given = facts.kind == ActionKind::given || facts.kind == ActionKind::injected;
    CHECK(takes_product(facts.kind) == (is_put_on || is_given));
    const bool is_of_the_vet = facts.kind == ActionKind::pain_relief_asked ||
                               facts.kind == ActionKind::pain_relief_given ||
                               facts.kind == ActionKind::anaesthetised ||
                               facts.kind == ActionKind::amputated;
    CHECK(takes_by_whom(facts.kind) == (is_put_on || is_given || is_of_the_vet));
  }
}

TEST_CASE("a claw seen to be missing is no act that lifts the foot") {
  CHECK_FALSE(facts_of(ActionKind::claw_missing).needs_lifting);
  CHECK(facts_of(ActionKind::claw_missing).takes_claw);
}

TEST_CASE("a foot counts as lifted when something was found, done, measured or trimmed") {
  FootCall call;
  CHECK_FALSE(was_lifted(call));
  call.note = "she kicks";
  CHECK_FALSE(was_lifted(call));
  call.trimmed = Trimmed::yes;
  CHECK(was_lifted(call));
  call.trimmed = Trimmed::no;
  call.measures.push_back({MeasureKind::toe_length, Claw::outside, Length{750}});
  CHECK(was_lifted(call));
  call.state = FootState::not_lifted;
  CHECK_FALSE(was_lifted(call));
}

TEST_CASE("a foot named for the vet or for a wrap that came off was not lifted for it") {
  FootCall call;
  Action act;
  for (const ActionKind kind : {ActionKind::vet, ActionKind::wrap_came_off}) {
    act.kind = kind;
    call.actions.push_back(act);
  }
  CHECK_FALSE(was_lifted(call));
  act.kind = ActionKind::spray;
  call.actions.push_back(act);
  CHECK(was_lifted(call));
}
