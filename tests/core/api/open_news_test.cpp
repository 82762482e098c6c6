#include "core/api/open_news.hpp"

#include <doctest/doctest.h>

#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

/// 412 carries a wrap from 13 October, 413 nothing; then a visit at which these lines are said.
struct Told {
  Workplace place;
  Visit visit;

  Told() : visit() {
    (void)place.visited("2026-10-13", {"412 LH DD raw behind; wrap on, off 5d", "RH nothing found",
                                       "413 nothing found", "done"});
    visit = place.start("2026-10-27");
  }

  Told& say(std::string_view line) {
    Recording recording = place.record(visit);
    (void)recording.say(line).value();
    return *this;
  }

  [[nodiscard]] std::vector<std::string> open() {
    std::vector<std::string> words;
    for (const OpenNews& news : open_news(place.store, place.herd().herd).value()) {
      words.push_back(news.words);
    }
    return words;
  }
};

using Words = std::vector<std::string>;

}  // namespace

TEST_CASE("news nobody could read stays open until it is said plainly") {
  Told told;
  told.say("412, 413 wrops off");
  CHECK(told.open().size() == 2);
  told.say("412 wraps off");
  CHECK(told.open() == Words{"412, 413 wrops off"});
}

TEST_CASE("news of a number nobody carries is open until somebody does") {
  Told told;
  told.say("499 still lame");
  REQUIRE(told.open() == Words{"499 still lame"});
  const auto open = open_news(told.place.store, told.place.herd().herd).value();
  CHECK(open[0].number == "499");
  CHECK_FALSE(open[0].cow);
}

TEST_CASE("what was not understood of a cow is open when she is gone, too") {
  Told told;
  told.say("412, 413 wrops off").say("412 gone");
  CHECK(told.open().size() == 2);
}

TEST_CASE("that she is gone settles what told that") {
  Told told;
  told.say("412 gon; 413 stil lame").say("412 gone");
  CHECK(told.open() == Words{"412 gon; 413 stil lame"});
}

TEST_CASE("other news of a cow settles nothing that was not understood of her") {
  Told told;
  told.say("412 wrap off, still lame; 413 blok gone").say("412 wrap off");
  CHECK(told.open().size() == 2);
  told.say("412 still lame");
  CHECK(told.open() == Words{"412 wrap off, still lame; 413 blok gone"});
}

TEST_CASE("what was told before the line that was not understood need not be told again") {
  Told told;
  told.say("412 still lame").say("412 wrap off, still lame; 413 blok gone").say("412 wrap off");
  CHECK(told.open() == Words{"412 wrap off, still lame; 413 blok gone"});
}

TEST_CASE("plain news is open to nobody") {
  Told told;
  told.say("412 wraps off");
  CHECK(told.open().empty());
}

}  // namespace evenclaw::test
