#include "core/api/recording/cow_finder.hpp"

#include <doctest/doctest.h>

#include "core/api/cow_register.hpp"
#include "core/api/identities.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

/// 412 with her tag, 413, and 77 who was said to be gone on 20 October.
struct Herdbook {
  Workplace place;

  Herdbook() {
    (void)place.visited("2026-10-13",
                        {"412 nothing found", "413 nothing found", "77 nothing found", "done"});
    (void)place.visited("2026-10-20", {"77 gone"});
    CowDetails details;
    details.electronic = "826000000600001";
    REQUIRE(tell_of_cow(place.ports(), place.herd().herd, {cow("412"), day("2026-10-01"), details},
                        false)
                .ok());
  }

  [[nodiscard]] CowId cow(std::string_view number) {
    return find_cow(place.store, place.herd().herd, number, day("2026-10-13")).value();
  }

  [[nodiscard]] CowFinder finder(std::string_view on) {
    const Visit visit = place.start(on);
    return CowFinder::open(place.store, {visit.herd, visit.visit, day(on), place.business.device})
        .value();
  }
};

CowSaid said(std::string number) {
  CowSaid cow;
  cow.number = std::move(number);
  return cow;
}

}  // namespace

TEST_CASE("a number is the cow that carries it, zeros before it or not") {
  Herdbook book;
  const CowFinder finder = book.finder("2026-10-27");
  CHECK(finder.find(said("0412")).cow == book.cow("412"));
  CHECK(finder.find(said("412")).question.empty());
  CHECK_FALSE(finder.carrier("499"));
}

TEST_CASE("who was said to be gone is taken for a new cow, and asked about") {
  Herdbook book;
  const CowFinder finder = book.finder("2026-10-27");
  const CowFound found = finder.find(said("77"));
  CHECK(found.cow != book.cow("77"));
  CHECK(found.question ==
        "77 was said to be gone on 20 Oct; taken for a new cow. Is she the same?");
}

TEST_CASE("of a day that is recorded late she is known by the number of a later visit") {
  Herdbook book;
  CHECK(book.finder("2026-10-01").find(said("413")).cow == book.cow("413"));
}

TEST_CASE("what a reader gave is the cow in whose ear it is, by her herd number") {
  Herdbook book;
  const CowFinder finder = book.finder("2026-10-27");
  CHECK(finder.as_read(said("826000000600001")) == said("412"));
  const CowSaid nobody = finder.as_read(said("826000000600002"));
  CHECK(nobody.known == CowKnown::unnumbered);
  CHECK(nobody.looks == "826000000600002");
  CHECK(finder.as_read(said("413")) == said("413"));
}

TEST_CASE("a cow without a sure number is never united with a known one") {
  Herdbook book;
  CowFinder finder = book.finder("2026-10-27");
  CowSaid heifer;
  heifer.known = CowKnown::unnumbered;
  heifer.looks = "brown heifer";
  const CowId first = finder.find(heifer).cow;
  CHECK(finder.find(heifer).cow == first);
  finder.now_known(first, heifer);
  CHECK(finder.find(heifer).cow != first);
}

TEST_CASE("a number that was misheard is forgotten with the cow that never was") {
  Herdbook book;
  CowFinder finder = book.finder("2026-10-27");
  const CowId misheard = finder.find(said("499")).cow;
  finder.now_known(misheard, said("499"));
  CHECK(finder.carrier("499") == misheard);
  finder.forget(misheard);
  CHECK_FALSE(finder.carrier("499"));
}

TEST_CASE("slips of a number are told of cows that are here, and not of one that is gone") {
  Herdbook book;
  const CowFinder finder = book.finder("2026-10-27");
  const auto slips = finder.slips_of("142");
  REQUIRE(slips.size() == 1);
  CHECK(slips.front().second == "412");
  CHECK(finder.slips_of("7").empty());
}

}  // namespace evenclaw::test
