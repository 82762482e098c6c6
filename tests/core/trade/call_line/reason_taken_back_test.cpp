#include "core/trade/call_line/reason_taken_back.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

Turn fresh_and_lame() {
  Turn turn;
  turn.reason = Reason::fresh;
  turn.also = {Reason::lame, Reason::recheck};
  turn.lame = hind_feet;
  return turn;
}

}  // namespace

TEST_CASE("when the first reason was wrong the next one said becomes the first") {
  Turn turn = fresh_and_lame();
  take_back_reason(turn, {Reason::fresh, {}, {}});
  CHECK(turn.reason == Reason::lame);
  CHECK(turn.also == std::vector<Reason>{Reason::recheck});
  take_back_reason(turn, {Reason::recheck, {}, {}});
  take_back_reason(turn, {Reason::lame, {}, {}});
  CHECK(turn.reason == Reason::not_called);
}

TEST_CASE("not lame on one leg leaves her lame on the other, not lame at all takes back both") {
  Turn turn = fresh_and_lame();
  take_back_reason(turn, {Reason::lame, FootSet{Foot::lh}, {}});
  CHECK(turn.lame == FootSet{Foot::rh});
  CHECK(came_for(turn, Reason::lame));
  take_back_reason(turn, {Reason::lame, {}, {}});
  CHECK(turn.lame.empty());
  CHECK_FALSE(came_for(turn, Reason::lame));
}

TEST_CASE("of reasons in words only the one that is said is taken back") {
  Turn turn;
  turn.reason = Reason::other;
  turn.reason_words = "swollen hock; long toes";
  CHECK_FALSE(why_not_taken_back(turn, {Reason::other, {}, "long toes"}));
  take_back_reason(turn, {Reason::other, {}, "long toes"});
  CHECK(turn.reason_words == "swollen hock");
  CHECK(turn.reason == Reason::other);
  take_back_reason(turn, {Reason::other, {}, "swollen hock"});
  CHECK(turn.reason == Reason::not_called);
}

TEST_CASE("what she was not said to come for cannot be taken back") {
  const Turn turn = fresh_and_lame();
  CHECK(why_not_taken_back(turn, {Reason::heifer, {}, {}}));
  CHECK(why_not_taken_back(turn, {Reason::lame, FootSet{Foot::lf}, {}}));
  CHECK(why_not_taken_back(turn, {Reason::other, {}, "hock"}));
  CHECK_FALSE(why_not_taken_back(turn, {Reason::lame, FootSet{Foot::lh}, {}}));
}
