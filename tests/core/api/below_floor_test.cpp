#include "core/api/below_floor.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/api/due.hpp"
#include "core/api/products.hpp"
#include "core/api/sheet.hpp"
#include "core/api/task_calendar.hpp"
#include "core/api/told.hpp"
#include "core/base/text.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

using Lines = std::vector<std::string>;

/// Off label the law's floor of a product without a period is 7 days milk and 28 days meat
/// (core/trade/medicine_rules.hpp).
void put_on_list(Workplace& place, Labelled labelled, std::string_view milk, std::int32_t meat) {
  Product product;
  product.name = "bluemix";
  product.labelled = labelled;
  product.milk = withdrawal_from_text(milk);
  product.meat_days = meat;
  product.stated_by = StatedBy::vet;
  REQUIRE(list_product(place.ports(), place.herd().herd, product, day("2026-10-01"), true).ok());
}

void sprayed(Workplace& place) {
  (void)place.visited("2026-10-27", {"412 LH DD chronic behind; spray with bluemix", "rest fine",
                                     "go ahead", "done"});
}

/// The ends of withdrawal on the list of that day.
Lines held_back(Workplace& place, std::string_view on) {
  Lines lines;
  for (const DueTask& task : list_due(place.store, place.herd().herd, day(on)).value().tasks) {
    if (task.kind != TaskKind::withdrawal_end) continue;
    lines.push_back(std::string(word_of(task.state)) + ' ' + to_text(task.due) + ' ' + task.words);
  }
  return lines;
}

const std::string milk_floor =
    "2026-11-03 off label the law's floor is at least 7 days milk (milk held back up to and with "
    "the evening milking of Tue 3 Nov); ask the vet before anything is sold";
const std::string meat_floor =
    "2026-11-24 off label the law's floor is at least 28 days meat (meat held back up to and with "
    "Tue 24 Nov); ask the vet before anything is sold";

}  // namespace

TEST_CASE("an end told below the law's floor off label stays due until the floor has passed") {
  Workplace place;
  put_on_list(place, Labelled::no, "2d", 5);
  sprayed(place);
  CHECK(held_back(place, "2026-10-28") == Lines{"due " + milk_floor, "due " + meat_floor});
  CHECK(held_back(place, "2026-11-03").front() == "due " + milk_floor);
  CHECK(held_back(place, "2026-11-24").front() == "due " + meat_floor);
  const Lines after = held_back(place, "2026-11-25");
  REQUIRE(after.size() == 2);
  CHECK(after.back() == "overdue 2026-11-01 last day meat held back: Sun 1 Nov");
}

TEST_CASE("a product off label of which the list states none is due until the floor as well") {
  Workplace place;
  put_on_list(place, Labelled::no, "0d", 0);
  sprayed(place);
  CHECK(held_back(place, "2026-10-28") == Lines{"due " + milk_floor, "due " + meat_floor});
  CHECK(held_back(place, "2026-11-25").empty());
}

TEST_CASE("no floor holds for a labelled product, nor where no less is stated") {
  Workplace labelled;
  put_on_list(labelled, Labelled::yes, "2d", 5);
  sprayed(labelled);
  CHECK(held_back(labelled, "2026-10-28").front() ==
        "due 2026-10-29 last milk held back: Thu 29 Oct evening");
  Workplace longer;
  put_on_list(longer, Labelled::no, "7d", 28);
  sprayed(longer);
  CHECK(held_back(longer, "2026-10-28").front() ==
        "due 2026-11-03 last milk held back: Tue 3 Nov evening");
}

TEST_CASE("a cow who was sold takes the floor with her, a dead one does not") {
  Workplace place;
  put_on_list(place, Labelled::no, "2d", 5);
  sprayed(place);
  (void)take_news(place.ports(), place.herd(), day("2026-11-10"), "412 sold", english()).value();
  const Lines sold = held_back(place, "2026-11-12");
  REQUIRE(sold.size() == 1);
  CHECK(sold.front().rfind("due " + meat_floor, 0) == 0);
}

TEST_CASE("the floor stands on the paper and in the calendar too, without the product there") {
  Workplace place;
  put_on_list(place, Labelled::no, "2d", 5);
  sprayed(place);
  const auto paper =
      make_due_sheet(place.store, place.herd(), day("2026-11-10"), {"test", {}}).value();
  CHECK(paper.text.find("28 days meat") != std::string::npos);
  const std::string file =
      task_calendar(place.ports(), place.herd(), std::nullopt, day("2026-11-10")).value().file;
  CHECK(file.find("DTSTART;VALUE=DATE:20261124") != std::string::npos);
  CHECK(file.find("bluemix") == std::string::npos);
}

TEST_CASE("products once listed below the law's floor are known with the days it asks") {
  Workplace place;
  put_on_list(place, Labelled::no, "2d", 5);
  const auto below = products_below_floor(place.store, place.herd().herd).value();
  REQUIRE(below.size() == 1);
  CHECK(below.begin()->second == 28);
}

}  // namespace evenclaw::test
