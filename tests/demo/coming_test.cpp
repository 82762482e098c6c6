#include "demo/coming.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace evenclaw::demo {

namespace {

struct SomeHerd {
  Farm farm = invent_farm(4, 2, {});
  Herd herd;

  explicit SomeHerd(Rhythm rhythm) : herd(make(rhythm)) {}

  Herd make(Rhythm rhythm) {
    farm.rhythm = rhythm;
    farm.cows = 100;
    farm.calves = Season::all_year;
    Herd lived(4, farm, {}, 1.0);
    for (int week = 0; week < 80; ++week) {
      lived.pass_week(week, pressure_of(farm, lived.week_of_year(week)));
    }
    return lived;
  }

  std::vector<Coming> who(VisitKind kind, const Complications& complications = {}) {
    RandomStream draws(4, 0);
    return who_comes(herd, farm, {80, kind}, complications, draws);
  }
};

int with(const std::vector<Coming>& coming, Reason reason) {
  return static_cast<int>(std::count_if(coming.begin(), coming.end(),
                                        [&](const Coming& cow) { return cow.reason == reason; }));
}

}  // namespace

TEST_CASE("a round is of every cow of the herd") {
  SomeHerd small(Rhythm::whole_herd);
  CHECK(small.who(VisitKind::round).size() == small.herd.cows().size());
}

TEST_CASE("between the rounds come rechecks and lame cows, and those only") {
  SomeHerd small(Rhythm::whole_herd);
  for (Cow& cow : small.herd.cows()) cow.recheck_from = cow.number % 2 == 0 ? 80 : never;
  const auto coming = small.who(VisitKind::day_of_some);
  CHECK(with(coming, Reason::recheck) > 0);
  CHECK(with(coming, Reason::lame) > 0);
  CHECK(with(coming, Reason::recheck) + with(coming, Reason::lame) ==
        static_cast<int>(coming.size()));
}

TEST_CASE("a quarter of those who should be seen again is not brought") {
  SomeHerd small(Rhythm::whole_herd);
  for (Cow& cow : small.herd.cows()) cow.recheck_from = 80;
  const int brought = with(small.who(VisitKind::day_of_some), Reason::recheck);
  CHECK(brought > 60);
  CHECK(brought < 90);
}

TEST_CASE("lame cows make no visit of their own where that is left out") {
  Complications none;
  none.leave_out(Complication::extra_visits_for_lame);
  SomeHerd large(Rhythm::part_of_herd);
  CHECK(with(large.who(VisitKind::day_of_some), Reason::lame) > 0);
  CHECK(with(large.who(VisitKind::day_of_some, none), Reason::lame) == 0);
}

TEST_CASE("of a large herd those come whose time it is") {
  SomeHerd large(Rhythm::part_of_herd);
  const auto coming = large.who(VisitKind::day_of_some);
  CHECK(with(coming, Reason::routine) > 0);
  CHECK(with(coming, Reason::dry_off) > 0);
  CHECK(coming.size() < large.herd.cows().size());
}

TEST_CASE("a herd that is trimmed whole has two rounds a year and three days between") {
  Farm farm = invent_farm(4, 2, {});
  farm.rhythm = Rhythm::whole_herd;
  farm.weeks_between_visits = 26;
  int rounds = 0;
  int days = 0;
  for (int week = 0; week < 52; ++week) {
    rounds += visit_in(farm, week) == VisitKind::round ? 1 : 0;
    days += visit_in(farm, week) == VisitKind::day_of_some ? 1 : 0;
  }
  CHECK(rounds == 2);
  CHECK(days == 6);
}

}  // namespace evenclaw::demo
