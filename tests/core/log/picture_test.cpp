#include "core/log/picture.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"
#include "tests/core/log/farm.hpp"
#include "tests/core/log/replica.hpp"

namespace evenclaw {

namespace {

int doubts(const Rows& rows, DoubtKind kind) {
  return static_cast<int>(std::count_if(rows.doubts.begin(), rows.doubts.end(),
                                        [&](const DoubtRow& row) { return row.kind == kind; }));
}

}  // namespace

TEST_CASE("a turn becomes rows of turn, feet, findings and actions") {
  Farm farm;
  TurnRecorded body = farm.turn_body(
      cow_named("412"), "2026-11-24",
      {foot(Foot::lh, {lesion(Lesion::wla), lesion(Lesion::hhe)}, {act(ActionKind::opened)}),
       nothing_found(Foot::rh)});
  body.words = {"412 lame LH", "LH white line abscess"};
  body.turn.reason = Reason::lame;
  body.turn.lame = {Foot::lh};
  body.turn.feet[0].actions.push_back(act(ActionKind::see_again));
  body.turn.feet[0].actions.back().when.days = 28;
  body.turn.actions = {act(ActionKind::told_farmer)};
  body.warnings = {{{"a-stop", Rank::stop, Foot::lh, Claw::none, "Look again.", {}}, ""},
                   {{"an-ask", Rank::ask, Foot::lh, Claw::none, "Which claw?", {}}, "outside"},
                   {{"a-note", Rank::note, Foot::lh, Claw::none, "Seen before.", {}}, ""}};
  const EntryId turn = farm.turn(body);
  const Rows rows = farm.rows_of(cow_named("412"));

  REQUIRE(rows.turns.size() == 1);
  CHECK(rows.turns[0].turn == turn);
  CHECK(rows.turns[0].day == day("2026-11-24"));
  CHECK(rows.turns[0].words == "412 lame LH / LH white line abscess");
  CHECK(rows.turns[0].lifted == hind_feet);
  CHECK(rows.turns[0].stops == 1);
  CHECK(rows.turns[0].asks == 1);
  CHECK(rows.turns[0].unanswered == 1);

  REQUIRE(rows.feet.size() == 2);
  CHECK(rows.feet[0].foot == Foot::lh);
  CHECK(rows.feet[0].called_lame);
  CHECK(rows.feet[1].state == FootState::nothing_found);
  CHECK_FALSE(rows.feet[1].called_lame);

  REQUIRE(rows.findings.size() == 2);
  CHECK(rows.findings[0].position == 1);
  CHECK(rows.findings[0].family == Lesion::wl);
  CHECK(rows.findings[0].group == LesionGroup::horn);
  CHECK(rows.findings[1].position == 2);
  CHECK(rows.findings[1].lesion == Lesion::hhe);

  REQUIRE(rows.actions.size() == 3);
  CHECK(rows.actions[1].said_for == day("2026-12-22"));
  CHECK(rows.actions[2].action == ActionKind::told_farmer);
  CHECK_FALSE(rows.actions[2].foot);
}

TEST_CASE("a turn tells every reason she came for and every measure") {
  Farm farm;
  FootCall measured = nothing_found(Foot::lh);
  measured.measures = {{MeasureKind::toe_length, Claw::outside, Length{785}},
                       {MeasureKind::sole_thickness, Claw::not_called, Length{40}}};
  TurnRecorded body = farm.turn_body(cow_named("412"), "2026-11-24", {measured});
  body.turn.reason = Reason::fresh;
  body.turn.also = {Reason::other, Reason::lame};
  body.turn.reason_words = "swollen hock";
  farm.turn(body);
  const Rows rows = farm.rows_of(cow_named("412"));

  REQUIRE(rows.turns.size() == 1);
  CHECK(rows.turns[0].reason == Reason::fresh);
  CHECK(rows.turns[0].also == ReasonSet{Reason::lame, Reason::other});
  CHECK(rows.turns[0].reason_words == "swollen hock");
  CHECK(rows.turns[0].came_lame);

  REQUIRE(rows.measures.size() == 2);
  CHECK(rows.measures[0].measure == MeasureKind::toe_length);
  CHECK(rows.measures[0].claw == Claw::outside);
  CHECK(rows.measures[0].length == Length{785});
  CHECK(rows.measures[1].position == 2);
}

TEST_CASE("a turn tells the mobility score with its scale, an act its material and who gave it") {
  Farm farm;
  Action block = act(ActionKind::block_on, Claw::inside);
  block.material = Material::rubber;
  TurnRecorded body = farm.turn_body(cow_named("412"), "2026-11-24",
                                     {foot(Foot::lh, {lesion(Lesion::su)}, {block})});
  body.turn.mobility = {MobilityScale::one_to_five, 4};
  body.turn.actions.push_back(act(ActionKind::pain_relief_given));
  body.turn.actions.back().by_whom = ByWhom::vet;
  farm.turn(body);
  const Rows rows = farm.rows_of(cow_named("412"));

  CHECK(rows.turns[0].mobility_scale == MobilityScale::one_to_five);
  CHECK(rows.turns[0].mobility_score == 4);
  REQUIRE(rows.actions.size() == 2);
  CHECK(rows.actions[0].material == Material::rubber);
  CHECK(rows.actions[1].by_whom == ByWhom::vet);
}

TEST_CASE("a claw said to be missing is missing in every later turn, and not before") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-09-01", {nothing_found(Foot::lh)});
  farm.turn(cow_named("412"), "2026-10-01",
            {foot(Foot::lh, {}, {act(ActionKind::claw_missing, Claw::outside)})});
  farm.turn(cow_named("412"), "2026-11-01", {nothing_found(Foot::lh), nothing_found(Foot::rh)});
  const Rows rows = farm.rows_of(cow_named("412"));

  REQUIRE(rows.feet.size() == 4);
  for (const FootRow& row : rows.feet) {
    CAPTURE(to_text(row.day));
    const bool is_known = row.foot == Foot::lh && row.day >= day("2026-10-01");
    CHECK(row.missing == (is_known ? Claw::outside : Claw::none));
  }
  CHECK(missing_before(rows, Foot::lh).has(Claw::outside));
  CHECK(missing_before(rows, Foot::rh).none());
}

TEST_CASE("a missing claw nobody named a side of is known to be one of the two") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-10-01",
            {foot(Foot::lh, {}, {act(ActionKind::claw_missing, Claw::not_called)})});
  farm.turn(cow_named("412"), "2026-11-01", {nothing_found(Foot::lh)});
  for (const FootRow& row : farm.rows_of(cow_named("412")).feet) {
    CHECK(row.missing == Claw::not_called);
  }
}

TEST_CASE("nothing is pictured of a cow nobody wrote about") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24", {});
  CHECK(text_of_rows(farm.rows_of(cow_named("413"))).empty());
  CHECK(text_of_rows(picture_of_cow(farm.herd(), {}, farm.entries())).empty());
}

TEST_CASE("entries of another scope are no part of a herd's picture") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24", {});
  Envelope elsewhere = farm.next_envelope();
  elsewhere.scope = named_id("another herd");
  farm.keep(entry_of(elsewhere, farm.turn_body(cow_named("412"), "2026-11-24", {})));
  CHECK(farm.rows_of(cow_named("412")).turns.size() == 1);
}

TEST_CASE("a clock that jumps ten years harms nothing: days come from the visit") {
  Farm farm;
  const CowId cow = cow_named("412");
  farm.turn(cow, "2026-11-24", {foot(Foot::lh, {lesion(Lesion::wl)})});
  farm.set_clock("2036-11-24T09:00:00.000+01:00");
  farm.turn(cow, "2026-12-22", {foot(Foot::lh, {lesion(Lesion::wl)})});
  farm.set_clock("2016-11-24T09:00:00.000+01:00");
  farm.turn(cow, "2027-01-19", {nothing_found(Foot::lh)});
  const Rows rows = farm.rows_of(cow);
  REQUIRE(rows.cases.size() == 1);
  CHECK(rows.cases[0].first_day == day("2026-11-24"));
  CHECK(rows.cases[0].last_day == day("2026-12-22"));
  CHECK(rows.cases[0].not_found_on == day("2027-01-19"));
  CHECK(rows.cows[0].first_seen == day("2026-11-24"));
  CHECK(rows.cows[0].last_seen == day("2027-01-19"));
}

TEST_CASE("a turn whose visit was never opened counts on the day of its device") {
  Farm farm;
  TurnRecorded body;
  body.cow = cow_named("412");
  body.visit = VisitId{named_id("a visit whose opening has not come yet")};
  farm.set_clock("2026-11-24T23:30:00.000-05:00");
  farm.turn(body);
  CHECK(farm.rows_of(cow_named("412")).turns[0].day == day("2026-11-24"));
}

TEST_CASE("correcting the day of a visit moves every turn of it") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24", {nothing_found(Foot::lh)});
  VisitCorrected correction;
  correction.visit = farm.visit("2026-11-24");
  correction.day = day("2026-11-23");
  farm.write(correction);
  const Rows rows = farm.rows_of(cow_named("412"));
  CHECK(rows.turns[0].day == day("2026-11-23"));
  CHECK(rows.feet[0].day == day("2026-11-23"));
}

namespace {

BatchRecorded counted(VisitId visit, std::int32_t count) {
  BatchRecorded body;
  body.visit = visit;
  body.batch.counted = count;
  body.batch.animals = AnimalKind::heifers;
  body.batch.nothing_found = true;
  body.batch.apart = {"little black one"};
  body.words = {"12 heifers, all good bar the little black one"};
  return body;
}

}  // namespace

TEST_CASE("animals counted together are a row of their visit and of no cow") {
  Farm farm;
  const CowId cow = cow_named("412");
  farm.turn(cow, "2026-11-24", {nothing_found(Foot::lh)});
  const VisitId visit = farm.visit("2026-11-24");
  const Rows of_her = farm.rows_of(cow);
  farm.write(counted(visit, 12));
  const Rows rows = farm.rows_of(visit);
  REQUIRE(rows.batches.size() == 1);
  CHECK(rows.batches[0].counted == 12);
  CHECK(rows.batches[0].together == 11);
  CHECK(rows.batches[0].nothing_found == 11);
  CHECK(rows.batches[0].lifted == hind_feet);
  CHECK(rows.batches[0].feet == 22);
  CHECK(rows.turns.empty());
  CHECK(rows.cows.empty());
  CHECK(farm.rows_of(cow).turns.size() == of_her.turns.size());
  CHECK(farm.rows_of(cow).batches.empty());
}

TEST_CASE("a count that was mended counts once, one that was removed not at all") {
  Farm farm;
  const VisitId visit = farm.visit("2026-11-24");
  farm.write(counted(visit, 12));
  const Entry wrong = farm.last();
  farm.correct(wrong, counted(visit, 11));
  REQUIRE(farm.rows_of(visit).batches.size() == 1);
  CHECK(farm.rows_of(visit).batches[0].counted == 11);
  farm.redact(Entry(farm.last()));
  CHECK(farm.rows_of(visit).batches.empty());
}

TEST_CASE("of a visit from paper no time is known, and none is shown as zero") {
  Farm farm;
  const VisitId visit = visit_id(farm.herd(), day("2026-11-24"), 1);
  farm.write(VisitOpened{visit, day("2026-11-24"), 1, hind_feet, true});
  const Rows rows = farm.rows_of(visit);
  REQUIRE(rows.visits.size() == 1);
  CHECK(rows.visits[0].from_paper);
  CHECK(rows.visits[0].day == day("2026-11-24"));
  CHECK_FALSE(rows.visits[0].opened_at.has_value());
}

TEST_CASE("how long she stood there is told only where her first word has a time") {
  Farm farm;
  const CowId cow = cow_named("412");
  farm.visit("2026-11-24");
  farm.set_clock("2026-11-24T09:12:00.000+01:00");
  TurnRecorded body = farm.turn_body(cow, "2026-11-24", {nothing_found(Foot::lh)});
  farm.turn(body);
  const TurnRow without = farm.rows_of(cow).turns.at(0);
  CHECK_FALSE(without.seconds_in_crush.has_value());
  CHECK_FALSE(without.let_out_at.has_value());

  const CowId other = cow_named("413");
  body = farm.turn_body(other, "2026-11-24", {nothing_found(Foot::lh)});
  body.began = instant_from_text("2026-11-24T09:10:00.000+01:00");
  farm.turn(body);
  const TurnRow with = farm.rows_of(other).turns.at(0);
  REQUIRE(with.seconds_in_crush.has_value());
  CHECK(*with.seconds_in_crush >= 60);
  CHECK(with.let_out_at.has_value());

  farm.correct(Entry(farm.last()), body);
  CHECK_FALSE(farm.rows_of(other).turns.at(0).seconds_in_crush.has_value());
}

TEST_CASE("two tablets that open the same visit make one visit with the turns of both") {
  Farm farm;
  const CowId cow = cow_named("412");
  const VisitId visit = farm.visit("2026-11-24");
  farm.turn(cow, "2026-11-24", {nothing_found(Foot::lh)});
  farm.write_on("other tablet");
  farm.write(
      VisitOpened{visit_id(farm.herd(), day("2026-11-24"), 1), day("2026-11-24"), 1, four_feet});
  farm.turn(cow, "2026-11-24", {nothing_found(Foot::rh)});

  const Rows of_visit = farm.rows_of(visit);
  REQUIRE(of_visit.visits.size() == 1);
  CHECK(of_visit.visits[0].opened_twice);
  CHECK(of_visit.visits[0].todays_feet == hind_feet);

  const Rows rows = farm.rows_of(cow);
  CHECK(rows.turns.size() == 2);
  CHECK(rows.turns[0].visit == rows.turns[1].visit);
  CHECK(doubts(rows, DoubtKind::called_twice) == 0);
}

TEST_CASE("an unnumbered cow met twice stays two cows until a person unites them") {
  Farm farm;
  const VisitId visit = farm.visit("2026-11-24");
  const CowId first = unnumbered_cow_id(farm.herd(), visit, device_named("tablet"), "star", 1);
  const CowId again = unnumbered_cow_id(farm.herd(), visit, device_named("tablet"), "star", 2);
  CHECK(first != again);
  for (const CowId cow : {first, again}) {
    TurnRecorded body = farm.turn_body(cow, "2026-11-24", {nothing_found(Foot::lh)});
    body.turn.cow = {CowKnown::unnumbered, "", {}, "star"};
    farm.turn(body);
  }
  CHECK(farm.rows_of(first).turns.size() == 1);
  CHECK(farm.rows_of(again).turns.size() == 1);
  CHECK(doubts(farm.rows_of(again), DoubtKind::unnumbered) == 1);

  farm.write(SameCow{first, again});
  const Rows united = farm.rows_of(again);
  REQUIRE(united.cows.size() == 1);
  CHECK(united.cows[0].cow == std::min(first, again));
  CHECK(united.turns.size() == 2);
  CHECK(doubts(united, DoubtKind::called_twice) == 1);
}

TEST_CASE("the same foot called twice in a visit keeps both calls and is asked about once") {
  Farm farm;
  const CowId cow = cow_named("412");
  farm.turn(cow, "2026-11-24", {foot(Foot::lh, {lesion(Lesion::wl)}), nothing_found(Foot::rh)});
  farm.turn(cow, "2026-11-24", {nothing_found(Foot::lh), nothing_found(Foot::lf)});
  farm.turn(cow, "2026-12-22", {nothing_found(Foot::rh)});
  const Rows rows = farm.rows_of(cow);
  CHECK(rows.turns.size() == 3);
  CHECK(rows.feet.size() == 5);
  for (const FootRow& row : rows.feet) {
    CHECK(row.called_twice == (row.foot == Foot::lh));
  }
  CHECK(doubts(rows, DoubtKind::called_twice) == 1);
  CHECK(rows.cases[0].not_found_on == std::nullopt);
}

TEST_CASE("a correction makes the rows of a turn anew and leaves none of the old") {
  Farm farm;
  const EntryId wrong =
      farm.turn(cow_named("412"), "2026-11-24", {foot(Foot::lh, {lesion(Lesion::su)})});
  const EntryId right = farm.correct(
      farm.entry(wrong),
      farm.turn_body(cow_named("421"), "2026-11-24", {foot(Foot::rh, {lesion(Lesion::su)})}));
  CHECK(text_of_rows(farm.rows_of(cow_named("412"))).empty());
  const Rows rows = farm.rows_of(cow_named("421"));
  REQUIRE(rows.findings.size() == 1);
  CHECK(rows.findings[0].turn == right);
  CHECK(rows.findings[0].foot == Foot::rh);
}

TEST_CASE("entries this version does not understand are passed over and harm no others") {
  Farm farm;
  const CowId cow = cow_named("412");
  farm.turn(cow, "2026-11-24", {nothing_found(Foot::lh)});
  const std::string before = text_of_rows(farm.rows_of(cow));
  for (const char* kind : {"scored_by_camera", "turn"}) {
    Envelope envelope = farm.next_envelope();
    envelope.kind = kind;
    envelope.version = 99;
    envelope.subjects = {cow.value, farm.visit("2026-11-24").value};
    farm.keep(make_entry(envelope, R"({"cow":"elsewhere"})"));
  }
  Envelope envelope = farm.next_envelope();
  envelope.kind = "turn";
  envelope.subjects = {cow.value};
  farm.keep(make_entry(envelope, R"({"cow":")" + to_text(cow) + R"(","turn":{"end":"half"}})"));
  CHECK(text_of_rows(farm.rows_of(cow)) == before);
}

TEST_CASE("a foot named twice within one turn has one row that holds both") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24",
            {foot(Foot::lh, {}, {act(ActionKind::spray)}),
             foot(Foot::lh, {lesion(Lesion::dd, Claw::none, Place::behind)})});
  const Rows rows = farm.rows_of(cow_named("412"));
  REQUIRE(rows.feet.size() == 1);
  CHECK(rows.feet[0].state == FootState::finding);
  CHECK(rows.actions.size() == 1);
  CHECK(rows.findings.size() == 1);
}

TEST_CASE("a number of days nobody would say names no day") {
  Farm farm;
  TurnRecorded body = farm.turn_body(cow_named("412"), "2026-11-24",
                                     {foot(Foot::lh, {}, {act(ActionKind::see_again)})});
  body.turn.feet[0].actions[0].when.days = 2'147'483'647;
  farm.turn(body);
  CHECK_FALSE(farm.rows_of(cow_named("412")).actions[0].said_for);
}

TEST_CASE("one id in two versions pictures the one shown and raises a doubt") {
  Farm farm;
  const CowId cow = cow_named("412");
  farm.turn(cow, "2026-11-24", {nothing_found(Foot::lh)});
  const Entry one = farm.last();
  farm.keep(entry_of(one.envelope,
                     farm.turn_body(cow, "2026-11-24", {foot(Foot::lh, {lesion(Lesion::wl)})})));
  const Rows rows = farm.rows_of(cow);
  CHECK(rows.turns.size() == 1);
  CHECK(doubts(rows, DoubtKind::two_versions) == 1);
}

TEST_CASE("the order in which entries are given changes no row") {
  Farm farm;
  const CowId cow = cow_named("412");
  farm.turn(cow, "2026-11-24", {foot(Foot::lh, {lesion(Lesion::wl)}, {act(ActionKind::wrap_on)})});
  farm.turn(cow, "2026-12-22", {foot(Foot::lh, {lesion(Lesion::wl)}, {act(ActionKind::wrap_off)})});
  std::vector<Entry> entries = farm.entries();
  std::sort(entries.begin(), entries.end(),
            [](const Entry& a, const Entry& b) { return a.envelope.id < b.envelope.id; });
  const std::vector<CowId> group = {cow};
  CHECK(text_of_rows(picture_of_cow(farm.herd(), group, entries)) ==
        text_of_rows(farm.rows_of(cow)));
}

TEST_CASE("a visit's row tells day, feet, whether it was closed and who opened it") {
  Farm farm;
  const VisitId visit = farm.visit("2026-11-24");
  VisitRow row = farm.rows_of(visit).visits.at(0);
  CHECK(row.day == day("2026-11-24"));
  CHECK(row.todays_feet == hind_feet);
  CHECK_FALSE(row.closed);
  CHECK_FALSE(row.opened_twice);
  CHECK(row.opened_at == "2026-11-24T08:00:00.000+01:00");

  VisitCorrected correction;
  correction.visit = visit;
  correction.todays_feet = four_feet;
  farm.write(correction);
  farm.write(VisitClosed{visit, {}});
  row = farm.rows_of(visit).visits.at(0);
  CHECK(row.day == day("2026-11-24"));
  CHECK(row.todays_feet == four_feet);
  CHECK(row.closed);
}

TEST_CASE("a visit that was never opened has no row") {
  Farm farm;
  const VisitId visit{named_id("never opened")};
  farm.write(VisitClosed{visit, {}});
  CHECK(farm.rows_of(visit).visits.empty());
}

}  // namespace evenclaw
