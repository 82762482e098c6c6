#include "core/stats/proportion.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "core/base/random.hpp"

namespace evenclaw {

namespace {

constexpr double last_digit = 5e-7;

bool is_near(double value, double expected, double tolerance = last_digit) {
  return std::abs(value - expected) <= tolerance;
}

}  // namespace

TEST_CASE("Wilson's interval is the published one") {
  // 81/263, 15/148, 0/20 and 1/29: Newcombe 1998, Stat Med 17:857, to the digits recomputed; the
  // others are the four arms of Thomas 2015, JDS 98:4477, recomputed to four.
  const struct {
    Proportion counts;
    double low, high, tolerance;
  } rows[] = {{{81, 263}, .255289, .366210, last_digit},
              {{15, 148}, .062386, .160487, last_digit},
              {{0, 20}, 0.0, .161125, last_digit},
              {{1, 29}, .006113, .171755, last_digit},
              {{11, 45}, .1424, .3867, 5e-5},
              {{14, 39}, .2274, .5158, 5e-5},
              {{12, 42}, .1717, .4357, 5e-5},
              {{23, 41}, .4104, .7011, 5e-5}};

  for (const auto& row : rows) {
    const auto interval = wilson_interval(row.counts);
    REQUIRE(interval);
    CHECK_MESSAGE(is_near(interval->low, row.low, row.tolerance), row.counts.k, ": ",
                  interval->low);
    CHECK_MESSAGE(is_near(interval->high, row.high, row.tolerance), row.counts.k, ": ",
                  interval->high);
  }
}

TEST_CASE("Newcombe's interval of a difference is the published one") {
  const struct {
    Proportion now, then;
    double low, high, tolerance;
  } rows[] = {{{56, 70}, {48, 80}, .052431, .333873, last_digit},  // Newcombe 1998, Stat Med 17:873
              {{5, 56}, {0, 29}, -.038, .193, 5e-4},               // the same table, three digits
              {{23, 41}, {11, 45}, .10937, .48990, 5e-6}};  // Thomas 2015: block and pain relief

  for (const auto& row : rows) {
    const auto interval = difference_interval(row.now, row.then);
    REQUIRE(interval);
    CHECK_MESSAGE(is_near(interval->low, row.low, row.tolerance), interval->low);
    CHECK_MESSAGE(is_near(interval->high, row.high, row.tolerance), interval->high);
  }
}

TEST_CASE("the example worked by hand comes out as it was worked") {
  const auto then = wilson_interval({30, 44});
  const auto now = wilson_interval({24, 41});
  const auto difference = difference_interval({24, 41}, {30, 44});
  REQUIRE((then && now && difference));
  CHECK(is_near(then->low, .5344, 5e-5));
  CHECK(is_near(then->high, .8000, 5e-5));
  CHECK(is_near(now->low, .4337, 5e-5));
  CHECK(is_near(now->high, .7224, 5e-5));
  CHECK(is_near(difference->low, -.2888, 5e-5));
  CHECK(is_near(difference->high, .1048, 5e-5));
}

TEST_CASE("of no cows there is no share and no interval") {
  CHECK_FALSE(share_of({0, 0}));
  CHECK_FALSE(wilson_interval({0, 0}));
  CHECK_FALSE(difference_interval({1, 2}, {0, 0}));
  CHECK_FALSE(difference_interval({0, 0}, {1, 2}));
}

TEST_CASE("an interval holds its share, stays within 0 and 1, and turns round with the days") {
  RandomStream random(412, 11);
  for (int round = 0; round < 2000; ++round) {
    Proportion a;
    a.n = static_cast<std::int64_t>(1 + random.below(300));
    a.k = static_cast<std::int64_t>(random.below(static_cast<std::uint32_t>(a.n + 1)));
    Proportion b;
    b.n = static_cast<std::int64_t>(1 + random.below(300));
    b.k = static_cast<std::int64_t>(random.below(static_cast<std::uint32_t>(b.n + 1)));
    const auto one = wilson_interval(a);
    REQUIRE(one);
    CHECK((one->low >= 0.0 && one->high <= 1.0));
    CHECK((one->low <= *share_of(a) + 1e-12 && one->high >= *share_of(a) - 1e-12));
    const auto forth = difference_interval(a, b);
    const auto back = difference_interval(b, a);
    REQUIRE((forth && back));
    CHECK((forth->low >= -1.0 - 1e-12 && forth->high <= 1.0 + 1e-12));
    CHECK(is_near(forth->low, -back->high, 1e-12));
    CHECK(is_near(forth->high, -back->low, 1e-12));
  }
}

TEST_CASE("more cows make it narrower") {
  const auto few = wilson_interval({6, 10});
  const auto many = wilson_interval({60, 100});
  REQUIRE((few && many));
  CHECK(many->high - many->low < few->high - few->low);
}

}  // namespace evenclaw
