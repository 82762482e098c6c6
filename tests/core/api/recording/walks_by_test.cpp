#include "core/api/recording/walks_by.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

bool only_one_thing(std::string_view text) {
  const Result<Line> line = read_line(text, saying::in_crush(false), english());
  INFO(text);
  REQUIRE(line.ok());
  return says_only_how_she_is(*line) != nullptr;
}

Rows with_a_wrap_on_right_hind() {
  Rows past;
  OnFootRow wrap;
  wrap.foot = Foot::rh;
  wrap.fixture = Fixture::wrap;
  past.on_feet.push_back(wrap);
  return past;
}

}  // namespace

TEST_CASE("a sure number that walks sound or kicks, and nothing else") {
  CHECK(only_one_thing("416 kicks"));
  CHECK(only_one_thing("416 no longer needs the hoist"));
  CHECK_FALSE(only_one_thing("416 kicks; jumps"));
  CHECK_FALSE(only_one_thing("416 to straw"));
  CHECK(only_one_thing("416 walks sound"));
  CHECK_FALSE(only_one_thing("416? walks sound"));
  CHECK_FALSE(only_one_thing("416 walks sound; done"));
  CHECK_FALSE(only_one_thing("416 lame"));
  CHECK_FALSE(only_one_thing("416"));
}

TEST_CASE("one thing that may be news is told as it, a turn that holds anything else is none") {
  CHECK(only_news_in(saying::turn_of({"416 walks sound"})) == News::walks_sound);
  CHECK(only_news_in(saying::turn_of({"416 kicks"})) == News::kicks);
  CHECK(only_news_in(saying::turn_of({"416 no longer kicks"})) == News::kicks_no_more);
  CHECK_FALSE(only_news_in(saying::turn_of({"416 walks sound", "LH trimmed"})));
  CHECK_FALSE(only_news_in(saying::turn_of({"416 fresh; walks sound"})));
  CHECK_FALSE(only_news_in(saying::turn_of({"416 kicks; to straw"})));
  CHECK_FALSE(only_news_in(saying::turn_of({"416 vet"})));
  CHECK_FALSE(only_news_in(saying::turn_of({"416"})));
}

TEST_CASE("how she walks and is handled says nothing of her feet, whatever else does") {
  CHECK(says_nothing_of_her_feet(saying::turn_of({"416 kicks"})));
  CHECK(says_nothing_of_her_feet(saying::turn_of({"416 walks sound; needs the hoist"})));
  CHECK_FALSE(says_nothing_of_her_feet(saying::turn_of({"416 kicks; to straw"})));
  CHECK_FALSE(says_nothing_of_her_feet(saying::turn_of({"416 kicks", "LH"})));
  CHECK_FALSE(says_nothing_of_her_feet(saying::turn_of({"416"})));
}

TEST_CASE("what became of a wrap is told as news when that is all and the foot carried one") {
  const Rows past = with_a_wrap_on_right_hind();
  const auto news = only_fate_in(saying::turn_of({"416 RH wrap off"}), past);
  REQUIRE(news.size() == 1);
  CHECK(news.front().news == News::wrap_off);
  CHECK(news.front().feet == FootSet{Foot::rh});
  for (const char* line : {"416 LH wrap off", "416 RH block off", "416 RH wrap off; nothing found",
                           "416 lame RH; RH wrap off", "416 RH wrap on", "416"}) {
    CAPTURE(line);
    CHECK(only_fate_in(saying::turn_of({line}), past).empty());
  }
}

TEST_CASE("what became of several wraps and blocks is told one by one") {
  const Rows past = with_a_wrap_on_right_hind();
  const auto on_one_foot = only_fate_in(saying::turn_of({"416 RH wrap and block off"}), past);
  REQUIRE(on_one_foot.size() == 2);
  CHECK(on_one_foot.front().news == News::wrap_off);
  CHECK(on_one_foot.back().news == News::block_off);
  const auto on_two = only_fate_in(saying::turn_of({"416 LH wrap off; RH wrap still on"}), past);
  REQUIRE(on_two.size() == 2);
  CHECK(on_two.front().feet == FootSet{Foot::lh});
  CHECK(on_two.back().news == News::wrap_still_on);
}

TEST_CASE("told of one foot after the other it is told of each, last where none is known") {
  const Rows past = with_a_wrap_on_right_hind();
  const NewsSaid both{"416", News::wrap_off, hind_feet, false};
  const auto read = [](std::string_view text) {
    return read_line(text, saying::in_crush(false), english()).value();
  };
  const auto each = told_foot_by_foot(both, read("416 LH wrap off; RH wrap off"), past);
  REQUIRE(each.size() == 2);
  CHECK(each.front().feet == FootSet{Foot::rh});
  CHECK(each.back().feet == FootSet{Foot::lh});
  CHECK(told_foot_by_foot(both, read("416 both hinds wrap off"), past) ==
        std::vector<NewsSaid>{both});
}
