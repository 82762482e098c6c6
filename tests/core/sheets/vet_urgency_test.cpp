#include "core/sheets/vet_urgency.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

std::string order_on(InventedDay& day) {
  const VisitView view = view_of(day.input(), english_wording());
  std::string numbers;
  for (const CowForVet& called : cows_for_vet(view)) {
    numbers += (numbers.empty() ? "" : " ") + view.names.number(called.cow);
  }
  return numbers;
}

void stopped(InventedDay& day, const std::string& rule) {
  day.warned(Rank::stop, "Stop.", "");
  day.input().warnings.back().shown.warning.rule = rule;
}

}  // namespace

TEST_CASE("of the cows for the vet those come first who cannot wait, then today's, then the rest") {
  InventedDay day("Hollow Meadow");
  day.task("5", TaskKind::vet, Owner::vet, 3);
  day.task("7", TaskKind::vet, Owner::vet, -2);
  day.turn("12");
  stopped(day, "swollen-on-one-side");
  day.turn("900");
  day.did({ActionKind::bleeding, Foot::lh});
  day.task("900", TaskKind::vet, Owner::vet, 0);
  day.turn("800");
  day.did({ActionKind::went_down});
  stopped(day, "down-in-the-crush");
  CHECK(order_on(day) == "800 900 7 12 5");
}

TEST_CASE("signs of a disease to be reported come before what is due today") {
  InventedDay day("Hollow Meadow");
  day.task("7", TaskKind::vet, Owner::vet, 0);
  day.turn("300");
  day.did({ActionKind::sore_mouth});
  day.did({ActionKind::fever});
  day.task("300", TaskKind::vet, Owner::vet, 0);
  CHECK(order_on(day) == "300 7");
}

TEST_CASE("a sore mouth alone is no haste, beside another cow's blisters it is") {
  InventedDay day("Hollow Meadow");
  day.task("7", TaskKind::vet, Owner::vet, 0);
  day.turn("300");
  day.did({ActionKind::sore_mouth});
  day.task("300", TaskKind::vet, Owner::vet, 0);
  CHECK(order_on(day) == "7 300");
  day.turn("301");
  day.did({ActionKind::blisters, Foot::lh});
  CHECK(order_on(day) == "300 301 7");
}

TEST_CASE("a sign whose check was settled in words does not stand among the cows for the vet") {
  InventedDay day("Hollow Meadow");
  day.turn("900");
  day.did({ActionKind::bleeding, Foot::lh});
  stopped(day, "bleeding-goes-on");
  day.input().warnings.back().shown.warning.foot = Foot::lh;
  day.input().warnings.back().shown.decision = "LH bleeding stopped";
  CHECK(order_on(day).empty());
}

}  // namespace evenclaw
