#include "core/api/news_taken_back.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "core/api/told.hpp"
#include "core/trade/cow_rows.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

struct Row {
  const char* text;
  const char* number;
  const char* right;
};

using Lines = std::vector<std::string>;

Lines told(Workplace& place, std::string_view line) {
  const auto reply = take_news(place.ports(), place.herd(), day("2026-10-28"), line, english());
  return lines_of(reply.value().items);
}

/// The numbers of cows who left.
Lines gone(Workplace& place) {
  Lines numbers;
  for (const CowRow& cow : select_as<CowRow>(place.store, place.herd().herd).value()) {
    if (cow.left_on) numbers.push_back(cow.number);
  }
  return numbers;
}

void visit_two_with_blocks(Workplace& place) {
  (void)place.visited(
      "2026-09-29", {"306 LH outside sole ulcer heel, bad; block on inside", "rest fine",
                     "307 RH outside sole ulcer heel, bad; block on inside", "rest fine", "done"});
}

}  // namespace

TEST_CASE("that much of the news is denied, by two no's and in the words of news") {
  const struct {
    const char* text;
    const char* number;
    News news;
  } rows[] = {{"300 no, no block gone", "300", News::block_came_off},
              {"300 no, no wrap off", "300", News::wrap_off},
              {"300 no, not still lame", "300", News::still_lame}};

  for (const auto& row : rows) {
    CAPTURE(row.text);
    const auto denied = news_denied_in(row.text, english());
    REQUIRE(denied);
    CHECK(denied->number == row.number);
    CHECK(denied->news == row.news);
  }
  for (const char* text : {"300 no block gone", "300 no, no block on", "300 no, no DD",
                           "no, no block gone", "300 block gone", "300 no, not gone"}) {
    CAPTURE(text);
    CHECK_FALSE(news_denied_in(text, english()));
  }
  CHECK(is_denied({"300", News::block_off}, News::block_came_off));
  CHECK_FALSE(is_denied({"300", News::block_off}, News::wrap_off));
}

TEST_CASE("what is told instead of news stands behind a no, and its foot on either side of that") {
  const struct {
    const char* text;
    const char* words;
  } rows[] = {{"308 no, walks sound", "308 walks sound"},
              {"224 no, RH wrap still on", "224 RH wrap still on"},
              {"224 RH no, still on", "224 RH still on"},
              {"224 LH and RH, no, still on", "224 LH and RH still on"}};

  for (const auto& row : rows) {
    CAPTURE(row.text);
    const auto instead = news_instead_in(row.text, english());
    REQUIRE(instead);
    CHECK(instead->words == row.words);
  }
  // Whether only that foot was wrong is not said.
  CHECK_FALSE(news_instead_in("620 LH no, RH", english()));
}

TEST_CASE("off speaks against still on of the same kind of wrap or block") {
  const NewsSaid off{"224", News::wrap_came_off, {Foot::lh}, false};
  CHECK(tells_the_other_way(off, {"224", News::wrap_still_on, {Foot::rh}, false}));
  CHECK_FALSE(tells_the_other_way(off, {"224", News::wrap_off, {Foot::lh}, false}));
  CHECK_FALSE(tells_the_other_way(off, {"224", News::block_still_on, {Foot::lh}, false}));
  CHECK_FALSE(tells_the_other_way(off, {"224", News::still_lame, {}, false}));
}

TEST_CASE("news is mended by two numbers, and taken back by her number and that she is here") {
  constexpr Row rows[] = {
      {"306 no, 307", "306", "307"},         {"306, no, 307", "306", "307"},
      {"three-oh-six no 307", "306", "307"}, {"306 not gone", "306", ""},
      {"306 no, not gone", "306", ""},       {"no, 306 not gone", "306", ""},
      {"no, 306 still here", "306", ""},     {"306 is still here", "306", ""},
      {"306 not sold", "306", ""},           {"306, still in the herd", "306", ""}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    const auto mended = news_mended_in(row.text, english());
    REQUIRE(mended);
    CHECK(mended->number == row.number);
    CHECK(mended->right.value_or("") == row.right);
  }
}

TEST_CASE("calls, news and corrections of a turn mend no news") {
  for (const char* text : {"306 gone", "306 no, right hind", "306 no, 307 gone", "no, 307", "306",
                           "306, 307 gone", "306 wrap still on", "not gone", "306 LH gone"}) {
    CAPTURE(text);
    CHECK_FALSE(news_mended_in(text, english()));
  }
}

TEST_CASE("what was told is known through the lines that mended it") {
  const struct {
    const char* words;
    const char* number;
    std::vector<News> news;
  } rows[] = {
      {"305 wrap off; no, 304", "304", {News::wrap_off}},
      {"305 wrap off; no, 304; no, 306", "306", {News::wrap_off}},
      {"305 wrap off, walks sound; 305 no, 304", "304", {News::wrap_off, News::walks_sound}},
      {"305 wrap off; 305 no, 304; 304 no, 305", "305", {News::wrap_off}},
      {"301 wrap off, walks sound; 301 no, still lame", "301", {News::wrap_off}},
      {"300 wrap off, block gone; 300 no, no block gone", "300", {News::wrap_off}},
      {"301 no, sold", "301", {News::gone}},
      {"305 wrap off; no, 304", "305", {}},
      {"305, 306 wraps off; no, 304", "304", {}}};

  for (const auto& row : rows) {
    CAPTURE(row.words);
    std::vector<News> told;
    for (const NewsSaid& each : news_told_in(row.words, row.number, day("2026-10-27"), english())) {
      CHECK(each.number == row.number);
      told.push_back(each.news);
    }
    CHECK(told == row.news);
  }
}

TEST_CASE("between visits news of the wrong cow is told of the right one") {
  Workplace place;
  visit_two_with_blocks(place);
  (void)told(place, "306 gone");
  CHECK(told(place, "306 no, 307") ==
        Lines{"told 306: taken back: 306 gone",
              "told 307: closed: block check right hind, inside claw; block off right hind, inside "
              "claw; block still on? right hind, inside claw"});
  CHECK(gone(place) == Lines{"307"});
}

TEST_CASE("who was told gone together with another is here alone when that is told") {
  Workplace place;
  visit_two_with_blocks(place);
  (void)told(place, "306, 307 gone");
  CHECK(told(place, "no, 306 still here") == Lines{"told 306: taken back: 306, 307 gone"});
  CHECK(gone(place) == Lines{"307"});
}

TEST_CASE("of whom nothing was told nothing is taken back") {
  Workplace place;
  visit_two_with_blocks(place);
  for (const char* line : {"306 not gone", "306 no, 307"}) {
    CAPTURE(line);
    const auto reply = take_news(place.ports(), place.herd(), day("2026-10-28"), line, english());
    REQUIRE(reply.value().items.size() == 1);
    CHECK(reply->items.front().kind == ReplyKind::refused);
    CHECK(reply->items.front().token == "306");
    CHECK_FALSE(reply->items.front().remedy.empty());
  }
  CHECK(gone(place).empty());
}

TEST_CASE("told gone once more after it was taken back, she is gone") {
  Workplace place;
  visit_two_with_blocks(place);
  (void)told(place, "306 gone");
  (void)told(place, "306 not gone");
  CHECK(gone(place).empty());
  (void)told(place, "306 gone");
  CHECK(gone(place) == Lines{"306"});
}

}  // namespace evenclaw::test
