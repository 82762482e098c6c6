#include "core/api/long_in_crush.hpp"

#include <doctest/doctest.h>

#include "core/log/body.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

/// The rules noted of the cow that was let out last.
std::vector<std::string> noted(Workplace& place) {
  std::vector<std::string> rules;
  (void)place.store.read_entries({{}, {}, {std::string(TurnRecorded::kind)}},
                                 [&](const Entry& entry) {
                                   const auto body = body_as<TurnRecorded>(entry);
                                   rules.clear();
                                   for (const WarningShown& shown : body->warnings) {
                                     rules.push_back(shown.warning.rule);
                                   }
                                   return true;
                                 });
  return rules;
}

/// A cow that stands in the crush while the clock shows so many minutes more.
void stands_for(Workplace& place, int minutes) {
  Recording recording = place.record(place.start());
  (void)recording.say("412 routine").value();
  place.clock.pass(minutes);
  (void)recording.say("nothing found").value();
  (void)recording.say("done").value();
}

using Rules = std::vector<std::string>;

}  // namespace

TEST_CASE("twenty minutes are long until the business settles otherwise, and off is none at all") {
  Workplace place;
  CHECK(long_in_crush(place.store).value() == usual_long_minutes);
  REQUIRE(set_long_in_crush(place.ports(), "25").ok());
  CHECK(long_in_crush(place.store).value() == 25);
  REQUIRE(set_long_in_crush(place.ports(), " Off").ok());
  CHECK_FALSE(long_in_crush(place.store).value());
  REQUIRE(set_long_in_crush(place.ports(), "15").ok());
  CHECK(long_in_crush(place.store).value() == 15);
}

TEST_CASE("what is no number of minutes is refused and changes nothing") {
  Workplace place;
  for (const char* wrong : {"", "0", "-5", "long", "1000", "2.5"}) {
    CAPTURE(wrong);
    const auto set = set_long_in_crush(place.ports(), wrong);
    REQUIRE_FALSE(set.ok());
    CHECK(set.faults().front().slug == "usage");
  }
  CHECK(long_in_crush(place.store).value() == usual_long_minutes);
}

TEST_CASE("a cow that stood there for long has it noted with her turn, and nobody is told") {
  Workplace place;
  stands_for(place, 27);
  CHECK(noted(place) == Rules{"long-in-the-crush"});
}

TEST_CASE("a cow that was quickly done has nothing noted") {
  Workplace place;
  stands_for(place, 12);
  CHECK(noted(place).empty());
}

TEST_CASE("the minutes of the business count") {
  Workplace place;
  REQUIRE(set_long_in_crush(place.ports(), "10").ok());
  stands_for(place, 12);
  CHECK(noted(place) == Rules{"long-in-the-crush"});
}

TEST_CASE("of lines that came in together no time is known") {
  Workplace place;
  Recording recording = place.record(place.start());
  const std::vector<std::string> lines = {"412 nothing found"};
  (void)recording.say_all(lines).value();
  place.clock.pass(60);
  (void)recording.end_of_visit().value();
  CHECK(noted(place).empty());
}

}  // namespace evenclaw::test
