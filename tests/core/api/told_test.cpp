#include "core/api/told.hpp"

#include <doctest/doctest.h>

#include "core/api/careful.hpp"
#include "core/log/body.hpp"
#include "tests/core/api/workplace.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

namespace {

std::vector<std::string> told(Workplace& place, std::string_view line) {
  const Reply reply =
      take_news(place.ports(), place.herd(), day("2026-10-27"), line, english()).value();
  return lines_of(reply.items);
}

std::vector<TaskClosedBody> news_on_record(Workplace& place) {
  std::vector<TaskClosedBody> all;
  (void)place.store.read_entries(
      {place.herd().herd.value, std::nullopt, {std::string(TaskClosedBody::kind)}},
      [&](const Entry& entry) {
        if (const auto body = body_as<TaskClosedBody>(entry)) all.push_back(*body);
        return true;
      });
  return all;
}

void wrap_both_hinds(Workplace& place) {
  (void)place.visited("2026-10-20", {"412 lame LH", "both hinds DD raw behind; wrap on", "done"});
}

}  // namespace

TEST_CASE("news told from the farm names the task it closed") {
  Workplace place;
  wrap_both_hinds(place);
  CHECK(told(place, "412 wrap off LH") ==
        std::vector<std::string>{"told 412: closed: wrap off left hind"});
}

TEST_CASE("a wrap put on at the visit of that day is asked about before it is told to be off") {
  Workplace place;
  (void)place.visited("2026-10-27", {"412 LH DD raw behind; wrap on", "done"});
  CHECK(told(place, "412 wrap off") ==
        std::vector<std::string>{"question 412: Her wrap on left hind was put on at this visit. Is "
                                 "that one off? Then say the foot."});
  CHECK(told(place, "412 LH wrap off") ==
        std::vector<std::string>{"told 412: closed: wrap off left hind"});
}

TEST_CASE("of a wrap put on at a visit before that day nothing is asked") {
  Workplace place;
  (void)place.visited("2026-10-26", {"412 LH DD raw behind; wrap on", "done"});
  CHECK(told(place, "412 wrap off") ==
        std::vector<std::string>{"told 412: closed: wrap off left hind"});
}

TEST_CASE("lame still and walking sound told on one day: said again the later one holds") {
  Workplace place;
  (void)place.visited("2026-10-20", {"77 nothing found", "78 nothing found", "done"});
  CHECK(told(place, "77 still lame") ==
        std::vector<std::string>{"told 77: to do: still lame, look at her feet"});
  CHECK(told(place, "77 walks sound") ==
        std::vector<std::string>{"question 77: Told before on that day: \"77 still lame\". Which "
                                 "holds? Say this again if it does."});
  CHECK(told(place, "77 walks sound") ==
        std::vector<std::string>{"told 77: taken back: 77 still lame", "told 77: noted"});
  CHECK(told(place, "78 walks sound, kicks").size() == 2);
  CHECK(told(place, "78 still lame").front().rfind("question 78", 0) == 0);
  CHECK(told(place, "78 still lame") ==
        std::vector<std::string>{"told 78: taken back: 78 walks sound, kicks", "told 78: noted",
                                 "told 78: noted; she is to be looked at already"});
}

TEST_CASE("the first of the two told once more takes back the one that was asked about") {
  Workplace place;
  (void)place.visited("2026-10-20", {"77 nothing found", "done"});
  CHECK(told(place, "77 walks sound") == std::vector<std::string>{"told 77: noted"});
  CHECK(told(place, "77 still lame").front().rfind("question 77", 0) == 0);
  CHECK(told(place, "77 walks sound") ==
        std::vector<std::string>{"told 77: taken back: 77 still lame", "told 77: noted"});
}

TEST_CASE("the vet of another cow is asked about, a vet nobody waits for is taken as told") {
  Workplace place;
  (void)place.visited("2026-10-20", {"77 lame RF", "RF foul between; vet", "231 nothing found"});
  CHECK(told(place, "231 vet came") ==
        std::vector<std::string>{"question 231: No vet was to come to her, but to 77. Was it 77?"});
  CHECK(news_on_record(place).front().asked == "No vet was to come to her, but to 77. Was it 77?");
  CHECK(told(place, "77 vet came").front().rfind("told 77: closed: vet", 0) == 0);
  CHECK(told(place, "231 vet came") ==
        std::vector<std::string>{"told 231: noted; nothing of hers was waiting for it"});
}

TEST_CASE("who is gone is kept as gone, also when nothing of hers was open") {
  Workplace place;
  (void)place.visited("2026-10-20", {"77 nothing found"});
  CHECK(told(place, "77 gone") == std::vector<std::string>{"told 77: kept as gone"});
}

TEST_CASE("news that could mean two things is kept in its words and does nothing") {
  Workplace place;
  wrap_both_hinds(place);
  CHECK(told(place, "412 wrap off") ==
        std::vector<std::string>{"question 412: Which wrap: left hind or right hind?"});
  const std::vector<TaskClosedBody> news = news_on_record(place);
  REQUIRE(news.size() == 1);
  CHECK(news[0].words == "412 wrap off");
  CHECK(news[0].asked == "Which wrap: left hind or right hind?");
  CHECK(news[0].closes.empty());
  const auto on_feet = select_as<OnFootRow>(place.store, place.herd().herd).value();
  REQUIRE(on_feet.size() == 2);
  CHECK(on_feet[0].ended == FixtureEnd::still_on);
  CHECK(on_feet[1].ended == FixtureEnd::still_on);
}

TEST_CASE("between visits a cow that walks sound is news, with the word before it or without") {
  Workplace place;
  (void)place.visited("2026-10-20", {"416 lame LH", "LH bruise; watch her walk in 5d", "done"});
  CHECK(told(place, "416 walks sound") ==
        std::vector<std::string>{"told 416: closed: watch her walk"});
  CHECK(told(place, "news 416 walks sound") == std::vector<std::string>{"told 416: noted"});
}

TEST_CASE("what belongs to a visit is refused where it was said, not behind a word nobody said") {
  Workplace place;
  (void)place.visited("2026-10-20", {"416 nothing found", "done"});
  const auto reply =
      take_news(place.ports(), place.herd(), day("2026-10-27"), "416 LH brise", english());
  REQUIRE_FALSE(reply);
  CHECK(reply.faults().front().column == 8);
}

TEST_CASE("how she has to be handled is told from the farm before she comes in again") {
  Workplace place;
  (void)place.visited("2026-10-20", {"77 nothing found", "done"});
  CHECK(told(place, "77 kicks") == std::vector<std::string>{"told 77: noted"});
  const auto careful = careful_with(place.store, place.herd().herd).value();
  REQUIRE(careful.size() == 1);
  CHECK(careful.front().words == "kicks");
  CHECK(told(place, "77 no longer kicks") == std::vector<std::string>{"told 77: noted"});
  CHECK(careful_with(place.store, place.herd().herd).value().empty());
}
