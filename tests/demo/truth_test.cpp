#include "demo/truth.hpp"

#include <doctest/doctest.h>

#include "core/wire/json.hpp"
#include "demo/parameters.hpp"
#include "tests/demo/small_business.hpp"

namespace evenclaw::demo {

namespace {

std::string told(const BusinessWanted& wanted) {
  BusinessTruth truth = truth_without_farms(wanted);
  add_farm(truth, wanted, tell_story(wanted, small_farm_index));
  return truth_text(truth, wanted);
}

}  // namespace

TEST_CASE("the truth is one JSON object that tells the same in every telling") {
  const BusinessWanted wanted = half_a_year();
  const std::string text = told(wanted);
  CHECK(text == told(wanted));
  const auto json = json_from_text(text);
  REQUIRE(json.ok());
  CHECK(*json->member("wanted")->member("weeks")->as_integer() == wanted.weeks);
  CHECK(json->member("wanted")->member("complications")->as_array()->size() == 10);
  CHECK(json->member("parameters_in_millionths")->as_object()->size() == all_parameters().size());
}

TEST_CASE("every row of every table has as many cells as the table has columns") {
  const auto json = json_from_text(told(half_a_year()));
  REQUIRE(json.ok());
  for (const char* name : {"farms", "callers", "changes", "cows", "episodes", "looks"}) {
    CAPTURE(name);
    const Json* table = json->member(name);
    REQUIRE(table != nullptr);
    const std::size_t columns = table->member("columns")->as_array()->size();
    for (const Json& row : *table->member("rows")->as_array()) {
      CHECK(row.as_array()->size() == columns);
    }
  }
  CHECK(json->member("farms")->member("rows")->as_array()->size() == 1);
  CHECK(json->member("looks")->member("rows")->as_array()->size() > 50);
}

TEST_CASE("what was over before the records begin is left out of the truth") {
  const BusinessWanted wanted = half_a_year();
  BusinessTruth truth = truth_without_farms(wanted);
  add_farm(truth, wanted, tell_story(wanted, small_farm_index));
  const Day begin = first_day_of_week(wanted, weeks_before_records);
  for (const EpisodeTruth& episode : truth.episodes) {
    if (episode.ended) CHECK(*episode.ended >= begin);
  }
  for (const CowTruth& cow : truth.cows) {
    if (cow.gone) CHECK(*cow.gone >= begin);
  }
}

}  // namespace evenclaw::demo
