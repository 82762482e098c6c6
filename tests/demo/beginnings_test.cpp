#include "demo/beginnings.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <map>

#include "demo/horn.hpp"
#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

/// A second lactation in its middle, of no frailty: every rate is that of the table.
Cow mean_cow() {
  Cow cow = first_calved(9, invent_farm(9, 0, {}), 20, 0);
  cow.calvings = {-80, -25};
  cow.horn_frailty = 1;
  cow.skin_frailty = 1;
  cow.dry_from = never;
  return cow;
}

}  // namespace

TEST_CASE("lesions begin as often as their rates say, whichever draw decides") {
  constexpr int weeks = 60'000;
  Cow cow = mean_cow();
  std::map<std::pair<Lesion, Foot>, int> begun;
  Episodes episodes;
  for (int week = 0; week < weeks; ++week) {
    perhaps_begin(cow, {0, {}, 0.01}, episodes);
    if (episodes.empty()) continue;
    ++begun[{episodes.back().lesion, episodes.back().foot}];
    episodes.clear();
    cow.feet = {};
  }
  const auto expect = [&](Lesion lesion, Foot foot, double rate) {
    CAPTURE(word_of(lesion));
    const double expected = rate * weeks;
    CHECK(std::fabs(begun[{lesion, foot}] - expected) < 4.5 * std::sqrt(expected));
  };
  const double both_claws = 1.0 + value_of(Parameter::inside_hind);
  expect(Lesion::sh, Foot::lh, value_of(Parameter::bruise_begins) * both_claws);
  expect(Lesion::wl, Foot::rh, value_of(Parameter::fissure_begins) * both_claws);
  expect(Lesion::dd, Foot::lh, 0.01);
  expect(Lesion::dd, Foot::lf, 0.01 * value_of(Parameter::dd_front));
  expect(Lesion::hhe, Foot::rh, 0.0022);
}

TEST_CASE("a spot that has its lesion gets no second one") {
  Cow cow = mean_cow();
  Episodes episodes;
  for (int week = 0; week < 50'000; ++week) perhaps_begin(cow, {0, {}, 0.01}, episodes);
  // Four feet: two claws with two spots, the skin, and six others.
  CHECK(episodes.size() <= 4 * (4 + 1 + 6));
}

}  // namespace evenclaw::demo
