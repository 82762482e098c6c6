#include "core/sheets/foot_lines.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

std::string line_of(InventedDay& day, Foot foot) {
  const VisitView view = view_of(day.input(), english_wording());
  const TermLine line = foot_line(view.cows.at(0), foot, view);
  std::string text = line.term + ':';
  for (const Run& run : line.runs) text += (text.back() == ':' ? " " : "") + run.text;
  return text;
}

}  // namespace

TEST_CASE("a foot tells what was found and what was done in the order called") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::wla, Place::white_line_heel, Degree::bad});
  day.did({ActionKind::opened, Foot::lh, Claw::outside});
  day.did({ActionKind::block_on, Foot::lh, Claw::inside});
  CHECK(line_of(day, Foot::lh) ==
        "Left hind: Outside claw: white line abscess, heel, bad (WLA). Opened, outside claw. "
        "Block on, inside claw.");
}

TEST_CASE("a foot nobody spoke of is not called fine") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  CHECK(line_of(day, Foot::rh) == "Right hind: Nobody said whether lifted.");
}

TEST_CASE("a foot that was handled but not judged says so") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::rh, FootState::unsaid);
  day.did({ActionKind::opened, Foot::rh});
  CHECK(line_of(day, Foot::rh) ==
        "Right hind: Lifted, nobody said whether anything was found. Opened.");
}

TEST_CASE(
    "a foot that was named needs no word that it was lifted, only what was found is missing") {
  for (const bool had_a_wrap : {true, false}) {
    CAPTURE(had_a_wrap);
    InventedDay day("Hollow Meadow");
    day.turn("412");
    day.foot(Foot::rh, FootState::unsaid);
    day.rows().turns.back().lifted = {};
    if (had_a_wrap) day.did({ActionKind::wrap_off, Foot::rh});
    CHECK(line_of(day, Foot::rh) == std::string("Right hind: ") +
                                        (had_a_wrap ? "Wrap taken off. " : "") +
                                        "Nobody said what was found.");
  }
}

TEST_CASE("trimmed or not is told apart from what was found, and only when called") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::nothing_found).trimmed = Trimmed::no;
  day.foot(Foot::rh, FootState::nothing_found);
  CHECK(line_of(day, Foot::lh) == "Left hind: Nothing found. Not trimmed.");
  CHECK(line_of(day, Foot::rh) == "Right hind: Nothing found.");
}

TEST_CASE("a missing claw is told at every later visit, and once on the day it is said") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::nothing_found).missing = Claw::outside;
  CHECK(line_of(day, Foot::lh) == "Left hind: Nothing found. Outside claw missing.");
  day.did({ActionKind::claw_missing, Foot::lh, Claw::outside});
  CHECK(line_of(day, Foot::lh) == "Left hind: Nothing found. Claw missing, outside claw.");
}

TEST_CASE("what is on the foot since earlier and what was there before is said after today's") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::nothing_found);
  day.put_on(Fixture::block, Foot::lh, Claw::inside, 15);
  CaseRow& gone = day.earlier({Foot::lh, Claw::outside, Lesion::su}, 40);
  gone.not_found_on = day.input().visit.day;
  CHECK(
      line_of(day, Foot::lh) ==
      "Left hind: Nothing found. Block put on Mon 9 Nov, inside claw, not seen at this visit. Not "
      "found any more: outside claw, sole ulcer of Thu 15 Oct.");
  day.did({ActionKind::block_still_on, Foot::lh, Claw::inside});
  CHECK(line_of(day, Foot::lh) ==
        "Left hind: Nothing found. Block still on, inside claw. Block on since Mon 9 Nov, inside "
        "claw. Not found any more: outside claw, sole ulcer of Thu 15 Oct.");
}

TEST_CASE("what is not called again of a claw that has something else is not said to be gone") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::tn});
  CaseRow& before = day.earlier({Foot::lh, Claw::outside, Lesion::wl}, 40);
  before.not_found_on = day.input().visit.day;
  CHECK(line_of(day, Foot::lh) ==
        "Left hind: Outside claw: toe necrosis (TN). Called there on Thu 15 Oct, not called so "
        "today: outside claw, white line lesion.");
}

TEST_CASE("a foot with blisters is not said to have nothing") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::nothing_found);
  day.did({ActionKind::blisters, Foot::lh});
  CHECK(line_of(day, Foot::lh) == "Left hind: Blisters.");
  day.foot(Foot::rh, FootState::unsaid);
  day.did({ActionKind::pus_above, Foot::rh});
  CHECK(line_of(day, Foot::rh) == "Right hind: Pus above the coronet.");
}

TEST_CASE("a foot on which only blisters were called has a line of its own") {
  InventedDay day("Hollow Meadow", four_feet);
  day.turn("412");
  day.foot(Foot::lh, FootState::unsaid);
  day.did({ActionKind::blisters, Foot::lh});
  for (const Foot foot : {Foot::lf, Foot::rf, Foot::rh}) day.foot(foot, FootState::nothing_found);
  const VisitView view = view_of(day.input(), english_wording());
  bool is_told = false;
  for (const TermLine& line : foot_lines(view.cows.at(0), view)) {
    is_told = is_told || (line.term == "Left hind" && line.runs.front().text == "Blisters.");
  }
  CHECK(is_told);
}

TEST_CASE("what nobody knows about a wrap is said as not known") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::nothing_found);
  day.put_on(Fixture::wrap, Foot::lh, Claw::none, 15).ended = FixtureEnd::unknown;
  CHECK(line_of(day, Foot::lh) ==
        "Left hind: Nothing found. Wrap put on Mon 9 Nov: nobody knows whether it still is on.");
}

TEST_CASE("of a wrap that nobody knew of no day is made up on which it went on") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::nothing_found);
  day.put_on(Fixture::wrap, Foot::lh, Claw::none, 15).only_seen = true;
  CHECK(
      line_of(day, Foot::lh) ==
      "Left hind: Nothing found. Wrap on, left hind, seen Mon 9 Nov, and nobody knew since when.");
}

TEST_CASE("a lesion that goes on says since when") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::su});
  day.rows().cases.back().first_day = day.input().visit.day - 40;
  CHECK(line_of(day, Foot::lh) == "Left hind: Outside claw: sole ulcer (SU). Since Thu 15 Oct.");
}

TEST_CASE("a lesion that is still open and was not looked for is told") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::not_lifted);
  day.earlier({Foot::lh, Claw::outside, Lesion::su}, 40);
  CHECK(line_of(day, Foot::lh) ==
        "Left hind: Not lifted. Since Thu 15 Oct: outside claw, sole ulcer.");
}

TEST_CASE("a foot called twice says that both were kept, and what each of them was") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::nothing_found).called_twice = true;
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::su});
  day.did({ActionKind::opened, Foot::lh});
  day.rows().feet.back().called_twice = true;
  CHECK(line_of(day, Foot::lh) ==
        "Left hind: Outside claw: sole ulcer (SU). Opened. Called more than once, all kept: first "
        "nothing found; then outside claw: sole ulcer (SU) and opened.");
}

TEST_CASE("feet of which only the same is said share one line") {
  InventedDay day("Hollow Meadow", four_feet);
  day.turn("412");
  day.found({Foot::lf, Claw::outside, Lesion::su});
  for (const Foot foot : {Foot::rf, Foot::rh}) day.foot(foot, FootState::nothing_found);
  const VisitView view = view_of(day.input(), english_wording());
  const auto lines = foot_lines(view.cows.at(0), view);
  REQUIRE(lines.size() == 3);
  CHECK(lines[0].term == "Left front");
  CHECK(lines[1].term.empty());
  CHECK(lines[1].runs.at(0).text == "Nothing found: right front and right hind.");
  CHECK(lines[2].term == "Left hind");
  CHECK(lines[2].runs.at(0).text == "Nobody said whether lifted.");
}

TEST_CASE("a measure stands with what was found and done on the foot") {
  InventedDay day("Hollow Meadow", hind_feet);
  day.turn("412");
  day.foot(Foot::lh, FootState::nothing_found);
  day.measured(Foot::lh, 785);
  const VisitView view = view_of(day.input(), english_wording());
  const TermLine line = foot_line(view.cows.at(0), Foot::lh, view);
  REQUIRE(line.runs.size() == 2);
  CHECK(line.runs[0].text == "Nothing found.");
  CHECK(line.runs[1].text == " Toe length 78.5 mm.");
  CHECK(foot_line(view.cows.at(0), Foot::rh, view).runs.size() == 1);
}

TEST_CASE("today's feet, feet spoken of and lame legs are told, no others") {
  InventedDay day("Hollow Meadow", hind_feet);
  day.turn("412", Reason::lame, {Foot::rf});
  const VisitView view = view_of(day.input(), english_wording());
  CHECK(feet_to_tell(view.cows.at(0), hind_feet) ==
        std::vector<Foot>{Foot::rf, Foot::lh, Foot::rh});
}

}  // namespace evenclaw
