#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/api/identities.hpp"
#include "core/api/told.hpp"
#include "core/log/doubts.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

std::vector<std::string> asked(const VisitEnded& ended) {
  std::vector<std::string> words;
  for (const OpenPoint& point : ended.open) words.push_back(point.cow_said + ": " + point.words);
  return words;
}

}  // namespace

TEST_CASE("a number that another cow carried until she got a new one is asked about") {
  Workplace place;
  (void)place.visited("2026-09-29", {"412 nothing found", "done"});
  const HerdId herd = place.herd().herd;
  const CowId cow = find_cow(place.store, herd, "412", day("2026-09-29")).value();
  (void)give_number(place.ports(), herd, {cow, "77", day("2026-10-01")}, false).value();
  CHECK(asked(place.visited("2026-10-27", {"412 nothing found", "done"})) ==
        std::vector<std::string>{
            "412: 412 was 77's until 30 Sep; taken for a new cow. Is she the same?"});
}

TEST_CASE("two cows that carry one number are asked about, the one of another visit is not") {
  Workplace place;
  (void)place.visited("2026-09-29", {"412 nothing found", "77 nothing found", "done"});
  const HerdId herd = place.herd().herd;
  const CowId cow = find_cow(place.store, herd, "77", day("2026-09-29")).value();
  (void)give_number(place.ports(), herd, {cow, "412", day("2026-10-01")}, true).value();
  CHECK(asked(place.visited("2026-10-20", {"8 nothing found", "done"})).empty());
  CHECK(asked(place.visited("2026-10-27", {"412 nothing found", "done"})) ==
        std::vector<std::string>{
            "412: Two cows carry 412; taken for the one seen last. Which is it?"});
}

TEST_CASE("warnings nobody answered are asked before what was not called, Stops before Asks") {
  Workplace place;
  const VisitEnded ended = place.visited(
      "2026-10-27",
      {"299 LH sole ulcer; rest fine", "done", "301 lame LH; nothing found", "done",
       "412 LH outside sole ulcer middle, bad; block on outside", "rest fine", "done"});
  std::vector<std::string> kinds;
  for (const OpenPoint& point : ended.open) {
    const std::string rank(point.rank ? word_of(*point.rank) : "");
    kinds.push_back(std::string(word_of(point.kind)) + " " + rank + " " + point.cow_said);
  }
  CHECK(kinds == std::vector<std::string>{"unanswered stop 301", "unanswered stop 412",
                                          "place_not_called  299", "degree_not_called  299"});
}

TEST_CASE("who is joined with a cow of before is asked about what is on that one's feet") {
  Workplace place;
  (void)place.visited("2026-09-29", {"301 LH outside bruise heel, bad; block on inside; wrap on",
                                     "RH wrap on", "rest fine", "done"});
  const Visit visit = place.start("2026-10-27");
  Recording recording = place.record(visit);
  (void)recording
      .say_all(std::vector<std::string>{"301?", "RH wrap off, nothing found", "rest fine", "done"})
      .value();
  const HerdId herd = place.herd().herd;
  const CowId known = find_cow(place.store, herd, "301", visit.day).value();
  const CowId called = find_cow(place.store, herd, "301?", visit.day).value();
  (void)unite_cows(place.ports(), herd, known, called, false).value();
  const std::vector<std::string> open = asked(end_visit(place.ports(), visit, english()).value());
  CHECK(open == std::vector<std::string>{"301: block on left hind inside since 29 Sep: still on?",
                                         "301: wrap on left hind since 29 Sep: still on?"});
}

TEST_CASE("off and still on are told of one cow when two were joined") {
  Workplace place;
  (void)place.visited("2026-09-29", {"301 LH DD raw behind; wrap on", "rest fine", "done"});
  const Visit visit = place.start("2026-10-27");
  Recording recording = place.record(visit);
  (void)recording
      .say_all(
          std::vector<std::string>{"301 wrap off", "301?", "LH wrap still on", "rest fine", "done"})
      .value();
  const HerdId herd = place.herd().herd;
  const CowId known = find_cow(place.store, herd, "301", visit.day).value();
  const CowId called = find_cow(place.store, herd, "301?", visit.day).value();
  (void)unite_cows(place.ports(), herd, known, called, false).value();
  const ClosingState state = closing_state(place.store, visit).value();
  CHECK(std::any_of(state.open.begin(), state.open.end(), [](const OpenPoint& point) {
    return point.kind == OpenPointKind::told_two_ways &&
           point.words == "Wrap on left hind: said to be off, and to be still on. Which is right?";
  }));
}

TEST_CASE("news told plainly of one of two joined cows settles what was asked of the other") {
  Workplace place;
  (void)place.visited("2026-09-29", {"301 LH DD raw behind; wrap on", "RH DD raw behind; wrap on",
                                     "rest fine", "601 nothing found", "done"});
  const Visit visit = place.start("2026-10-27");
  Recording recording = place.record(visit);
  (void)recording.say("301 wrap off").value();
  const HerdId herd = place.herd().herd;
  const CowId known = find_cow(place.store, herd, "301", visit.day).value();
  const CowId other = find_cow(place.store, herd, "601", visit.day).value();
  (void)unite_cows(place.ports(), herd, known, other, true).value();
  (void)take_news(place.ports(), place.herd(), visit.day, "601 wrap off LH", english()).value();
  const ClosingState state = closing_state(place.store, visit).value();
  CHECK(std::none_of(state.open.begin(), state.open.end(), [](const OpenPoint& point) {
    return point.kind == OpenPointKind::news_unclear;
  }));
}

TEST_CASE("a doubt that calling her again settles is settled so at the end of the visit as well") {
  for (const EnumWord<DoubtKind>& doubt : EnumWords<DoubtKind>::table) {
    CAPTURE(doubt.word);
    const auto point = enum_of<OpenPointKind>(doubt.word);
    REQUIRE(point);
    CHECK(is_answered_by_calling(*point) == is_answered_by_calling(doubt.value));
  }
  CHECK(is_answered_by_calling(OpenPointKind::place_not_called));
  CHECK_FALSE(is_answered_by_calling(OpenPointKind::called_twice));
  CHECK_FALSE(is_answered_by_calling(OpenPointKind::due_not_seen));
}

}  // namespace evenclaw::test
