#include "core/api/products.hpp"

#include <doctest/doctest.h>

#include "core/api/people.hpp"
#include "core/api/tasks.hpp"
#include "core/trade/foot_rows.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

Product mix(std::string name, std::string_view milk = "2d", std::int32_t meat = 5) {
  Product product;
  product.name = std::move(name);
  product.labelled = Labelled::yes;
  product.milk = withdrawal_from_text(milk);
  product.meat_days = meat;
  product.stated_by = StatedBy::label;
  return product;
}

std::vector<std::string> names_on(Workplace& place, std::string_view on) {
  std::vector<std::string> names;
  const auto list = products_on(place.store, place.herd().herd, day(on)).value();
  for (const ListedProduct& listed : list) names.push_back(listed.product.name);
  return names;
}

void put(Workplace& place, const Product& product, std::string_view from = "2026-10-01") {
  REQUIRE(list_product(place.ports(), place.herd().herd, product, day(from), false).ok());
}

std::string slug_of(const Result<ProductShown>& listed) {
  return listed.ok() ? "" : listed.faults().front().slug;
}

using Names = std::vector<std::string>;

}  // namespace

TEST_CASE("a product stands on the herd's list from its day on, by name") {
  Workplace place;
  put(place, mix("tar"), "2026-10-05");
  put(place, mix("Bluemix"));
  CHECK(names_on(place, "2026-10-05") == Names{"Bluemix", "tar"});
  CHECK(names_on(place, "2026-10-04") == Names{"Bluemix"});
}

TEST_CASE("a herd's list is its own") {
  Workplace place;
  put(place, mix("tar"));
  const Herd other = place.herd("Hill Farm");
  CHECK(products_on(place.store, other.herd, day("2026-10-27")).value().empty());
}

TEST_CASE("what is stated anew holds from its day on, and what held before is known of then") {
  Workplace place;
  put(place, mix("tar", "2d"));
  put(place, mix("TAR", "9d"), "2026-10-20");
  const HerdId herd = place.herd().herd;
  const auto milk = [&](std::string_view on) {
    return products_on(place.store, herd, day(on)).value().front().product.milk->amount;
  };
  CHECK(milk("2026-10-19") == 2);
  CHECK(milk("2026-10-20") == 9);
}

TEST_CASE("a dropped product is off the list from that day on, and may come back") {
  Workplace place;
  put(place, mix("tar"));
  const HerdId herd = place.herd().herd;
  REQUIRE(drop_product(place.ports(), herd, "tar", day("2026-10-10")).ok());
  CHECK(names_on(place, "2026-10-09") == Names{"tar"});
  CHECK(names_on(place, "2026-10-10").empty());
  put(place, mix("tar"), "2026-10-12");
  CHECK(names_on(place, "2026-10-12") == Names{"tar"});
}

TEST_CASE("a product that nobody listed cannot be dropped, and the nearest is named") {
  Workplace place;
  put(place, mix("bluemix"));
  const auto dropped = drop_product(place.ports(), place.herd().herd, "bluemx", day("2026-10-27"));
  REQUIRE_FALSE(dropped.ok());
  CHECK(dropped.faults().front().slug == "product-not-found");
  CHECK(dropped.faults().front().remedy == "Did you mean bluemix?");
}

TEST_CASE("a name a slip away from a listed one is asked about before it is a product of its own") {
  Workplace place;
  put(place, mix("bluemix"));
  const HerdId herd = place.herd().herd;
  const Day today = day("2026-10-27");
  CHECK(slug_of(list_product(place.ports(), herd, mix("bluemx"), today, false)) == "answer-needed");
  CHECK(slug_of(list_product(place.ports(), herd, mix("bluemx"), today, true)).empty());
}

TEST_CASE("two products are never called alike") {
  Workplace place;
  Product first = mix("bluemix");
  first.also_called = {"blue"};
  put(place, first);
  CHECK(slug_of(list_product(place.ports(), place.herd().herd, mix("blue"), day("2026-10-27"),
                             true)) == "usage");
}

TEST_CASE("a product has a name that can be shown") {
  Workplace place;
  const HerdId herd = place.herd().herd;
  const Day today = day("2026-10-27");
  CHECK(slug_of(list_product(place.ports(), herd, mix(" "), today, false)) == "usage");
  CHECK(slug_of(list_product(place.ports(), herd, mix("two\nlines"), today, false)) == "usage");
}

TEST_CASE("the list names the vet who directs a product, and what is too short off label") {
  Workplace place;
  Product product = mix("strongmix");
  product.labelled = Labelled::no;
  product.directed_by = certain_person(place.ports(), "Dr Lee", false).value();
  put(place, product);
  const auto shown =
      list_products(place.ports(), place.herd().herd, day("2026-10-27")).value().front();
  CHECK(shown.vet == "Dr Lee");
  CHECK(shown.below_floor == "milk 2 days, at least 7 days; meat 5 days, at least 28 days");
}

TEST_CASE("a business that settled nothing is strict and without a country") {
  Workplace place;
  CHECK(local_law(place.store).value() == LocalLaw{});
}

TEST_CASE("country and allowed acts are settled for the business, and the last word holds") {
  Workplace place;
  REQUIRE(set_country(place.ports(), "gb").ok());
  REQUIRE(set_trimmer_may(place.ports(), ReservedAct::injection, true).ok());
  REQUIRE(set_trimmer_may(place.ports(), ReservedAct::surgery, true).ok());
  REQUIRE(set_trimmer_may(place.ports(), ReservedAct::surgery, false).ok());
  const LocalLaw law = local_law(place.store).value();
  CHECK(law.country == "GB");
  CHECK(law.trimmer_may == std::vector<ReservedAct>{ReservedAct::injection});
}

TEST_CASE("what is no country is refused") {
  Workplace place;
  CHECK_FALSE(set_country(place.ports(), "England").ok());
  CHECK_FALSE(set_country(place.ports(), "4B").ok());
  CHECK(set_country(place.ports(), "gb-nir").ok());
}

TEST_CASE("what was given stands on record with its end, and a later statement moves nothing") {
  Workplace place;
  put(place, mix("bluemix"));
  (void)place.visited("2026-10-27", {"412 LH DD raw behind; spray with Bluemix", "done"});
  put(place, mix("bluemix", "9d", 9));
  (void)place.visited("2026-10-27", {"412 RH DD raw behind; spray with tar", "done"});
  const auto rows = select_as<ActionRow>(place.store, place.herd().herd).value();
  REQUIRE(rows.size() == 2);
  const ActionRow& blue = rows[0].product == "tar" ? rows[1] : rows[0];
  const ActionRow& tar = rows[0].product == "tar" ? rows[0] : rows[1];
  CHECK(blue.listed == product_id(place.herd().herd, "bluemix"));
  CHECK(blue.withdrawal == WithdrawalKnown::held_back);
  CHECK(blue.milk_till == day("2026-10-29"));
  CHECK(blue.milk_milking == Milking::evening);
  CHECK(blue.meat_till == day("2026-11-01"));
  CHECK_FALSE(tar.listed);
  CHECK(tar.withdrawal == WithdrawalKnown::not_known);
}

TEST_CASE("the end of a withdrawal is never made earlier by moving its task") {
  Workplace place;
  put(place, mix("bluemix"));
  (void)place.visited("2026-10-27", {"412 LH DD chronic behind; spray with bluemix", "done"});
  const HerdId herd = place.herd().herd;
  const auto tasks = open_tasks_of(place.store, herd, "412", day("2026-10-27")).value();
  REQUIRE(tasks.size() == 2);
  CHECK(tasks[0].words == "last milk held back: Thu 29 Oct evening");
  CHECK_FALSE(move_task(place.ports(), herd, tasks[0].task, day("2026-10-28"), "sold").ok());
  CHECK(move_task(place.ports(), herd, tasks[0].task, day("2026-10-30"), "vet says so").ok());
}

TEST_CASE("a visit put under its right day counts the withdrawal from that day") {
  Workplace place;
  put(place, mix("bluemix"));
  const Visit visit = place.start("2026-10-25");
  {
    Recording recording = place.record(visit);
    (void)recording
        .say_all(std::vector<std::string>{"412 LH DD chronic behind; spray with bluemix", "done"})
        .value();
  }
  REQUIRE(correct_visit_day(place.ports(), visit, {day("2026-10-27"), true}).ok());
  const HerdId herd = place.herd().herd;
  const auto tasks = open_tasks_of(place.store, herd, "412", day("2026-10-27")).value();
  REQUIRE(tasks.size() == 2);
  CHECK(tasks[0].words == "last milk held back: Thu 29 Oct evening");
  CHECK(tasks[0].due == day("2026-10-29"));
  const auto rows = select_as<ActionRow>(place.store, herd).value();
  CHECK(rows.front().milk_till == day("2026-10-29"));
}

TEST_CASE("a withdrawal whose time is over is closed when she is seen again") {
  Workplace place;
  put(place, mix("bluemix", "2d", 0));
  (void)place.visited("2026-10-20", {"412 LH DD chronic behind; spray with bluemix", "done"});
  (void)place.visited("2026-10-22", {"412 nothing found", "done"});
  const HerdId herd = place.herd().herd;
  CHECK(open_tasks_of(place.store, herd, "412", day("2026-10-22")).value().size() == 1);
  (void)place.visited("2026-10-23", {"412 nothing found", "done"});
  CHECK(open_tasks_of(place.store, herd, "412", day("2026-10-23")).value().empty());
}

}  // namespace evenclaw::test
