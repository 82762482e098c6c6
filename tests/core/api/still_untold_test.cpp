#include "core/api/still_untold.hpp"

#include <doctest/doctest.h>

#include "core/base/date.hpp"

using namespace evenclaw;

namespace {

const Day told_on = day_from_text("2026-10-27").value();

NewsSaid news(News what, FootSet feet = {}) {
  return {"300", what, feet, false};
}

StillUntold of_300(std::string_view words, const Language& language = english()) {
  return {words, "300", told_on, language};
}

}  // namespace

TEST_CASE("a wrap that came off and one that was taken off are both off") {
  CHECK(tells_the_same(News::wrap_off, News::wrap_came_off));
  CHECK(tells_the_same(News::still_lame, News::still_lame));
  CHECK_FALSE(tells_the_same(News::wrap_off, News::block_off));
  CHECK_FALSE(tells_the_same(News::wrap_off, News::wrap_still_on));
}

TEST_CASE("both things a line says have to be told") {
  StillUntold line = of_300("300 wrap off, still lame; 301 blok gone");
  line.tell(news(News::wrap_off), "300 wrap off; 301 block gone");
  CHECK_FALSE(line.is_all_told());
  line.tell(news(News::still_lame), "300 still lame");
  CHECK(line.is_all_told());
}

TEST_CASE("a slip is taken as the word it looks like") {
  StillUntold line = of_300("300 blok gone, stil lame");
  line.tell(news(News::still_lame), "300 still lame");
  CHECK_FALSE(line.is_all_told());
  line.tell(news(News::block_off), "300 block off");
  CHECK(line.is_all_told());
}

TEST_CASE("a foot that was named has to be named again") {
  StillUntold line = of_300("news 300 LH wrap off; 301 blok gone");
  line.tell(news(News::wrap_off), "300 wrap off");
  CHECK_FALSE(line.is_all_told());
  line.tell(news(News::wrap_off, FootSet{Foot::lh}), "news 300 LH wrap off");
  CHECK(line.is_all_told());
}

TEST_CASE("all wraps are not told by one") {
  StillUntold line = of_300("300 wraps off; 301 blok gone");
  line.tell(news(News::wrap_off, FootSet{Foot::lh}), "news 300 LH wrap off");
  CHECK_FALSE(line.is_all_told());
  line.tell(news(News::wrap_off), "300 wraps off");
  CHECK(line.is_all_told());
}

TEST_CASE("what is no news is not told by news") {
  StillUntold line = of_300("300 LH SU, 301 RH SU");
  line.tell(news(News::wrap_off), "300 wrap off");
  line.tell(news(News::gone), "300 gone");
  CHECK_FALSE(line.is_all_told());
}

TEST_CASE("a correction that was not understood is not told by news") {
  StillUntold line = of_300("300 no, slihgt");
  line.tell(news(News::wrap_off), "300 wrap off");
  CHECK_FALSE(line.is_all_told());
}

TEST_CASE("what was told before is told, but a wrap that was off may be another one") {
  StillUntold lame = of_300("300 still lame; 301 blok gone");
  lame.was_told(news(News::still_lame));
  CHECK(lame.is_all_told());
  StillUntold off = of_300("300 wrap off; 301 blok gone");
  off.was_told(news(News::wrap_off));
  CHECK_FALSE(off.is_all_told());
}

TEST_CASE("it is alike where German is spoken") {
  StillUntold line = of_300("300 Verband ab, immer noch lahm; 301 Klotzz ab", german());
  line.tell(news(News::wrap_off), "300 Verband ab");
  CHECK_FALSE(line.is_all_told());
  line.tell(news(News::still_lame), "300 immer noch lahm");
  CHECK(line.is_all_told());
}
