#include "core/api/news_seen.hpp"

#include <doctest/doctest.h>

#include "core/api/identities.hpp"
#include "core/api/settle.hpp"
#include "core/api/told.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

using Lines = std::vector<std::string>;

Visit visit_with_news(Workplace& place) {
  (void)place.visited("2026-10-20", {"412 lame LH", "both hinds DD raw behind; wrap on",
                                     "77 nothing found", "513 nothing found", "done"});
  return place
      .visited("2026-10-27", {"412 walks sound, 513 walks sound", "77 gone", "412 wrap off",
                              "513 recheck; nothing found", "done"})
      .visit;
}

Lines told_of(Workplace& place, std::string_view cow) {
  const HerdId herd = place.herd().herd;
  const std::vector<CowId> group = {find_cow(place.store, herd, cow, day("2026-10-27")).value()};
  Lines lines;
  for (const NewsSeen& news : news_of_cow(place.store, herd, group).value()) {
    lines.push_back(to_text(news.day) + " " + news.words +
                    (news.asked.empty() ? "" : " / " + news.asked));
  }
  return lines;
}

}  // namespace

TEST_CASE("what was told of a cow is shown in its words, the newest day first") {
  Workplace place;
  (void)visit_with_news(place);
  (void)take_news(place.ports(), place.herd(), day("2026-10-28"), "412 still lame", english());
  CHECK(told_of(place, "412") == Lines{"2026-10-28 412 still lame", "2026-10-27 412 walks sound",
                                       "2026-10-27 412 wrap off / Which wrap: left hind or right "
                                       "hind?"});
  CHECK(told_of(place, "77") == Lines{"2026-10-27 77 gone"});
}

TEST_CASE("of a line that tells of several cows each is shown her own part") {
  struct Row {
    const char* line;
    const char* number;
    const char* part;
  };

  constexpr Row rows[] = {
      {"412, 513 wraps off; 77 gone; 620 still lame LH", "77", "77 gone"},
      {"412, 513 wraps off; 77 gone; 620 still lame LH", "513", "412, 513 wraps off"},
      {"412, 513 wraps off; 77 gone; 620 still lame LH", "620", "620 still lame LH"},
      {"412 and 513 wraps off, 77 gone", "412", "412 and 513 wraps off"},
      {"news: 412 wrap off, 513 wrap off", "412", "412 wrap off"},
      {"412 wrap off. 513 gone. 412 walks sound", "412", "412 wrap off; 412 walks sound"},
      {"0412 gone, 513 gone", "412", "0412 gone"},
      {"412 weg, 513 weg", "412", "412 weg"},
      {"seit letztem Mal: 412 weg, 513 weg", "412", "412 weg"},
      {"four twelve gone, 513 gone", "412", "four twelve gone, 513 gone"},
      {"306 gone; 306 no, 307", "307", "306 gone; 306 no, 307"}};
  for (const Row& row : rows) {
    CAPTURE(row.line);
    const Lines numbers = {row.number};
    CHECK(part_told_of(row.line, numbers) == row.part);
  }
}

TEST_CASE("what was taken back is shown with the words that took it back") {
  Workplace place;
  (void)visit_with_news(place);
  (void)take_news(place.ports(), place.herd(), day("2026-10-28"), "77 not gone", english());
  CHECK(told_of(place, "77") == Lines{"2026-10-27 77 gone / taken back: 77 not gone"});
}

TEST_CASE("what was taken back is no news of the visit") {
  Workplace place;
  const Visit visit = visit_with_news(place);
  (void)take_news(place.ports(), place.herd(), day("2026-10-28"), "77 not gone", english());
  CHECK(news_of_visit(place.store, visit).value() == Lines{"412 walks sound, 513 walks sound"});
}

TEST_CASE("of a line that told of several the part that was wrong is no news of the visit") {
  Workplace place;
  (void)place.visited("2026-10-20",
                      {"412 RH DD raw behind; wrap on", "54 LH nothing found", "done"});
  (void)place.visited("2026-10-27", {"412 wrap off, 54 wraps off", "60 LH nothing found", "done"});
  const Visit visit = find_visit(place.ports(), place.herd().herd, day("2026-10-27")).value();
  (void)settle_questions(place.ports(), {place.herd().herd, "54", day("2026-10-28"), "a mistake"});
  CHECK(news_of_visit(place.store, visit).value() == Lines{"412 wrap off"});
}

TEST_CASE("the news of a visit is each line once, and only what was clear") {
  Workplace place;
  const Visit visit = visit_with_news(place);
  (void)take_news(place.ports(), place.herd(), day("2026-10-28"), "412 still lame", english());
  CHECK(news_of_visit(place.store, visit).value() ==
        Lines{"412 walks sound, 513 walks sound", "77 gone"});
}

TEST_CASE("a line that tells two things of her was said once and is shown once") {
  Workplace place;
  (void)place.visited("2026-10-20", {"412 RH DD raw behind; wrap on", "rest fine", "done"});
  (void)place.visited("2026-10-27", {"412 wrap off, walks sound", "413 nothing found", "done"});
  CHECK(told_of(place, "412") == Lines{"2026-10-27 412 wrap off, walks sound"});
}

TEST_CASE("the word that says that a line is news is not told with it") {
  Workplace place;
  (void)place.visited("2026-10-20",
                      {"412 LH DD raw; wrap on; rest fine", "513 nothing found", "done"});
  const Visit visit = place
                          .visited("2026-10-27", {"news 412 wrap off", "News: 513 walks sound",
                                                  "412 LH DD raw; rest fine", "done"})
                          .visit;
  CHECK(news_of_visit(place.store, visit).value() == Lines{"412 wrap off", "513 walks sound"});
  CHECK(told_of(place, "513") == Lines{"2026-10-27 513 walks sound"});
}

}  // namespace evenclaw::test
