#include "core/api/cow_register.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/api/identities.hpp"
#include "core/api/show.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

struct Register {
  Workplace place;

  [[nodiscard]] HerdId herd() { return place.herd().herd; }

  Result<EntryId> enter(std::string number, const CowDetails& details, bool sure = false) {
    return register_cow(place.ports(), herd(), {std::move(number), day("2026-10-01"), {}}, details,
                        sure);
  }

  [[nodiscard]] std::string slug(std::string number, const CowDetails& details) {
    const auto entered = enter(std::move(number), details);
    return entered ? "" : entered.faults().front().slug;
  }

  [[nodiscard]] std::string found(std::string_view said) {
    const auto shown = show_cow(place.store, herd(), said, day("2026-10-27"));
    return shown ? shown->cow_said : shown.faults().front().slug;
  }
};

CowDetails pair(std::string tag, std::string electronic) {
  CowDetails details;
  details.tag = std::move(tag);
  details.electronic = std::move(electronic);
  return details;
}

const CowDetails of_412 = pair("UK 123450 600001", "826 000000600001");

}  // namespace

TEST_CASE("a registered cow is found by number, ear tag, electronic number and other name") {
  Register list;
  CowDetails details = of_412;
  details.alias = "Bella";
  REQUIRE(list.enter("0412", details));
  CHECK(list.found("412") == "412");
  CHECK(list.found("uk 123450 600001") == "412");
  CHECK(list.found("826000000600001") == "412");
  CHECK(list.found("bella") == "412");
  CHECK(list.found("UK 123450 700002") == "cow-not-found");
}

TEST_CASE("a cow may be registered by her tag alone and is called by it") {
  Register list;
  REQUIRE(list.enter("", pair("DE 03 123 12345", "")));
  CHECK(list.found("DE312312345") == "DE0312312345");
}

TEST_CASE("two tablets register the same cow, whatever zeros are typed") {
  Register one;
  Register two;
  const auto id_of = [](Register& list) {
    return find_cow(list.place.store, list.herd(), "DE312312345", day("2026-10-27")).value();
  };
  REQUIRE(one.enter("412", pair("DE 0312312345", "")));
  REQUIRE(two.enter("0412", pair("DE 312312345", "")));
  CHECK(one.herd() == two.herd());
  CHECK(id_of(one) == id_of(two));
}

TEST_CASE("every fault of what was typed is told") {
  Register list;
  CowDetails wrong = pair("UK 123456 600001", "826284205700016");
  wrong.born = day("2026-10-02");
  const auto entered = list.enter("412", wrong);
  REQUIRE_FALSE(entered);
  REQUIRE(entered.faults().size() == 3);
  CHECK(entered.faults()[0].slug == "tag-unreadable");
  CHECK(entered.faults()[1].slug == "electronic-number-unreadable");
  CHECK(entered.faults()[2].slug == "date-in-future");
}

TEST_CASE("a cow that nothing identifies is not registered") {
  Register list;
  CHECK(list.slug("", CowDetails{}) == "usage");
}

TEST_CASE("fifteen digits are no herd number") {
  Register list;
  CHECK(list.slug("826000000600001", CowDetails{}) == "usage");
  REQUIRE(list.enter("412", of_412));
  const CowId cow = find_cow(list.place.store, list.herd(), "412", day("2026-10-27")).value();
  const auto given = give_number(list.place.ports(), list.herd(),
                                 {cow, "826000000600001", day("2026-10-27")}, false);
  REQUIRE_FALSE(given);
  CHECK(given.faults().front().slug == "usage");
}

TEST_CASE("a tag, an electronic number or a number another cow carries is asked about") {
  Register list;
  REQUIRE(list.enter("412", of_412));
  CHECK(list.slug("413", pair("UK123450600001", "")) == "answer-needed");
  CHECK(list.slug("413", pair("", "826000000600001")) == "answer-needed");
  CHECK(list.slug("0412", CowDetails{}) == "answer-needed");
  CHECK(list.enter("412", pair("", "826000000600002"), true));
}

TEST_CASE("a number that had ended before is not asked about") {
  Register list;
  REQUIRE(register_cow(list.place.ports(), list.herd(),
                       {"412", day("2026-01-01"), day("2026-03-31")}, {}, false));
  CHECK(list.slug("412", of_412).empty());
}

TEST_CASE("a number for trying a reader out is asked about") {
  Register list;
  CHECK(list.slug("412", pair("", "999000000000001")) == "answer-needed");
}

TEST_CASE("more is told of a cow that is known, and it adds up") {
  Register list;
  REQUIRE(list.enter("412", pair("UK 123450 600001", "")));
  const CowId cow = find_cow(list.place.store, list.herd(), "412", day("2026-10-27")).value();
  CowDetails more;
  more.electronic = "826000000600001";
  more.breed = " Jersey ";
  more.weight = WeightClass::under_400_kg;
  REQUIRE(tell_of_cow(list.place.ports(), list.herd(), {cow, day("2026-10-27"), more}, false));
  const CowShown shown = show_cow(list.place.store, list.herd(), "412", day("2026-10-27")).value();
  REQUIRE(shown.tags.size() == 1);
  CHECK(shown.tags[0].tag == "UK123450600001");
  CHECK(shown.tags[0].electronic == "826000000600001");
  REQUIRE(shown.facts.size() == 1);
  CHECK(shown.facts[0].breed == "Jersey");
  CHECK(shown.numbers.size() == 1);
}

TEST_CASE("calving, lactation and drying off are kept, and what is told later holds") {
  Register list;
  REQUIRE(list.enter("412", of_412));
  const CowId cow = find_cow(list.place.store, list.herd(), "412", day("2026-10-27")).value();
  CowDetails first;
  first.calved = day("2026-09-01");
  first.lactation = 3;
  first.dry_off = day("2027-06-20");
  CowDetails later;
  later.dry_off = day("2027-07-01");
  later.due_to_calve = day("2027-08-29");
  REQUIRE(tell_of_cow(list.place.ports(), list.herd(), {cow, day("2026-10-27"), first}, false));
  REQUIRE(tell_of_cow(list.place.ports(), list.herd(), {cow, day("2026-11-27"), later}, false));
  const CowShown shown = show_cow(list.place.store, list.herd(), "412", day("2026-11-27")).value();
  REQUIRE(shown.facts.size() == 1);
  CHECK(shown.facts[0].calved == day("2026-09-01"));
  CHECK(shown.facts[0].lactation == 3);
  CHECK(shown.facts[0].dry_off == day("2027-07-01"));
  CHECK(shown.facts[0].due_to_calve == day("2027-08-29"));
}

TEST_CASE("a calving that is still to come is none, and an expected one is not past") {
  Register list;
  CowDetails details;
  details.calved = day("2026-10-02");
  CHECK(list.slug("412", details) == "date-in-future");
  CowDetails expected;
  expected.due_to_calve = day("2026-09-30");
  CHECK(list.slug("412", expected) == "usage");
}

TEST_CASE("nothing told of a known cow is nothing to record") {
  Register list;
  REQUIRE(list.enter("412", of_412));
  const CowId cow = find_cow(list.place.store, list.herd(), "412", day("2026-10-27")).value();
  const auto told =
      tell_of_cow(list.place.ports(), list.herd(), {cow, day("2026-10-27"), {}}, false);
  REQUIRE_FALSE(told);
  CHECK(told.faults().front().slug == "usage");
}

TEST_CASE("a British tag is shown in the groups in which it is printed") {
  CHECK(tag_as_printed("UK123450600001") == "UK 123450 600001");
  CHECK(tag_as_printed("DE0312312345") == "DE 0312312345");
}

}  // namespace evenclaw::test
