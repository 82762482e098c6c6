#include "core/api/identities.hpp"

#include <doctest/doctest.h>

#include "core/api/due.hpp"
#include "core/trade/cow_rows.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

/// One visit on 27 October 2026 with these cows in it.
struct OneVisit {
  explicit OneVisit(const std::vector<std::string>& lines) {
    (void)place.visited("2026-10-27", lines);
  }

  [[nodiscard]] Result<CowId> cow(std::string_view said) {
    return find_cow(place.store, herd(), said, day("2026-10-27"));
  }

  [[nodiscard]] CowId member(std::string_view said) {
    return find_member(place.store, herd(), said, day("2026-10-27")).value();
  }

  [[nodiscard]] HerdId herd() { return place.herd().herd; }

  void unite(std::string_view first, std::string_view second) {
    (void)unite_cows(place.ports(), herd(), cow(first).value(), cow(second).value(), true).value();
  }

  [[nodiscard]] Result<EntryId> part(std::string_view first, std::string_view second) {
    return part_cows(place.ports(), herd(), member(first), member(second));
  }

  Workplace place;
};

const std::vector<std::string> two_cows = {"412 nothing found", "413 RH DD raw behind", "done"};
const std::vector<std::string> one_unsure = {
    "412 nothing found", "513 or 531 LH outside sole ulcer middle, bad", "done"};

}  // namespace

TEST_CASE("two cows of one day that are one are found by both numbers and can be parted again") {
  OneVisit visit(two_cows);
  const CowId first = visit.cow("412").value();
  const CowId second = visit.cow("413").value();
  visit.unite("412", "413");
  REQUIRE(visit.cow("412"));
  CHECK(visit.cow("412").value() == visit.cow("413").value());
  CHECK(visit.member("412") == first);
  CHECK(visit.member("413") == second);
  CHECK(visit.part("412", "413"));
  CHECK(visit.cow("412").value() == first);
  CHECK(visit.cow("413").value() == second);
}

TEST_CASE("a cow in doubt is found by her words when she is united, and can be parted again") {
  OneVisit visit(one_unsure);
  const CowId unsure = visit.cow("513 or 531").value();
  visit.unite("412", "513 or 531");
  CHECK(visit.cow("513 or 531").value() == visit.cow("412").value());
  CHECK(visit.member("513 or 531") == unsure);
  CHECK(visit.part("412", "513 or 531"));
  CHECK(visit.cow("513 or 531").value() == unsure);
  CHECK(visit.cow("412").value() != unsure);
}

TEST_CASE("of three records that are one cow the one that is named is parted") {
  OneVisit visit(
      {"412 nothing found", "413 RH DD raw behind", "no number, red heifer", "rest fine", "done"});
  const CowId heifer = visit.cow("red heifer").value();
  visit.unite("412", "413");
  visit.unite("413", "red heifer");
  CHECK(visit.part("412", "red heifer"));
  CHECK(visit.cow("red heifer").value() == heifer);
  CHECK(visit.cow("412").value() == visit.cow("413").value());
}

TEST_CASE("a cow that got her number is found by what she looks like as well") {
  OneVisit visit({"no number, red heifer", "rest fine", "done"});
  const CowId heifer = visit.cow("red heifer").value();
  (void)give_number(visit.place.ports(), visit.herd(), {heifer, "600", day("2026-10-27")}, false)
      .value();
  CHECK(visit.cow("600").value() == heifer);
  CHECK(visit.cow("Red Heifer").value() == heifer);
}

TEST_CASE("a cow in doubt is found with her question mark and without it") {
  OneVisit visit({"513? nothing found", "done"});
  REQUIRE(visit.cow("513?"));
  REQUIRE(visit.cow("513"));
  CHECK(visit.cow("513").value() == visit.cow("513?").value());
  CHECK_FALSE(visit.cow("514"));
}

TEST_CASE("a number that comes back can be said to be the cow that left") {
  OneVisit visit({});
  (void)visit.place.visited("2026-09-29", {"77 nothing found", "done"});
  (void)cow_left(visit.place.ports(), visit.herd(), visit.cow("77").value(), day("2026-10-13"), "");
  (void)visit.place.visited("2026-10-27", {"77 nothing found", "done"});
  const CowId now = visit.cow("77").value();
  const CowId then = other_carrier(visit.place.store, visit.herd(), "077", now).value();
  CHECK(then != now);
  CHECK(unite_cows(visit.place.ports(), visit.herd(), now, then, false));
  const auto none = other_carrier(visit.place.store, visit.herd(), "77", visit.cow("77").value());
  REQUIRE_FALSE(none);
  CHECK(none.faults().front().message == "No other cow carries or carried 77.");
}

TEST_CASE("a number that somebody carries goes before a cow that was only called so") {
  OneVisit visit({"513? nothing found", "513 nothing found", "done"});
  CHECK(visit.cow("513").value() != visit.cow("513?").value());
}

TEST_CASE("a record with open tasks is taken away only when that is sure, and they are told") {
  OneVisit visit({"412 lame LH", "LH outside sole ulcer middle, bad; block on inside", "rest fine",
                  "413 nothing found", "done"});
  const auto turn_of = [&](std::string_view cow) {
    EntryId turn;
    (void)visit.place.store.read_entries(
        {visit.herd().value, visit.cow(cow).value().value, {"turn"}}, [&](const Entry& entry) {
          turn = entry.envelope.id;
          return true;
        });
    return turn;
  };
  const auto open_tasks = [&] {
    return list_due(visit.place.store, visit.herd(), day("2026-10-27")).value().tasks.size();
  };
  REQUIRE(open_tasks() == 2);

  const auto nothing_open = redact_entry(visit.place.ports(), turn_of("413"), "a slip", false);
  REQUIRE(nothing_open);
  CHECK(nothing_open->tasks_lost.empty());
  const auto unsure = redact_entry(visit.place.ports(), turn_of("412"), "a slip", false);
  REQUIRE_FALSE(unsure);
  CHECK(unsure.faults().front().slug == "answer-needed");
  CHECK(unsure.faults().front().message.find(
            "412: block off left hind, inside claw (trimmer, by 2026-12-01)") != std::string::npos);
  CHECK(open_tasks() == 2);

  const auto sure = redact_entry(visit.place.ports(), turn_of("412"), "a slip", true);
  REQUIRE(sure);
  REQUIRE(sure->tasks_lost.size() == 2);
  CHECK(sure->tasks_lost.front().cow_said == "412");
  CHECK(open_tasks() == 0);
}

TEST_CASE("what a correction says again is not lost with the record it corrects") {
  OneVisit visit({"412 lame LH", "LH outside sole ulcer middle, bad; block on inside", "rest fine",
                  "done", "no, 421", "done"});
  std::vector<EntryId> turns;
  (void)visit.place.store.read_entries({visit.herd().value, std::nullopt, {"turn"}},
                                       [&](const Entry& entry) {
                                         turns.push_back(entry.envelope.id);
                                         return true;
                                       });
  REQUIRE(turns.size() == 2);
  const auto first = redact_entry(visit.place.ports(), turns.front(), "a slip", false);
  REQUIRE(first);
  CHECK(first->tasks_lost.empty());
}

TEST_CASE("who takes a record away that was corrected is told which entry still holds it") {
  Workplace place;
  const Visit visit = place.start("2026-10-24");
  Recording recording = place.record(visit);
  (void)recording.say_all(std::vector<std::string>{"412 LH DD raw behind; wrap on", "done"})
      .value();
  const HerdId herd = place.herd().herd;
  const EntryId saved = select_as<TurnRow>(place.store, herd).value().at(0).turn;
  (void)correct_visit_day(place.ports(), visit, day("2026-10-27"), true).value();
  const EntryId now = select_as<TurnRow>(place.store, herd).value().at(0).turn;
  REQUIRE(now != saved);
  const Redacted first = redact_entry(place.ports(), saved, "not hers", true).value();
  CHECK(first.still_told_by == std::vector<EntryId>{now});
  CHECK(redact_entry(place.ports(), now, "not hers", true).value().still_told_by.empty());
  CHECK(select_as<TurnRow>(place.store, herd).value().empty());
}

}  // namespace evenclaw::test
