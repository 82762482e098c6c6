#include "core/api/cow_news.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

const Day visit_day = day_from_text("2026-10-27").value();

CowPast with_a_wrap(FixtureEnd ended, std::optional<Day> ended_on) {
  CowPast past;
  OnFootRow wrap;
  wrap.fixture = Fixture::wrap;
  wrap.foot = Foot::lh;
  wrap.claw = Claw::none;
  wrap.since = visit_day - 10;
  wrap.ended = ended;
  wrap.ended_on = ended_on;
  past.rows.on_feet.push_back(wrap);
  return past;
}

NewsSaid news_of(News news) {
  NewsSaid said;
  said.number = "412";
  said.news = news;
  return said;
}

}  // namespace

TEST_CASE("still on, of a wrap that was told off at this visit, is asked about") {
  const CowPast past = with_a_wrap(FixtureEnd::taken_off, visit_day);
  const NewsEffect effect =
      effect_told(news_of(News::wrap_still_on), past, {visit_day, EntryId{}}, {visit_day, false});
  REQUIRE(effect.unclear);
  CHECK(*effect.unclear ==
        "Her wrap on left hind was said to be off at this visit. Is it off, or still on?");
}

TEST_CASE("off, of a wrap that was told off at this visit, is the same told once more") {
  const CowPast past = with_a_wrap(FixtureEnd::taken_off, visit_day);
  const NewsEffect effect =
      effect_told(news_of(News::wrap_off), past, {visit_day, EntryId{}}, {visit_day, false});
  CHECK_FALSE(effect.unclear);
  CHECK(effect.closes.empty());
  CHECK(effect.makes.empty());
}

TEST_CASE("the vet who came to a cow that waits for none is asked for by those who wait") {
  CHECK(vet_for_whom({}) == "No vet was to come to her. Was it another cow?");
  CHECK(vet_for_whom({"77"}) == "No vet was to come to her, but to 77. Was it 77?");
  CHECK(vet_for_whom({"77", "78", "79"}) ==
        "No vet was to come to her, but to 77, 78 and 79. Was it one of them?");
}
