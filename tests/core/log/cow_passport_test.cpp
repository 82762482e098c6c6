#include "core/log/cow_passport.hpp"

#include <doctest/doctest.h>

#include <optional>
#include <string>
#include <utility>

#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

const char* const first_day = "2026-09-01";
const char* const later = "2026-11-01";

CowRegistered told(std::string_view from) {
  return {cow_412, "", day(from)};
}

CowRegistered tagged(std::string_view from, std::optional<std::string> tag,
                     std::optional<std::string> electronic) {
  CowRegistered body = told(from);
  body.tag = std::move(tag);
  body.electronic = std::move(electronic);
  return body;
}

}  // namespace

TEST_CASE("ear tag and electronic number told apart make one pair") {
  Farm farm;
  farm.write(tagged(first_day, "UK123450600001", std::nullopt));
  farm.write(tagged(later, std::nullopt, "826000000600001"));
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_tags.size() == 1);
  CHECK(rows.cow_tags[0].tag == "UK123450600001");
  CHECK(rows.cow_tags[0].electronic == "826000000600001");
  CHECK(rows.cow_tags[0].valid_from == day(first_day));
  CHECK_FALSE(rows.cow_tags[0].valid_to);
}

TEST_CASE("a new electronic number ends the pair before and keeps the number of the ear tag") {
  Farm farm;
  farm.write(tagged(first_day, "UK123450600001", "826000000600001"));
  farm.write(tagged(later, std::nullopt, "826000000600002"));
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_tags.size() == 2);
  CHECK(rows.cow_tags[0].valid_to == day("2026-10-31"));
  CHECK(rows.cow_tags[1].tag == "UK123450600001");
  CHECK(rows.cow_tags[1].electronic == "826000000600002");
}

TEST_CASE("another ear tag does not take the electronic number of the one before") {
  Farm farm;
  farm.write(tagged(first_day, "DE0312312345", "276000312312345"));
  farm.write(tagged(later, "DE312312346", std::nullopt));
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_tags.size() == 2);
  CHECK(rows.cow_tags[1].electronic.empty());
}

TEST_CASE("the same ear tag with a zero more is no new pair") {
  Farm farm;
  farm.write(tagged(first_day, "DE0312312345", std::nullopt));
  farm.write(tagged(later, "DE312312345", "276000312312345"));
  CHECK(farm.rows_of(cow_412).cow_tags.size() == 1);
}

TEST_CASE("a pair told anew for the same day was wrong from the beginning") {
  Farm farm;
  farm.write(tagged(first_day, "UK123450600001", "826000000600001"));
  farm.write(tagged(first_day, std::nullopt, "826000000600002"));
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_tags.size() == 1);
  CHECK(rows.cow_tags[0].electronic == "826000000600002");
}

TEST_CASE("of a fact what holds from the later day is known, in whatever order it was told") {
  Farm farm;
  CowRegistered heavy = told(later);
  heavy.weight = WeightClass::from_400_kg;
  heavy.heifer_or_cow = HeiferOrCow::cow;
  farm.write(heavy);
  CowRegistered light = told(first_day);
  light.weight = WeightClass::under_400_kg;
  light.heifer_or_cow = HeiferOrCow::heifer;
  light.breed = "Jersey";
  light.born = day("2024-02-03");
  farm.write(light);
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_facts.size() == 1);
  const CowFactsRow& facts = rows.cow_facts.front();
  CHECK(facts.breed == "Jersey");
  CHECK(facts.born == day("2024-02-03"));
  CHECK(facts.heifer_or_cow == HeiferOrCow::cow);
  CHECK(facts.heifer_or_cow_on == day(later));
  CHECK(facts.weight == WeightClass::from_400_kg);
}

TEST_CASE("of a cow with a number and nothing more there are no tags, names or facts") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "412", day(first_day)});
  const Rows rows = farm.rows_of(cow_412);
  CHECK(rows.cow_tags.empty());
  CHECK(rows.cow_aliases.empty());
  CHECK(rows.cow_facts.empty());
}

TEST_CASE("every other name is hers once") {
  Farm farm;
  for (const char* name : {"Bella", "collar 17", "Bella"}) {
    CowRegistered body = told(first_day);
    body.aliases = {name};
    farm.write(body);
  }
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_aliases.size() == 2);
  CHECK(rows.cow_aliases[0].alias == "Bella");
}

TEST_CASE("a cow nobody has called is known by her name, else by her electronic number or tag") {
  Farm farm;
  farm.write(tagged(first_day, "UK123450600001", std::nullopt));
  CHECK(farm.rows_of(cow_412).cows.at(0).looks == "UK123450600001");
  farm.write(tagged(first_day, std::nullopt, "826000000600001"));
  CHECK(farm.rows_of(cow_412).cows.at(0).looks == "826000000600001");
  CowRegistered named = told(first_day);
  named.aliases = {"Bella"};
  farm.write(named);
  CHECK(farm.rows_of(cow_412).cows.at(0).looks == "Bella");
  farm.write(CowRegistered{cow_412, "412", day(first_day)});
  CHECK(farm.rows_of(cow_412).cows.at(0).looks.empty());
}

}  // namespace evenclaw
