#include "demo/change.hpp"

#include <doctest/doctest.h>

#include "demo/parameters.hpp"
#include "demo/streams.hpp"

namespace evenclaw::demo {

namespace {

FarmDecisions decisions(const Complications& complications, int planned_in = never_planned) {
  return {complications, planned_in, stream_for(1, DrawnFor::changes, 0, 1)};
}

/// Ordinary visits, and then a bad one, again and again.
void hear_bad_visits(FarmDecisions& farm, int times) {
  for (int time = 0; time < times; ++time) {
    for (int visit = 0; visit < 4; ++visit) farm.hear(time * 50 + visit * 10, {40, 4, 6});
    farm.hear(time * 50 + 40, {40, 4, 20});
  }
}

}  // namespace

TEST_CASE("a farm alters something after a visit that was worse than those before it") {
  FarmDecisions farm = decisions({});
  hear_bad_visits(farm, 40);
  REQUIRE(!farm.changes().empty());
  for (const Change& change : farm.changes()) {
    CHECK(change.reason == ChangeReason::after_bad_visit);
    CHECK(change.decided % 50 == 40);
    CHECK(change.done > change.decided);
  }
}

TEST_CASE("without a bad visit nothing is altered, nor where changes do not come of them") {
  FarmDecisions quiet = decisions({});
  for (int visit = 0; visit < 200; ++visit) quiet.hear(visit * 4, {40, 4, 6});
  CHECK(quiet.changes().empty());
  Complications at_any_time;
  at_any_time.leave_out(Complication::changes_after_bad_visits);
  FarmDecisions calm = decisions(at_any_time);
  hear_bad_visits(calm, 40);
  CHECK(calm.changes().empty());
}

TEST_CASE("what is planned is altered in its week whatever is found") {
  FarmDecisions farm = decisions({}, 20);
  for (int week = 0; week < 60; week += 4) farm.hear(week, {40, 4, 6});
  REQUIRE(farm.changes().size() == 1);
  CHECK(farm.changes()[0].reason == ChangeReason::planned);
  CHECK(farm.changes()[0].decided == 20);
}

TEST_CASE("a change has its effect from the week on in which it was done, and scraping has none") {
  const std::vector<Change> rubber = {{ChangeKind::rubber_at_the_turns, ChangeReason::planned, 5,
                                       10, value_of(Parameter::effect_rubber)}};
  CHECK(with_changes({}, rubber, 9).sole == 1.0);
  CHECK(with_changes({}, rubber, 10).sole == value_of(Parameter::effect_rubber));
  CHECK(with_changes({}, rubber, 10).skin == 1.0);
  const std::vector<Change> scraping = {{ChangeKind::more_scraping, ChangeReason::planned, 5, 10,
                                         value_of(Parameter::effect_scraping)}};
  CHECK(with_changes({}, scraping, 10).skin == 1.0);
}

}  // namespace evenclaw::demo
