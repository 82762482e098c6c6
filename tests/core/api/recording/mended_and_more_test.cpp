#include "core/api/recording/mended_and_more.hpp"

#include <doctest/doctest.h>

#include "core/api/told.hpp"
#include "tests/core/api/workplace.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

namespace {

void wrapped_and_told(Workplace& place, std::string_view told) {
  (void)place.visited("2026-10-13",
                      {"202 RH DD raw behind; wrap on", "217 RH DD raw behind; wrap on",
                       "209 nothing found", "210 nothing found", "done"});
  (void)take_news(place.ports(), place.herd(), day("2026-10-20"), told, english()).value();
}

}  // namespace

TEST_CASE(
    "what was told between visits is not put right at the visit, and nobody comes in for it") {
  struct Case {
    const char* told;
    const char* mended;
    const char* number;
  };

  const Case table[] = {{"202 wrap off", "202 no, 217", "202"}, {"210 gone", "210 no, 209", "210"}};
  for (const Case& one : table) {
    CAPTURE(one.told);
    Workplace place;
    wrapped_and_told(place, one.told);
    Recording recording = place.record(place.start("2026-10-27"));
    const Reply reply = recording.say(one.mended).value();
    REQUIRE(reply.items.size() == 1);
    CHECK(reply.items.front().kind == ReplyKind::refused);
    CHECK(reply.items.front().words == "What was told of " + std::string(one.number) +
                                           " was told on 20 Oct, before this visit.");
    CHECK(reply.items.front().remedy ==
          "Put it right between visits: evenclaw told \"" + std::string(one.mended) + "\".");
    CHECK(recording.in_crush().empty());
  }
}

TEST_CASE("a number put right at a visit before which nothing was told is a call") {
  Workplace place;
  wrapped_and_told(place, "209 looked at");
  Recording recording = place.record(place.start("2026-10-27"));
  (void)recording.say("202 no, 217").value();

  CHECK(recording.in_crush() == "217");
}
