#include "core/trade/call_line/batch_line.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/trade/call_line/spoken_tokens.hpp"
#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

BatchSaid batch_of(std::string_view text) {
  const auto line = read_line(text, saying::in_crush(false), english());
  REQUIRE_MESSAGE(line.ok(), text);
  REQUIRE_FALSE(line->clauses.empty());
  const auto* said = std::get_if<BatchSaid>(&line->clauses.front());
  REQUIRE_MESSAGE(said != nullptr, text);
  return *said;
}

std::string refusal(std::string_view text) {
  const Faults faults = saying::faults_of(text, false);
  return faults.empty() ? "taken" : faults.front().message;
}

}  // namespace

TEST_CASE("a number with a word for several animals behind it counts them") {
  struct Row {
    const char* line;
    bool counts;
  };

  constexpr Row rows[] = {{"12 heifers", true},     {"twelve heifers far yard", true},
                          {"no, 11 heifers", true}, {"no 11 heifers", true},
                          {"412 heifer", false},    {"12 heifer all good", false},
                          {"412 lame LH", false},   {"heifers", false},
                          {"412, heifers", false},  {"412, 513 wraps off", false},
                          {"no, 421", false},       {"12", false}};
  for (const Row& row : rows) {
    INFO(std::string(row.line));
    CHECK(counts_animals(spoken_tokens(row.line, english()), english()) == row.counts);
  }
}

TEST_CASE("a heifer with her number stays a cow with a reason") {
  const Turn turn = saying::turn_of({"412 heifer"});
  CHECK(turn.cow.number == "412");
  CHECK(turn.reason == Reason::heifer);
}

TEST_CASE("where they stand is free words up to what became of them") {
  CHECK(batch_of("12 heifers far yard, all good").batch.place == "far yard");
  CHECK(batch_of("12 heifers from the straw pen all good").batch.place == "from the straw pen");
  CHECK(batch_of("12 heifers, pen 3, far side, all good").batch.place == "pen 3, far side");
  CHECK(batch_of("12 heifers \"the DD pen\" all good").batch.place == "the DD pen");
  CHECK(batch_of("12 heifers nothing found").batch.place.empty());
}

TEST_CASE("what became of them is nothing found, trimmed, or both") {
  CHECK(batch_of("12 heifers, all good").batch.nothing_found);
  CHECK(batch_of("12 heifers, all good").batch.trimmed == Trimmed::not_called);
  CHECK_FALSE(batch_of("12 heifers, all trimmed").batch.nothing_found);
  CHECK(batch_of("12 heifers, all trimmed").batch.trimmed == Trimmed::yes);
  CHECK(batch_of("12 heifers, all trimmed and all good").batch.nothing_found);
  CHECK(batch_of("12 heifers not trimmed, nothing found").batch.trimmed == Trimmed::no);
}

TEST_CASE("the feet of a count are said with it or left to today's feet") {
  CHECK(batch_of("12 heifers, all good").batch.lifted.empty());
  CHECK(batch_of("12 heifers, all good, just the backs").batch.lifted == hind_feet);
  CHECK(batch_of("8 milkers far yard, backs only, all trimmed").batch.lifted == hind_feet);
  CHECK(batch_of("8 milkers far yard, all trimmed, hinds only").batch.lifted == hind_feet);
  CHECK(batch_of("12 heifers both hinds trimmed").batch.lifted == hind_feet);
}

TEST_CASE("who is apart is named one after the other, without the article") {
  using Names = std::vector<std::string>;

  struct Row {
    const char* line;
    Names apart;
  };

  const Row rows[] = {
      {"12 heifers all good bar the little black one", {"little black one"}},
      {"12 heifers all good except for a lame one", {"lame one"}},
      {"12 heifers all good bar the black and white one", {"black and white one"}},
      {"12 heifers all good bar the black one and the lame one", {"black one", "lame one"}},
      {"12 heifers all good bar 413 and the lame one", {"413", "lame one"}},
      {"12 heifers bar the lame one, all good, just the backs", {"lame one"}}};
  for (const Row& row : rows) {
    INFO(std::string(row.line));
    CHECK(batch_of(row.line).batch.apart == row.apart);
  }
}

TEST_CASE("what nobody could be sure of is refused, never counted") {
  struct Row {
    const char* line;
    const char* why;
  };

  constexpr Row rows[] = {
      {"1 heifers all good", "one animal is no batch"},
      {"412 heifers all good", "412 are more than are counted together in a day"},
      {"12.5 heifers all good", "12.5 are more than are counted together in a day"},
      {"12 heifers", "the line ends too early; still needed: what became of them"},
      {"12 heifers, al good", "the line ends too early; still needed: what became of them"},
      {"12 heifer, all good", "is that the cow 12, or are they counted?"},
      {"twelve heifer all good", "\"twelve\" cannot stand here"},
      {"12 heifers DD", "what is found or done is called of one cow"},
      {"12 heifers all good bar two", "it is unclear who was not like the others"},
      {"12 heifers all good bar the lame ones", "it is unclear who was not like the others"},
      {"12 heifers all good bar one or two", "it is unclear who was not like the others"},
      {"12 heifers all good bar 7", "it is unclear whether that is the cow 7 or so many"},
      {"12 heifers all good bar the one with DD", "what was found or done is called of her"},
      {"2 heifers all good bar the black one and the white one", "as many are apart as"},
      {"12 heifers and 3 bulls all good", "\"3\" begins another cow"},
      {"12 heifers with the bulls all good", "animals are counted twice in this line"},
      {"12 heifers fronts not lifted, all good", "the feet that were lifted are said"}};
  for (const Row& row : rows) {
    INFO(std::string(row.line), ": ", refusal(row.line));
    CHECK(refusal(row.line).rfind(row.why, 0) == 0);
  }
}

TEST_CASE("a cow with a higher number than anybody counts is taken as called") {
  CHECK(refusal("412 heifer, all good") == "taken");
  CHECK(refusal("12 heifer; rest fine") == "taken");
}

TEST_CASE("a count is mended by no and the right one") {
  const BatchSaid said = batch_of("no, 11 heifers");
  CHECK(said.mends);
  CHECK(said.batch.counted == 11);
}

TEST_CASE("half a count is told what may follow") {
  std::vector<std::string> words;
  for (const Suggestion& each :
       what_may_follow("12 heifers all good", saying::in_crush(false), english())) {
    words.push_back(each.words);
  }
  CHECK(std::find(words.begin(), words.end(), "bar") != words.end());
  CHECK(std::find(words.begin(), words.end(), "DD") == words.end());
}
