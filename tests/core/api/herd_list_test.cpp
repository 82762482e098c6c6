#include "core/api/herd_list.hpp"

#include <doctest/doctest.h>

#include "core/api/identities.hpp"
#include "core/api/show.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

using Lines = std::vector<std::string>;

struct Listed {
  Workplace place;

  [[nodiscard]] HerdId herd() { return place.herd().herd; }

  Result<HerdListTaken> take(const Lines& lines, bool sure = false,
                             std::string_view from = "2026-10-27") {
    return take_herd_list(place.ports(), herd(), lines, day(from), sure);
  }

  /// "2 entered, 1 told more, 0 unchanged".
  std::string counts(const Lines& lines, bool sure = false) {
    const auto taken = take(lines, sure);
    if (!taken) return taken.faults().front().message;
    return std::to_string(taken->entered) + " entered, " + std::to_string(taken->told_more) +
           " told more, " + std::to_string(taken->unchanged) + " unchanged";
  }

  /// "3 answer-needed": line and slug of each fault.
  Lines refused(const Lines& lines) {
    Lines told;
    const auto taken = take(lines);
    if (taken) return told;
    for (const Fault& fault : taken.faults()) {
      told.push_back(std::to_string(fault.line) + ' ' + fault.slug);
    }
    return told;
  }

  CowShown shown(std::string_view said) {
    return show_cow(place.store, herd(), said, day("2026-10-27")).value();
  }

  [[nodiscard]] std::size_t entries() {
    std::size_t count = 0;
    (void)place.store.read_entries({}, [&](const Entry&) {
      ++count;
      return true;
    });
    return count;
  }
};

const Lines two_cows = {"number;tag;breed;calved;lactation",
                        "0412;UK 123450 600001;Jersey;2026-09-01;3", "413;;Jersey;;0"};

}  // namespace

TEST_CASE("cows nobody has recorded are entered with all that the list tells of them") {
  Listed herd;
  CHECK(herd.counts(two_cows) == "2 entered, 0 told more, 0 unchanged");
  const CowShown cow = herd.shown("412");
  REQUIRE(cow.facts.size() == 1);
  CHECK(cow.cow.number_said == "0412");
  CHECK(cow.tags.at(0).tag == "UK123450600001");
  CHECK(cow.facts[0].breed == "Jersey");
  CHECK(cow.facts[0].calved == day("2026-09-01"));
  CHECK(cow.facts[0].lactation == 3);
  CHECK(herd.shown("413").facts.at(0).heifer_or_cow == HeiferOrCow::heifer);
}

TEST_CASE("the same list again changes nothing and writes nothing") {
  Listed herd;
  REQUIRE(herd.take(two_cows).ok());
  const std::size_t before = herd.entries();
  CHECK(herd.counts(two_cows) == "0 entered, 0 told more, 2 unchanged");
  CHECK(herd.entries() == before);
}

TEST_CASE("of a cow that was in the crush more is told, and what the list leaves empty stays") {
  Listed herd;
  (void)herd.place.visited("2026-10-13", {"412 LH outside sole ulcer", "rest fine", "done"});
  REQUIRE(herd.take(two_cows).ok());
  CHECK(herd.counts({"number;breed;lactation", "412;;4"}) == "0 entered, 1 told more, 0 unchanged");
  const CowShown cow = herd.shown("412");
  CHECK(cow.facts.at(0).breed == "Jersey");
  CHECK(cow.facts.at(0).lactation == 4);
  CHECK(cow.turns.size() == 1);
}

TEST_CASE("a list that is older than her first visit still means her by her number") {
  Listed herd;
  (void)herd.place.visited("2026-10-13", {"412 nothing found", "done"});
  const auto taken = herd.take({"number;breed", "412;Jersey"}, false, "2026-09-01");
  CHECK(taken.value().told_more == 1);
  CHECK(herd.shown("412").turns.size() == 1);
}

TEST_CASE("a cow registered by her tag gets the number of the list") {
  Listed herd;
  REQUIRE(herd.take({"tag", "UK 123450 600001"}).ok());
  CHECK(herd.counts({"tag;number", "UK 123450 600001;412"}) ==
        "0 entered, 1 told more, 0 unchanged");
  CHECK(herd.shown("412").tags.at(0).tag == "UK123450600001");
}

TEST_CASE("with one bad line nothing of the list is taken over") {
  Listed herd;
  Lines lines = two_cows;
  lines.emplace_back("414;;;2026-13-01;");
  CHECK(herd.refused(lines) == Lines{"4 list-unreadable"});
  CHECK_FALSE(show_cow(herd.place.store, herd.herd(), "412", day("2026-10-27")).ok());
}

TEST_CASE("every question is asked at once, with its line, and sure answers all") {
  Listed herd;
  REQUIRE(herd.take(two_cows).ok());
  (void)herd.place.visited("2026-10-20", {"77 nothing found", "done"});
  (void)herd.place.visited("2026-10-21", {"77 gone"});
  const Lines other = {"number;tag;eid;calved", "418;UK 123450 600001;;", "413;;999000000000001;",
                       "77;;;", "412;;;2026-08-01"};
  CHECK(herd.refused({other[0], other[1], other[2], other[3]}) ==
        Lines{"2 answer-needed", "3 answer-needed", "4 answer-needed"});
  CHECK(herd.refused({other[0], other[4]}) == Lines{"2 answer-needed"});
  CHECK(herd.counts({other[0], other[1], other[2], other[3]}, true) ==
        "1 entered, 2 told more, 0 unchanged");
  CHECK(herd.shown("418").tags.at(0).tag == "UK123450600001");
}

TEST_CASE("a line that names two known cows is refused, however sure") {
  Listed herd;
  REQUIRE(herd.take({"number;tag", "412;UK 123450 600001", "413;"}).ok());
  const auto taken = herd.take({"number;tag", "413;UK 123450 600001"}, true);
  REQUIRE_FALSE(taken.ok());
  CHECK(taken.faults().front().slug == "list-unreadable");
  CHECK(taken.faults().front().line == 2);
  CHECK(taken.faults().front().message.find("412 and 413") != std::string::npos);
}

TEST_CASE("a birth after the day from which the list holds is told with its line") {
  Listed herd;
  CHECK(herd.refused({"number;born", "412;2026-10-28"}) == Lines{"2 date-in-future"});
}

}  // namespace evenclaw::test
