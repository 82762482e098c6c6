#include "core/trade/call_line/offered.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/enciphered.hpp"
#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

Finding bruise(Claw claw) {
  Finding finding;
  finding.lesion = Lesion::sh;
  finding.claw = claw;
  finding.degree = Degree::slight;
  return finding;
}

}  // namespace

TEST_CASE("an act is offered with its foot and, where it was called, its claw") {
  CHECK(offered_act(Foot::lh, ActionKind::block_on, Claw::inside, english()) ==
        "LH block on inside");
  CHECK(offered_act(Foot::rh, ActionKind::wrap_still_on, Claw::none, english()) ==
        "RH wrap still on");
  CHECK(offered_act(Foot::rh, ActionKind::block_off, Claw::both, english()) ==
        "RH block taken off both claws");
  CHECK(offered_act({}, ActionKind::vet, Claw::not_called, english()) == "vet");
}

TEST_CASE("a correction is offered of a foot, a claw and a number") {
  CHECK(offered_correction(Foot::rh, english()) == "no, RH");
  CHECK(offered_correction(Claw::inside, english()) == "no, inside");
  CHECK(offered_correction("421", english()) == "no, 421");
}

TEST_CASE("a finding is taken back by what was called of it") {
  CHECK(offered_taking_back(Foot::lh, bruise(Claw::outside), english()) ==
        "LH no, no outside bruise slight");
  CHECK(offered_taking_back(Foot::lh, bruise(Claw::not_called), english()) ==
        "LH no, no bruise slight");
}

TEST_CASE("today's feet, people and going ahead are offered as they are said") {
  CHECK(offered_todays_feet(FeetGroup::hinds, english()) == "today both hinds");
  CHECK(offered_feet({Foot::lf, Foot::rh}, english()) == "LF RH");
  CHECK(offered_feet({}, english()).empty());
  CHECK(offered_person(TermKind::writer, "Ben", english()) == "writer Ben");
  CHECK(offered_go_ahead(english()) == "go ahead");
}

TEST_CASE("in another language the same is offered in its words") {
  const Language& other = enciphered::language();
  CHECK(offered_act(Foot::lh, ActionKind::wrap_unknown, Claw::none, other) ==
        enciphered::said("LH wrap don't know"));
  CHECK(offered_taking_back(Foot::lh, bruise(Claw::outside), other) ==
        enciphered::said("LH no, no outside bruise slight"));
  CHECK(offered_todays_feet(FeetGroup::four, other) == enciphered::said("today all four"));
}
