#include "core/trade/follow_up_decided.hpp"

#include <doctest/doctest.h>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/on_foot.hpp"
#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

/// What the steps of a block or wrap must be decided as.
ActFollowUp fitting(const FixtureSaid& said) {
  const bool is_block = said.fixture == Fixture::block;
  switch (said.step) {
    case FixtureStep::put_on:
    case FixtureStep::renewed:
      return is_block ? ActFollowUp::block_on : ActFollowUp::wrap_on;
    case FixtureStep::stacked:
    case FixtureStep::left_on:
      return is_block ? ActFollowUp::block_kept : ActFollowUp::wrap_kept;
    case FixtureStep::taken_off:
    case FixtureStep::came_off:
      return is_block ? ActFollowUp::block_off : ActFollowUp::wrap_off;
    case FixtureStep::not_known:
      return ActFollowUp::none;
  }
  return ActFollowUp::none;
}

std::size_t tasks_of(const Turn& turn) {
  return tasks_made(turn, {}, first_of_november, entry(1)).size();
}

/// Alone on a foot, or of her.
std::size_t tasks_of(ActionKind kind) {
  if (!is_always_of_the_cow(kind)) return tasks_of(cow({foot(Foot::lh, {}, {act(kind)})}));
  Turn turn = cow({});
  turn.actions = {act(kind)};
  return tasks_of(turn);
}

bool makes_tasks_alone(ActFollowUp follow_up) {
  switch (follow_up) {
    case ActFollowUp::block_on:
    case ActFollowUp::wrap_on:
    case ActFollowUp::look:
    case ActFollowUp::walk:
    case ActFollowUp::vet:
    case ActFollowUp::pain_relief:
      return true;
    case ActFollowUp::block_kept:
    case ActFollowUp::block_off:
    case ActFollowUp::wrap_kept:
    case ActFollowUp::wrap_off:
    case ActFollowUp::look_after_dd:
    case ActFollowUp::look_after_cut:
    case ActFollowUp::withdrawal:
    case ActFollowUp::none:
      return false;
  }
  return false;
}

}  // namespace

TEST_CASE("every act decides, and whoever decides for none says why") {
  CHECK(all_act_decisions().size() == std::size(EnumWords<ActionKind>::table));
  for (const ActDecision& decision : all_act_decisions()) {
    CAPTURE(word_of(decision.kind));
    CHECK(&decision_on(decision.kind) == &decision);
    CHECK(decision.why.size() > 5);
  }
}

TEST_CASE("what an act decides is what it makes") {
  for (const ActDecision& decision : all_act_decisions()) {
    // On a block nobody recorded a stacked one is the first, and since when one is on that nobody
    // knew of is asked; these have their own tests.
    if (decision.follow_up == ActFollowUp::block_kept) continue;
    if (decision.follow_up == ActFollowUp::wrap_kept) continue;
    CAPTURE(word_of(decision.kind));
    CHECK((tasks_of(decision.kind) > 0) == makes_tasks_alone(decision.follow_up));
  }
}

TEST_CASE("blocks, wraps and medicines are decided as what they are") {
  for (const ActDecision& decision : all_act_decisions()) {
    CAPTURE(word_of(decision.kind));
    if (const auto said = fixture_said(decision.kind)) CHECK(decision.follow_up == fitting(*said));
    const bool is_medicine = decision.follow_up == ActFollowUp::withdrawal ||
                             decision.follow_up == ActFollowUp::look_after_dd;
    const bool may_hold_back =
        takes_product(decision.kind) ||
        (tells_withdrawal(decision.kind) && decision.kind != ActionKind::no_withdrawal);
    CHECK(is_medicine == may_hold_back);
  }
}

TEST_CASE("every lesion decides, and called alone makes what it decides") {
  CHECK(all_lesion_decisions().size() == std::size(EnumWords<Lesion>::table));
  for (const LesionDecision& decision : all_lesion_decisions()) {
    CAPTURE(word_of(decision.lesion));
    CHECK(&decision_on(decision.lesion) == &decision);
    const Finding finding = found(decision.lesion);
    const bool alone = decision.follow_up == LesionFollowUp::horn_looks ||
                       decision.follow_up == LesionFollowUp::foul_look;
    const bool opened = alone || decision.follow_up == LesionFollowUp::horn_looks_when_opened;
    const bool treated = alone || decision.follow_up == LesionFollowUp::dd_look_when_treated;
    CHECK((tasks_of(cow({foot(Foot::lh, {finding})})) > 0) == alone);
    CHECK((tasks_of(cow({foot(Foot::lh, {finding}, {act(ActionKind::opened)})})) > 0) == opened);
    CHECK((tasks_of(cow({foot(Foot::lh, {finding}, {act(ActionKind::spray)})})) > 0) == treated);
  }
}

TEST_CASE("shapes make no look, slight blood in the sole and worn heels neither") {
  for (const Lesion lesion : {Lesion::ac, Lesion::cd, Lesion::cc, Lesion::sc, Lesion::overgrown,
                              Lesion::hhe, Lesion::ih, Lesion::ts}) {
    CAPTURE(word_of(lesion));
    CHECK(tasks_of(cow({foot(Foot::lh, {found(lesion, Claw::outside, Degree::bad)},
                             {act(ActionKind::opened), act(ActionKind::spray)})})) == 0);
  }
  CHECK(tasks_of(cow({foot(Foot::lh, {found(Lesion::sh, Claw::outside, Degree::slight)})})) == 0);
}
