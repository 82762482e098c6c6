#include "core/log/doubts.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

std::vector<DoubtRow> doubts_in(const Turn& turn) {
  Farm farm;
  TurnRecorded body = farm.turn_body(cow_412, "2026-11-24", {});
  body.turn = turn;
  farm.turn(body);
  return farm.rows_of(cow_412).doubts;
}

Turn turn_of(std::vector<FootCall> feet) {
  Turn turn;
  turn.cow.number = "412";
  turn.feet = std::move(feet);
  return turn;
}

}  // namespace

TEST_CASE("a turn with all called leaves no doubt") {
  Finding dd = lesion(Lesion::dd, Claw::none, Place::behind);
  dd.degree = Degree::not_called;
  dd.stage = DdStage::raw;
  CHECK(doubts_in(turn_of({foot(Foot::lh, {lesion(Lesion::wl), dd}), nothing_found(Foot::rh)}))
            .empty());
}

TEST_CASE("each thing nobody called is asked for in words") {
  Finding no_degree = lesion(Lesion::wl);
  no_degree.degree = Degree::not_called;
  Finding no_stage = lesion(Lesion::dd, Claw::none, Place::behind);

  const struct {
    FootCall call;
    DoubtKind kind;
    std::string words;
  } table[] = {
      {foot(Foot::lh, {}, {act(ActionKind::spray)}), DoubtKind::lifted_not_called,
       "Left hind: what was found?"},
      {foot(Foot::lh, {lesion(Lesion::wl, Claw::outside, Place::not_called)}),
       DoubtKind::place_not_called, "Left hind, white line lesion: where?"},
      {foot(Foot::lh, {lesion(Lesion::wl, Claw::not_called)}), DoubtKind::place_not_called,
       "Left hind, white line lesion: on which claw?"},
      {foot(Foot::lh, {lesion(Lesion::wl, Claw::not_called, Place::not_called)}),
       DoubtKind::place_not_called, "Left hind, white line lesion: where, and on which claw?"},
      {foot(Foot::lh, {no_degree}), DoubtKind::degree_not_called,
       "Left hind, white line lesion: how bad?"},
      {foot(Foot::rf, {no_stage}), DoubtKind::stage_not_called,
       "Right front, digital dermatitis: at which stage?"},
  };

  for (const auto& row : table) {
    CAPTURE(row.words);
    const std::vector<DoubtRow> doubts = doubts_in(turn_of({row.call}));
    REQUIRE(doubts.size() == 1);
    CHECK(doubts[0].kind == row.kind);
    CHECK(doubts[0].words == row.words);
    CHECK(doubts[0].foot == row.call.foot);
    CHECK(doubts[0].position == 1);
  }
}

TEST_CASE("what is not called alike of one lesion on several feet is asked once") {
  Finding heel = lesion(Lesion::ds, Claw::not_called, Place::not_called);
  Finding milder = heel;
  milder.degree = Degree::not_called;
  const std::vector<DoubtRow> doubts =
      doubts_in(turn_of({foot(Foot::lh, {heel}), foot(Foot::rh, {milder})}));
  REQUIRE(doubts.size() == 2);
  CHECK(doubts[0].words == "Both hinds, double sole: on which claw?");
  CHECK_FALSE(doubts[0].foot);
  CHECK(doubts[1].words == "Right hind, double sole: how bad?");
  CHECK(doubts[1].foot == Foot::rh);
}

TEST_CASE("no place is asked of a lesion that sits at one place only, nothing of mere words") {
  Finding words = lesion(Lesion::other, Claw::not_called, Place::not_called);
  words.degree = Degree::not_called;
  words.words = "swollen hock";
  const Finding heel = lesion(Lesion::hhe, Claw::not_called, Place::not_called);
  const Finding between = lesion(Lesion::ih, Claw::none, Place::not_called);
  CHECK(doubts_in(turn_of({foot(Foot::lh, {words, heel, between})})).empty());
}

TEST_CASE("a turn broken off or not done is asked about with its reason") {
  Turn turn = turn_of({});
  turn.end = TurnEnd::unfinished;
  turn.end_reason = "power cut";
  CHECK(doubts_in(turn).at(0).words == "Her turn was not finished: power cut");
  turn.end = TurnEnd::not_done;
  turn.end_reason.clear();
  CHECK(doubts_in(turn).at(0).words == "She was not done");
}

TEST_CASE("who she is stays a doubt until she is known by a number") {
  Farm farm;
  TurnRecorded body = farm.turn_body(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  body.turn.cow = {CowKnown::doubtful, "513", {"531"}, ""};
  farm.turn(body);
  REQUIRE(farm.rows_of(cow_412).doubts.size() == 1);
  CHECK(farm.rows_of(cow_412).doubts[0].kind == DoubtKind::doubtful_number);
  CHECK(farm.rows_of(cow_412).doubts[0].words == "Which is her number: 513 or 531?");
  farm.write(NumberGiven{cow_412, "531", day("2026-11-24")});
  CHECK(farm.rows_of(cow_412).doubts.empty());
}

TEST_CASE("a number nobody is sure of is asked about as the one number it is") {
  Turn turn = turn_of({nothing_found(Foot::lh)});
  turn.cow = {CowKnown::doubtful, "513", {}, ""};
  CHECK(doubts_in(turn).at(0).words == "Is her number 513?");
}

TEST_CASE("told gone and in the crush after that on the same day, she is asked about once") {
  Farm farm;
  farm.write(CowLeft{cow_412, day("2026-11-24"), "gone", {}});
  farm.turn(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  farm.turn(cow_412, "2026-11-24", {nothing_found(Foot::rh)});
  std::vector<DoubtRow> doubts = farm.rows_of(cow_412).doubts;
  REQUIRE(doubts.size() == 1);
  CHECK(doubts[0].kind == DoubtKind::told_gone);
  CHECK(doubts[0].words == "Said to be gone today, and in the crush: is she still here?");
  farm.write(CowLeft{cow_412, day("2026-11-24"), "gone, she was", {}});
  CHECK(farm.rows_of(cow_412).doubts.empty());
}

TEST_CASE("gone after her turn, or told gone and not done, she is not asked about as still here") {
  Farm farm;
  farm.turn(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  farm.write(CowLeft{cow_412, day("2026-11-24"), "gone", {}});
  TurnRecorded body = farm.turn_body(cow_412, "2026-11-24", {});
  body.turn.end = TurnEnd::not_done;
  farm.turn(body);
  for (const DoubtRow& doubt : farm.rows_of(cow_412).doubts) {
    CHECK(doubt.kind == DoubtKind::not_done);
  }
}

TEST_CASE("gone for one tablet and in the crush for the other, she is here until told gone again") {
  for (const bool gone_first : {true, false}) {
    CAPTURE(gone_first);
    Farm farm;
    const auto told_gone = [&](const char* device) {
      farm.write_on(device);
      farm.write(CowLeft{cow_412, day("2026-11-24"), "gone", {}});
    };
    if (gone_first) told_gone("tablet");
    farm.write_on("other tablet");
    farm.turn(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
    if (!gone_first) told_gone("tablet");
    REQUIRE(farm.rows_of(cow_412).doubts.size() == 1);
    CHECK(farm.rows_of(cow_412).doubts[0].kind == DoubtKind::told_gone);
    CHECK_FALSE(farm.rows_of(cow_412).cows[0].left_on.has_value());
    told_gone("tablet");
    CHECK(farm.rows_of(cow_412).doubts.empty());
    CHECK(farm.rows_of(cow_412).cows[0].left_on == day("2026-11-24"));
  }
}

TEST_CASE("an unnumbered cow united with a numbered one is no doubt any more") {
  Farm farm;
  TurnRecorded body = farm.turn_body(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  body.turn.cow = {CowKnown::unnumbered, "", {}, "white star"};
  farm.turn(body);
  CHECK(farm.rows_of(cow_412).doubts.at(0).words == "Which number has she: white star?");
  farm.turn(cow_named("513"), "2026-11-24", {nothing_found(Foot::rh)});
  const EntryId same = farm.write(SameCow{cow_412, cow_named("513")});
  CHECK(farm.rows_of(cow_412).doubts.empty());

  Envelope envelope = farm.next_envelope();
  envelope.subjects = farm.entry(same).envelope.subjects;
  farm.keep(entry_of(envelope, SameCowTakenBack{same}));
  CHECK(farm.rows_of(cow_412).doubts.size() == 1);
}

TEST_CASE("a warning nobody answered is a doubt, a note or an answered one is none") {
  Farm farm;
  TurnRecorded body = farm.turn_body(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  body.warnings = {{{"a-stop", Rank::stop, Foot::lh, Claw::none, "Look again.", {}}, ""},
                   {{"an-ask", Rank::ask, Foot::rh, Claw::none, "Still on?", {}}, "wrap still on"},
                   {{"a-note", Rank::note, Foot::lh, Claw::none, "Seen before.", {}}, ""}};
  farm.turn(body);
  const std::vector<DoubtRow> doubts = farm.rows_of(cow_412).doubts;
  REQUIRE(doubts.size() == 1);
  CHECK(doubts[0].kind == DoubtKind::unanswered);
  CHECK(doubts[0].words == "Look again.");
}

TEST_CASE("doubts of a turn are numbered from one in the order of their kinds") {
  Finding vague = lesion(Lesion::wl, Claw::not_called, Place::not_called);
  vague.degree = Degree::not_called;
  Turn turn = turn_of({foot(Foot::lh, {vague}), foot(Foot::rh, {}, {act(ActionKind::spray)})});
  turn.end = TurnEnd::unfinished;
  const std::vector<DoubtRow> doubts = doubts_in(turn);
  REQUIRE(doubts.size() == 4);
  for (std::size_t i = 0; i < doubts.size(); ++i) {
    CHECK(doubts[i].position == static_cast<std::int32_t>(i) + 1);
    if (i > 0) CHECK(doubts[i - 1].kind < doubts[i].kind);
  }
}

TEST_CASE("a foot that stayed down was not called a second time") {
  Farm farm;
  farm.turn(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  FootCall down = nothing_found(Foot::lh);
  down.state = FootState::not_lifted;
  farm.turn(cow_412, "2026-11-24", {down});
  CHECK(farm.rows_of(cow_412).doubts.empty());
}

TEST_CASE("a foot named a second time only for the vet was not called twice") {
  Farm farm;
  farm.turn(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  FootCall for_vet;
  for_vet.foot = Foot::lh;
  for_vet.actions.push_back(act(ActionKind::vet));
  farm.turn(cow_412, "2026-11-24", {for_vet});
  for (const DoubtRow& doubt : farm.rows_of(cow_412).doubts) {
    CHECK(doubt.kind != DoubtKind::called_twice);
  }
}

TEST_CASE("a foot that two tablets both found fine is not asked about, one they disagree on is") {
  const FootCall fine = nothing_found(Foot::lh);
  FootCall sprayed = nothing_found(Foot::lh);
  sprayed.actions.push_back(act(ActionKind::spray));
  FootCall left_long = nothing_found(Foot::lh);
  left_long.trimmed = Trimmed::no;

  const struct {
    const char* why;
    FootCall second;
    const char* device;
    std::ptrdiff_t asked;
  } rows[] = {{"both fine", fine, "other tablet", 0},
              {"a lesion", foot(Foot::lh, {lesion(Lesion::wl)}), "other tablet", 1},
              {"sprayed by one", sprayed, "other tablet", 1},
              {"not trimmed, says one", left_long, "other tablet", 1},
              {"both on one tablet", fine, "tablet", 1}};

  for (const auto& row : rows) {
    CAPTURE(row.why);
    Farm farm;
    farm.write_on("tablet");
    farm.turn(cow_412, "2026-11-24", {fine});
    farm.write_on(row.device);
    farm.turn(cow_412, "2026-11-24", {row.second});
    const std::vector<DoubtRow> doubts = farm.rows_of(cow_412).doubts;
    CHECK(std::count_if(doubts.begin(), doubts.end(), [](const DoubtRow& doubt) {
            return doubt.kind == DoubtKind::called_twice;
          }) == row.asked);
  }
}

TEST_CASE("two calls that a person said both hold are not asked about, a third one is") {
  Farm farm;
  const auto twice = [&] {
    const std::vector<DoubtRow> doubts = farm.rows_of(cow_412).doubts;
    return std::count_if(doubts.begin(), doubts.end(), [](const DoubtRow& doubt) {
      return doubt.kind == DoubtKind::called_twice;
    });
  };
  farm.turn(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  farm.turn(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  CHECK(twice() == 1);
  farm.write(QuestionSettled{farm.visit("2026-11-24"), day("2026-11-25"), "412", cow_412,
                             std::nullopt, "both hold"});
  CHECK(twice() == 0);
  farm.turn(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  CHECK(twice() == 1);
}

}  // namespace evenclaw
