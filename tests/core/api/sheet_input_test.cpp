#include "core/api/sheet_input.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "core/api/products.hpp"
#include "core/api/sheet.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw::test {

namespace {

std::string sheet_on(Workplace& place, const Visit& visit, std::string_view today) {
  return make_sheet(place.ports(), visit, day(today), {"0.1", {}}).value().text;
}

/// 522 is given something of no list on Monday 2 November.
void given_something(Workplace& place) {
  place.clock.set(day("2026-11-02"));
  (void)place.visited(
      "2026-11-02", {"522 routine", "LH DD raw; given mystery by the farmer", "rest fine", "done"});
  place.clock.set(day("2026-11-06"));
}

std::string next_sheet(Workplace& place, const std::vector<std::string>& lines) {
  const Visit visit = place.visited("2026-11-06", lines).visit;
  return sheet_on(place, visit, "2026-11-06");
}

void listed(Workplace& place, const std::string& name, std::string_view milk,
            std::optional<std::int32_t> meat) {
  Product product;
  product.name = name;
  product.labelled = Labelled::yes;
  if (!milk.empty()) product.milk = withdrawal_from_text(milk);
  product.meat_days = meat;
  product.stated_by = StatedBy::label;
  REQUIRE(list_product(place.ports(), place.herd().herd, product, day("2026-10-01"), false).ok());
}

}  // namespace

TEST_CASE("a medicine nobody stated a withdrawal of stays under ask first on the next sheet") {
  const std::vector<std::vector<std::string>> rows = {{"522 recheck; nothing found", "done"},
                                                      {"12 nothing found", "done"}};
  for (const auto& lines : rows) {
    Workplace place;
    given_something(place);
    const std::string sheet = next_sheet(place, lines);
    CHECK_MESSAGE(holds(sheet, "MILK AND MEAT: ASK FIRST"), sheet);
    CHECK_MESSAGE(holds(sheet, "# 522  Medicine given (farmer) (mystery), on Mon 2 Nov."), sheet);
    CHECK_MESSAGE(holds(sheet, "no withdrawal was recorded"), sheet);
  }
}

TEST_CASE("no withdrawal told of her at the next visit answers what was left open") {
  Workplace place;
  given_something(place);
  const std::string sheet =
      next_sheet(place, {"522 recheck; no withdrawal; nothing found", "done"});
  CHECK_MESSAGE(!holds(sheet, "mystery"), sheet);
}

TEST_CASE("an end told at the next visit is told with what was given before") {
  Workplace place;
  given_something(place);
  const std::string sheet =
      next_sheet(place, {"522 recheck; withdrawal 5d; nothing found", "done"});
  CHECK_MESSAGE(holds(sheet, "NOT FOR SALE"), sheet);
  CHECK_MESSAGE(holds(sheet, "(mystery)"), sheet);
  CHECK_MESSAGE(!holds(sheet, "ASK FIRST"), sheet);
}

TEST_CASE("of a cow who was sold the buyer is told, of one who died nobody is asked any more") {
  for (const auto& [told, is_told] : {std::pair("522 sold", true), std::pair("522 died", false)}) {
    Workplace place;
    given_something(place);
    (void)place.visited("2026-11-05", {told, "12 nothing found", "done"});
    const std::string sheet = next_sheet(place, {"13 nothing found", "done"});
    CHECK_MESSAGE(holds(sheet, "# 522  Sold, Thu 5 Nov: tell the buyer.") == is_told, sheet);
    CHECK(holds(sheet, "mystery") == is_told);
  }
}

TEST_CASE("an end of withdrawal goes with a cow who was sold at the gate, until it is over") {
  Workplace place;
  place.clock.set(day("2026-11-02"));
  (void)place.visited("2026-11-02", {"522 nothing found; injected; milk 2d, meat 10d", "done"});
  place.clock.set(day("2026-11-03"));
  const std::string sheet =
      sheet_on(place, place.visited("2026-11-03", {"522 sold", "12 nothing found", "done"}).visit,
               "2026-11-03");
  CHECK_MESSAGE(holds(sheet, "Sold, Tue 3 Nov: tell the buyer."), sheet);
  CHECK_MESSAGE(holds(sheet, "Last milk held back: Wed 4 Nov evening"), sheet);
  CHECK_MESSAGE(holds(sheet, "Last day meat held back: Thu 12 Nov"), sheet);
  place.clock.set(day("2026-11-13"));
  const Visit later = place.visited("2026-11-13", {"13 nothing found", "done"}).visit;
  CHECK_FALSE(holds(sheet_on(place, later, "2026-11-13"), "522"));
}

TEST_CASE("a cow whose milk is over and whose meat nobody knows is to be asked of") {
  struct Case {
    const char* line;
    const char* not_known;
  };

  const Case rows[] = {{"522 LH DD raw; paste with meatonly", "milk"},
                       {"522 LH DD raw; milk 2d", "meat"}};
  for (const Case& row : rows) {
    Workplace place;
    listed(place, "meatonly", "", 3);
    place.clock.set(day("2026-11-02"));
    const Visit first = place.visited("2026-11-02", {row.line, "rest fine", "done"}).visit;
    const std::string near = std::string(row.not_known) + " withdrawal not known";
    CHECK_MESSAGE(holds(sheet_on(place, first, "2026-11-02"), near), row.line);
    place.clock.set(day("2026-11-13"));
    const Visit next = place.visited("2026-11-13", {"12 nothing found", "done"}).visit;
    const std::string sheet = sheet_on(place, next, "2026-11-13");
    const std::string her = "Her " + std::string(row.not_known) + ": withdrawal not known";
    CHECK_MESSAGE(holds(sheet, her), sheet);
    CHECK_MESSAGE(!holds(sheet, "Its time is over"), sheet);
    CHECK_MESSAGE(holds(sheet, "522  " + near), sheet);
  }
}

TEST_CASE("of a cow treated twice the later end of her meat is told alone") {
  Workplace place;
  listed(place, "strongmix", "2d", 28);
  place.clock.set(day("2026-10-05"));
  (void)place.visited("2026-10-05", {"522 LH DD raw; paste with strongmix", "rest fine", "done"});
  place.clock.set(day("2026-11-02"));
  const Visit next =
      place.visited("2026-11-02", {"522 LH DD raw; paste with strongmix", "rest fine", "done"})
          .visit;
  const std::string sheet = sheet_on(place, next, "2026-11-02");
  CHECK_MESSAGE(holds(sheet, "Last day meat held back: Mon 30 Nov"), sheet);
  CHECK_MESSAGE(!holds(sheet, "Last day meat held back: Mon 2 Nov"), sheet);
}

TEST_CASE("the vet's table and the lines of the visit name the end that holds") {
  Workplace place;
  listed(place, "whitemix", "48h", 5);
  place.clock.set(day("2026-11-02"));
  const Visit visit =
      place
          .visited("2026-11-02",
                   {"525 LH DD raw; spray with whitemix; milk 8 milkings; meat withheld 3d",
                    "rest fine", "537 LH DD raw; spray with whitemix by the vet; withdrawal 10d",
                    "rest fine", "done"})
          .visit;
  const std::string sheet = sheet_on(place, visit, "2026-11-02");
  CHECK_MESSAGE(holds(sheet, "Last milk held back: Fri 6 Nov evening"), sheet);
  const std::string lines = make_sheet_lines(place.ports(), visit, day("2026-11-02")).value().csv;
  CHECK_MESSAGE(lines.find("2026-11-04") == std::string::npos, lines);
  CHECK_MESSAGE(holds(lines, "2026-11-07"), lines);
  CHECK_MESSAGE(holds(lines, "held_back,2026-11-06,evening,2026-11-07"), lines);
}

TEST_CASE("a cow with fever and a sore mouth who is sold stays in the vet's box") {
  Workplace place;
  place.clock.set(day("2026-11-02"));
  (void)place.visited("2026-11-02", {"801 fever; sore mouth", "rest fine", "done"});
  place.clock.set(day("2026-11-06"));
  const std::string sheet = next_sheet(place, {"801 sold", "12 nothing found", "done"});
  CHECK_MESSAGE(holds(sheet, "tell the buyer and the authority"), sheet);
  CHECK_MESSAGE(holds(sheet, "ould be notifiable"), sheet);
}

TEST_CASE("an end off label below the law's floor is not over at the next visit") {
  Workplace place;
  Product product;
  product.name = "strongmix";
  product.labelled = Labelled::no;
  product.milk = withdrawal_from_text("2d");
  product.meat_days = 5;
  product.stated_by = StatedBy::vet;
  REQUIRE(list_product(place.ports(), place.herd().herd, product, day("2026-10-01"), false).ok());
  place.clock.set(day("2026-10-27"));
  (void)place.visited("2026-10-27", {"803 LH DD raw; spray with strongmix", "go ahead", "rest fine",
                                     "802 LH DD raw; spray with strongmix", "rest fine", "done"});
  place.clock.set(day("2026-11-06"));
  const std::string sheet =
      next_sheet(place, {"803 recheck; nothing found", "12 nothing found", "done"});
  CHECK_MESSAGE(holds(sheet, "at least 28 days meat"), sheet);
  CHECK_MESSAGE(holds(sheet, "803"), sheet);
  CHECK_MESSAGE(holds(sheet, "802"), sheet);
  CHECK_MESSAGE(!holds(sheet, "Sun 1 Nov, its time is over"), sheet);
}

TEST_CASE("foul found again is for the vet though he was told at the gate to have come") {
  Workplace place;
  place.clock.set(day("2026-11-02"));
  (void)place.visited("2026-11-02", {"522 LH foul; vet", "rest fine", "done"});
  place.clock.set(day("2026-11-06"));
  const std::string sheet =
      next_sheet(place, {"522 vet came", "522 recheck", "LH foul", "rest fine", "done"});
  CHECK_MESSAGE(holds(sheet, "# 522  Left hind, foul"), sheet);
}

TEST_CASE("a cow who was not done for she went down is told of with reason and sign") {
  Workplace place;
  place.clock.set(day("2026-11-06"));
  const std::string sheet = next_sheet(place, {"522 not done, went down in the crush", "done"});
  CHECK_MESSAGE(holds(sheet, "# 522  The cow, not done: went down in the crush"), sheet);
  CHECK_MESSAGE(holds(sheet, "- 522 not done: went down in the crush."), sheet);
}

TEST_CASE("a refused line that may tell of a sign is asked about in the vet's box") {
  Workplace place;
  place.clock.set(day("2026-11-06"));
  const std::string sheet = next_sheet(
      place, {"522 LH outside SU", "RH blisterss and blisters foo", "rest fine", "done"});
  CHECK_MESSAGE(holds(sheet, "Ask the trimmer today what was meant"), sheet);
}

TEST_CASE("blisters of one foot stand in its line, and the foot counts as lifted") {
  Workplace place;
  place.clock.set(day("2026-11-06"));
  const std::string sheet = next_sheet(place, {"522 lame RH", "RH blisters", "rest fine", "done"});
  CHECK_MESSAGE(holds(sheet, "Right hind: Blisters."), sheet);
  CHECK_MESSAGE(!holds(sheet, "not lifted"), sheet);
  CHECK_MESSAGE(!holds(sheet, "nobody said what was found"), sheet);
}

}  // namespace evenclaw::test
