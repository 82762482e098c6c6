#include "core/trade/handling.hpp"

#include <doctest/doctest.h>

#include "core/trade/handling_rows.hpp"
#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

std::vector<ActionKind> acts_in(const std::vector<std::string>& lines,
                                const Language& language = english()) {
  std::vector<ActionKind> kinds;
  for (const Action& action : saying::turn_of(lines, language).actions) {
    kinds.push_back(action.kind);
  }
  return kinds;
}

using Kinds = std::vector<ActionKind>;

}  // namespace

TEST_CASE("what she does in the crush is said of her, whatever foot was named last") {
  CHECK(acts_in({"412 kicks"}) == Kinds{ActionKind::kicks});
  CHECK(acts_in({"412", "LH outside sole ulcer; jumps"}) == Kinds{ActionKind::jumps});
  CHECK(acts_in({"412 lies down, needs the belly band"}) ==
        Kinds{ActionKind::lies_down, ActionKind::needs_hoist});
  CHECK(acts_in({"412 schlägt aus; braucht den Bauchgurt"}, german()) ==
        Kinds{ActionKind::kicks, ActionKind::needs_hoist});
}

TEST_CASE("careful says nothing without what she does") {
  CHECK(acts_in({"412 careful, she kicks"}) == Kinds{ActionKind::kicks});
  CHECK(acts_in({"412 careful: jumps; rest fine"}) == Kinds{ActionKind::jumps});
  CHECK(acts_in({"412 Vorsicht, schlägt aus"}, german()) == Kinds{ActionKind::kicks});
  const Faults alone = saying::refusal_of({"412 careful"});
  REQUIRE(alone.size() == 1);
  CHECK(alone.front().message.find("kicks, jumps, lies down or needs the hoist") !=
        std::string::npos);
  CHECK_FALSE(saying::refusal_of({"412 careful, sole ulcer"}).empty());
}

TEST_CASE("a cow that lies down is no cow that went down or is going down") {
  CHECK(acts_in({"412 went down in the crush"}) == Kinds{ActionKind::went_down});
  const Turn down = saying::turn_of({"412 she's going down, let her out"});
  CHECK(down.end == TurnEnd::unfinished);
  CHECK(down.actions.empty());
  CHECK(saying::turn_of({"412 lies down"}).end == TurnEnd::done);
}

TEST_CASE("why she was not done stays in words, also when it is how she behaves") {
  const Turn turn = saying::turn_of({"412 not done, she kicks"});
  CHECK(turn.end_reason == "she kicks");
  CHECK(turn.actions.empty());
  CHECK(acts_in({"412 not done; kicks"}) == Kinds{ActionKind::kicks});
}

TEST_CASE("what was said by mistake is taken back like anything done") {
  CHECK(acts_in({"412 kicks", "no, no kicks"}).empty());
  CHECK(acts_in({"412 schlägt aus", "nein, kein schlägt aus"}, german()).empty());
}

TEST_CASE("each way of handling is said to hold and to be over") {
  for (const EnumWord<Handling>& row : EnumWords<Handling>::table) {
    CAPTURE(row.word);
    CHECK(handling_said(said_as(row.value)) == HandlingSaid{row.value, true});
    int over = 0;
    for (const EnumWord<ActionKind>& act : EnumWords<ActionKind>::table) {
      if (handling_said(act.value) == HandlingSaid{row.value, false}) ++over;
    }
    CHECK(over == 1);
    REQUIRE(news_of(said_as(row.value)));
    CHECK(handling_said(*news_of(said_as(row.value))) == HandlingSaid{row.value, true});
  }
  CHECK_FALSE(handling_said(ActionKind::went_down));
  CHECK_FALSE(news_of(ActionKind::went_down));
  CHECK_FALSE(handling_said(News::walks_sound));
}

TEST_CASE("what holds is told in one order, and what is over is not told") {
  HandlingRow hoist;
  hoist.what = Handling::needs_hoist;
  HandlingRow kicks;
  HandlingRow jumps;
  jumps.what = Handling::jumps;
  jumps.over_on = Day{20758};
  CHECK(spoken(standing_in({hoist, jumps, kicks})) == "kicks, needs the hoist");
  CHECK(spoken(standing_in({jumps})).empty());
}

TEST_CASE("of cows that are not in the crush it is news, of several at once too") {
  const Result<Line> line = read_line("news 412, 413 kick; 77 no longer needs the hoist",
                                      saying::in_crush(false), english());
  REQUIRE(line.ok());
  std::vector<std::string> told;
  for (const Clause& clause : line->clauses) {
    const auto& news = std::get<NewsSaid>(clause);
    told.push_back(news.number + ' ' + std::string(word_of(news.news)));
  }
  CHECK(told == std::vector<std::string>{"412 kicks", "413 kicks", "77 hoist_no_more"});
}
