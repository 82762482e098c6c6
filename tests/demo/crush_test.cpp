#include "demo/crush.hpp"

#include <doctest/doctest.h>

#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

/// Sees and does everything.
struct AllSeen {
  Caller caller{.name = "Nobody", .keenness = 50, .says_stage_by_number = true};
  Complications complications;
  RandomStream draws{8, 0};
  Looks looks;
  Episodes episodes;
  Cow cow = first_calved(8, invent_farm(8, 0, {}), 412, 0);

  CalledTurn turn(int week, Reason reason = Reason::routine) {
    const AtCrush at{caller, complications, week, 0.0, four_feet, 0};
    return stand_in_crush(cow, {412, reason}, at, draws, looks);
  }

  HornState& sole(Foot foot, Claw claw) {
    return cow.feet[index_of(foot)].claws[claw == Claw::outside ? 0 : 1].horn[0];
  }

  void ulcer(Foot foot, Claw claw, Degree degree) {
    sole(foot, claw) = {HornStage::late, degree, false, false,
                        begin_episode(episodes, {.cow = 412})};
  }
};

const CalledFoot* foot_of(const CalledTurn& turn, Foot foot) {
  for (const CalledFoot& called : turn.feet) {
    if (called.foot == foot) return &called;
  }
  return nullptr;
}

}  // namespace

TEST_CASE("a block goes on the good claw of a bad foot, and the partner of a sore claw gets none") {
  int blocks = 0;
  for (int time = 0; time < 50; ++time) {
    AllSeen crush;
    crush.draws = RandomStream(8, static_cast<std::uint64_t>(time));
    crush.ulcer(Foot::lh, Claw::outside, Degree::bad);
    crush.ulcer(Foot::rh, Claw::outside, Degree::bad);
    crush.ulcer(Foot::rh, Claw::inside, Degree::bad);
    const CalledTurn turn = crush.turn(10);
    REQUIRE(foot_of(turn, Foot::lh) != nullptr);
    if (foot_of(turn, Foot::lh)->block == BlockCalled::put_on) {
      ++blocks;
      CHECK(foot_of(turn, Foot::lh)->block_claw == Claw::inside);
    }
    CHECK(foot_of(turn, Foot::rh)->block == BlockCalled::nothing);
  }
  CHECK(blocks > 40);  // 95 of 100 bad ones
}

TEST_CASE("worse feet are blocked more often, unless that is left out") {
  const auto blocked = [](Degree degree, const Complications& complications) {
    int blocks = 0;
    for (int time = 0; time < 300; ++time) {
      AllSeen crush;
      crush.complications = complications;
      crush.draws = RandomStream(8, static_cast<std::uint64_t>(time));
      crush.ulcer(Foot::lh, Claw::outside, degree);
      blocks += foot_of(crush.turn(10), Foot::lh)->block == BlockCalled::put_on ? 1 : 0;
    }
    return blocks;
  };
  Complications alike;
  alike.leave_out(Complication::worse_feet_treated_more);
  CHECK(blocked(Degree::bad, {}) > blocked(Degree::slight, {}) + 150);
  CHECK(blocked(Degree::bad, alike) == blocked(Degree::slight, alike));
}

TEST_CASE("a block comes off when the foot is sound, goes on again when it is not") {
  AllSeen healed;
  healed.cow.feet[index_of(Foot::lh)].on.block_since = 6;
  healed.cow.feet[index_of(Foot::lh)].on.block_claw = Claw::inside;
  const CalledTurn turn = healed.turn(10, Reason::recheck);
  CHECK(foot_of(turn, Foot::lh)->block == BlockCalled::taken_off);
  CHECK(healed.cow.feet[index_of(Foot::lh)].on.block_since == -1);

  AllSeen sore;
  sore.ulcer(Foot::lh, Claw::outside, Degree::plain);
  sore.cow.feet[index_of(Foot::lh)].on.block_since = 6;
  sore.cow.feet[index_of(Foot::lh)].on.block_claw = Claw::inside;
  CHECK(foot_of(sore.turn(10, Reason::recheck), Foot::lh)->block == BlockCalled::again);
  CHECK(sore.cow.recheck_from == 14);
}

TEST_CASE("a raw sore is sprayed, a chronic one is only called") {
  AllSeen crush;
  crush.cow.feet[index_of(Foot::rh)].dd = DdStage::m1;
  crush.cow.feet[index_of(Foot::lh)].dd = DdStage::m4;
  const CalledTurn turn = crush.turn(10);
  CHECK(foot_of(turn, Foot::rh)->was_sprayed);
  CHECK(!foot_of(turn, Foot::lh)->was_sprayed);
}

TEST_CASE("a lame foot on which nothing is seen is left to the vet") {
  AllSeen crush;
  crush.caller.keenness = -50;
  crush.ulcer(Foot::rh, Claw::outside, Degree::bad);
  const CalledTurn turn = crush.turn(10, Reason::lame);
  CHECK(turn.lame_on == Foot::rh);
  REQUIRE(foot_of(turn, Foot::rh) != nullptr);
  CHECK(foot_of(turn, Foot::rh)->needs_vet);
}

TEST_CASE("what was there and not seen is kept for the truth") {
  AllSeen crush;
  crush.caller.keenness = -50;
  crush.ulcer(Foot::rh, Claw::outside, Degree::bad);
  (void)crush.turn(10);
  REQUIRE(crush.looks.size() == 1);
  CHECK(crush.looks[0].was_there);
  CHECK(!crush.looks[0].was_called);
  CHECK(crush.looks[0].lesion == Lesion::su);
  CHECK(crush.looks[0].degree == Degree::bad);
}

}  // namespace evenclaw::demo
