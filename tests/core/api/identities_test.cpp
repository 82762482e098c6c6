#include "core/api/identities.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "core/trade/cow_rows.hpp"
#include "core/trade/task_rows.hpp"
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

const std::vector<std::string> both_numbers_called = {"412 nothing found", "413 RH DD raw behind",
                                                      "done"};
const std::vector<std::string> one_unsure = {
    "412 nothing found", "513 or 531 LH outside sole ulcer middle, bad", "done"};

}  // namespace

TEST_CASE("two cows of one day that are one are found by both numbers and can be parted again") {
  OneVisit visit(both_numbers_called);
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

TEST_CASE(
    "of two cows that are one, what the later was called with closes what was open of the first") {
  Workplace place;
  (void)place.visited("2026-09-29", {"600 LH outside sole ulcer heel, bad; block on inside",
                                     "RH DD raw behind; wrap on", "rest fine", "done"});
  (void)place.visited("2026-10-27", {"601 LH outside sole ulcer heel, slight; block off",
                                     "RH nothing found", "rest fine", "done"});
  const HerdId herd = place.herd().herd;
  const CowId first = find_cow(place.store, herd, "600", day("2026-10-27")).value();
  const CowId second = find_cow(place.store, herd, "601", day("2026-10-27")).value();
  const auto open = [&] {
    std::vector<std::string> words;
    for (const TaskRow& task : select_as<TaskRow>(place.store, herd).value()) {
      if (task.open && task.made_on < day("2026-10-27")) words.push_back(task.words);
    }
    std::sort(words.begin(), words.end());
    return words;
  };
  const std::vector<std::string> before = open();
  CHECK(before.size() == 5);
  (void)unite_cows(place.ports(), herd, first, second, false).value();
  CHECK(open() == std::vector<std::string>{"wrap off right hind"});
  (void)part_cows(place.ports(), herd,
                  find_member(place.store, herd, "600", day("2026-10-27")).value(),
                  find_member(place.store, herd, "601", day("2026-10-27")).value())
      .value();
  CHECK(open() == before);
}

TEST_CASE("of two cows in the same words the earlier one is named with her day") {
  Workplace place;
  (void)place.visited("2026-09-29", {"no number, brown heifer; nothing found", "done"});
  (void)place.visited("2026-10-27", {"no number, brown heifer; nothing found", "done"});
  const HerdId herd = place.herd().herd;
  const auto named = [&](std::string_view said) {
    return find_cow(place.store, herd, said, day("2026-10-27"));
  };
  REQUIRE(named("brown heifer of 2026-09-29"));
  CHECK(named("brown heifer of 2026-09-29").value() != named("brown heifer").value());
  CHECK(named("brown heifer of 2026-10-27").value() == named("brown heifer").value());
  CHECK(dated("brown heifer", day("2026-09-29")) == "brown heifer of 2026-09-29");
  CHECK_FALSE(named("brown heifer of 2026-09-30"));
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

}  // namespace evenclaw::test
