#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "core/api/identities.hpp"
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
      "2026-10-27", {"299 LH sole ulcer", "done", "301 lame LH; nothing found", "done",
                     "412 LH outside sole ulcer middle, bad; block on outside", "done"});
  std::vector<std::string> kinds;
  for (const OpenPoint& point : ended.open) {
    const std::string rank(point.rank ? word_of(*point.rank) : "");
    kinds.push_back(std::string(word_of(point.kind)) + " " + rank + " " + point.cow_said);
  }
  CHECK(kinds == std::vector<std::string>{"unanswered stop 301", "unanswered stop 412",
                                          "place_not_called  299", "degree_not_called  299"});
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
