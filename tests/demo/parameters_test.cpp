#include "demo/parameters.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>

namespace evenclaw::demo {

TEST_CASE("every parameter has a name of its own, a unit and a source") {
  std::set<std::string_view> names;
  for (const ParameterFacts& facts : all_parameters()) {
    CAPTURE(facts.name);
    CHECK(names.insert(facts.name).second);
    CHECK(!facts.unit.empty());
    CHECK(!facts.source.empty());
    CHECK(value_of(facts.parameter) == facts.value);
  }
}

TEST_CASE("what heals in a week comes to what the trial found after five weeks") {
  // Thomas 2015: sound after 35 days, 24.4 % with a trim and 35.9 % with trim and block.
  CHECK(within_weeks(value_of(Parameter::late_heals_trimmed), 5) ==
        doctest::Approx(0.244).epsilon(0.005));
  CHECK(within_weeks(value_of(Parameter::late_heals_blocked), 5) ==
        doctest::Approx(0.359).epsilon(0.005));
}

TEST_CASE("in no weeks nothing happens, and what is certain happens in one") {
  CHECK(within_weeks(0.3, 0) == 0.0);
  CHECK(within_weeks(1.0, 1) == 1.0);
}

}  // namespace evenclaw::demo
