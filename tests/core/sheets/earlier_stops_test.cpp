#include "core/sheets/earlier_stops.hpp"

#include <doctest/doctest.h>

#include "core/sheets/stay_near.hpp"
#include "core/sheets/vet_box.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

/// A Stop of 412, seven days before the visit.
EarlierStop stop_of_412(const InventedDay& day, Day on, const std::string& rule) {
  EarlierStop stop;
  stop.cow = day.id_of("412");
  stop.turn = EntryId{uuid_derived("earlier turn")};
  stop.on = on;
  stop.warning.rule = rule;
  stop.warning.rank = Rank::stop;
  stop.warning.foot = Foot::lh;
  stop.warning.words = "Swollen above one claw: vet.";
  return stop;
}

struct SevenDaysAgo {
  InventedDay day{"Hollow Meadow"};
  Day visit_day = day.input().visit.day;
  EarlierStop stop = stop_of_412(day, visit_day - 7, "swollen-on-one-side");
  std::vector<TurnRow> turns = {};
  std::vector<FootRow> feet = {};
  std::vector<TaskRow> tasks = {};

  [[nodiscard]] bool is_open() {
    return !stops_left_open(day.input().visit, {stop}, turns, feet, tasks).empty();
  }

  TurnRow& turn(int days_ago, FootSet lifted) {
    TurnRow row;
    row.cow = stop.cow;
    row.turn = EntryId{uuid_derived("turn " + std::to_string(turns.size()))};
    row.day = visit_day - days_ago;
    row.lifted = lifted;
    turns.push_back(row);
    return turns.back();
  }

  void foot(int days_ago, Foot of, FootState state) {
    FootRow row;
    row.cow = stop.cow;
    row.foot = of;
    row.day = visit_day - days_ago;
    row.state = state;
    feet.push_back(row);
  }

  TaskRow& vet_task(int made_days_ago) {
    TaskRow row;
    row.cow = stop.cow;
    row.kind = TaskKind::vet;
    row.made_on = visit_day - made_days_ago;
    tasks.push_back(row);
    return tasks.back();
  }
};

}  // namespace

TEST_CASE("a Stop of an earlier visit stands with what was found then on its foot") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::sw, Place::not_called, Degree::bad});
  day.found({Foot::rh, Claw::inside, Lesion::su});
  EarlierStop stop;
  stop.turn = day.last_turn().turn;
  stop.warning.foot = Foot::lh;
  std::vector<EarlierStop> stops = {stop};
  tell_found_then(stops, day.rows().findings, english_wording());
  CHECK(holds(stops.front().found, "above the outside claw"));
  CHECK(holds(stops.front().found, "bad"));
  CHECK_FALSE(holds(stops.front().found, "ulcer"));
}

TEST_CASE("a Stop of an earlier visit that nobody answered is still open") {
  SevenDaysAgo then;
  CHECK(then.is_open());
  then.turn(7, {Foot::lh}).turn = then.stop.turn;
  CHECK(then.is_open());
}

TEST_CASE("a Stop is over once it was said what is on its foot, and not by another foot") {
  const struct {
    Foot foot;
    FootState state;
    bool is_open;
  } rows[] = {{Foot::rh, FootState::finding, true},
              {Foot::lh, FootState::unsaid, true},
              {Foot::lh, FootState::not_lifted, true},
              {Foot::lh, FootState::finding, false},
              {Foot::lh, FootState::nothing_found, false}};

  for (const auto& row : rows) {
    SevenDaysAgo then;
    then.turn(3, {row.foot});
    then.foot(3, row.foot, row.state);
    CHECK(then.is_open() == row.is_open);
  }
}

TEST_CASE("a Stop of the whole cow is over once it was said what is on any foot") {
  SevenDaysAgo then;
  then.stop.warning.foot.reset();
  then.turn(3, {Foot::rh});
  CHECK(then.is_open());
  then.foot(0, Foot::rh, FootState::nothing_found);
  CHECK_FALSE(then.is_open());
}

TEST_CASE("a Stop is over once the vet was asked for her or came") {
  SevenDaysAgo asked;
  asked.vet_task(3);
  CHECK_FALSE(asked.is_open());

  SevenDaysAgo came;
  TaskRow& task = came.vet_task(30);
  CHECK(came.is_open());
  task.closed_on = came.visit_day - 20;
  CHECK(came.is_open());
  task.closed_on = came.visit_day - 2;
  CHECK_FALSE(came.is_open());
}

TEST_CASE(
    "what may be notifiable is over once the vet came, not when he was asked for or she left") {
  const struct {
    const char* name;
    void (*since)(SevenDaysAgo&);
    bool is_open;
  } rows[] = {
      {"asked for", [](SevenDaysAgo& then) { then.vet_task(7); }, true},
      {"looked at", [](SevenDaysAgo& then) { then.foot(3, Foot::lh, FootState::finding); }, true},
      {"came",
       [](SevenDaysAgo& then) {
         TaskRow& task = then.vet_task(7);
         task.closed_on = then.visit_day - 2;
         task.closed_how = "vet came";
       },
       false},
      {"left",
       [](SevenDaysAgo& then) {
         TaskRow& task = then.vet_task(7);
         task.closed_on = then.visit_day - 2;
         task.closed_how = "gone";
       },
       true}};

  for (const auto& row : rows) {
    SevenDaysAgo then;
    then.stop.warning.rule = "notifiable-signs";
    row.since(then);
    CHECK_MESSAGE(then.is_open() == row.is_open, row.name);
  }
}

TEST_CASE("a Stop of this visit, of a later day, or that asks for no vet is no earlier one") {
  SevenDaysAgo of_visit;
  of_visit.stop.on = of_visit.visit_day;
  CHECK(of_visit.is_open());  // of another visit of that day
  TurnRow& turn = of_visit.turn(0, {});
  turn.turn = of_visit.stop.turn;
  turn.visit = of_visit.day.input().visit.visit;
  CHECK_FALSE(of_visit.is_open());

  SevenDaysAgo later;
  later.stop.on = later.visit_day + 1;
  CHECK_FALSE(later.is_open());

  SevenDaysAgo no_vet;
  no_vet.stop.warning.rule = "both-claws-blocked";
  CHECK_FALSE(no_vet.is_open());
}

TEST_CASE("a Stop of an earlier visit stands in the vet's box and keeps her near until she left") {
  SevenDaysAgo then;
  then.day.known("412");
  then.day.input().earlier_stops = {then.stop};
  const auto box = [&] { return text_of(vet_box(view_of(then.day.input(), english_wording()))); };
  const auto near = [&] {
    return text_of(stay_near(view_of(then.day.input(), english_wording())));
  };
  CHECK(holds(box(),
              "# VET TODAY\n# 412  Left hind, Stop of Tue 17 Nov, nobody answered and nobody said "
              "since what is there: Swollen above one claw: vet.\n#      Ring today.\n"));
  CHECK(holds(near(), "412  vet not asked for yet\n"));
  then.day.known("412").left_on = then.visit_day;
  CHECK(holds(box(), "No vet was asked for"));
  CHECK_FALSE(holds(near(), "412"));
}

TEST_CASE("a Stop somebody went ahead against lasts where its sign does") {
  const struct {
    const char* rule;
    const char* decision;
    bool lasts;
  } rows[] = {{"swollen-on-one-side", "go ahead", true}, {"toe-or-bone", "go ahead", true},
              {"notifiable-signs", "go ahead", true},    {"swollen-on-one-side", "LH vet", false},
              {"swollen-on-one-side", "", false},        {"bleeding-goes-on", "go ahead", false},
              {"down-in-the-crush", "go ahead", false},  {"lame-on-two-legs", "go ahead", false},
              {"both-claws-blocked", "go ahead", false}};

  for (const auto& row : rows) {
    WarningShown shown;
    shown.warning.rule = row.rule;
    shown.warning.rank = Rank::stop;
    shown.decision = row.decision;
    CHECK_MESSAGE(lasts_though_gone_past(shown) == row.lasts, row.rule << ' ' << row.decision);
  }
}

TEST_CASE("a Stop of an earlier visit that was gone past says so") {
  SevenDaysAgo then;
  then.day.known("412");
  then.stop.was_gone_past = true;
  then.day.input().earlier_stops = {then.stop};
  CHECK(holds(text_of(vet_box(view_of(then.day.input(), english_wording()))),
              "# 412  Left hind, Stop of Tue 17 Nov, gone ahead anyway, and nobody said since what "
              "is there: "
              "Swollen above one claw: vet.\n"));
}

}  // namespace evenclaw
