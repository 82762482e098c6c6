#include "core/api/settle.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/api/call_language.hpp"
#include "core/api/cow_register.hpp"
#include "core/api/due.hpp"
#include "core/api/identities.hpp"
#include "core/api/told.hpp"
#include "core/trade/cow_rows.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

std::vector<std::string> asked(Workplace& place, std::string_view on) {
  const Visit visit = find_visit(place.ports(), place.herd().herd, day(on)).value();
  std::vector<std::string> words;
  const ClosingState state = closing_state(place.store, visit).value();
  for (const OpenPoint& point : state.open) {
    words.push_back(std::string(word_of(point.kind)) + " " + point.cow_said);
  }
  return words;
}

std::vector<std::string> settled(Workplace& place, const std::string& number,
                                 const std::string& words) {
  const auto reply =
      settle_questions(place.ports(), {place.herd().herd, number, day("2026-10-28"), words});
  if (!reply) return {"fault " + reply.faults().front().message};
  return lines_of(reply->items);
}

void told(Workplace& place, std::string_view line) {
  (void)take_news(place.ports(), place.herd(), day("2026-10-28"), line, english()).value();
}

void wrap_both_hinds(Workplace& place) {
  (void)place.visited("2026-10-20", {"412 lame LH", "both hinds DD raw behind; wrap on", "done"});
}

using Lines = std::vector<std::string>;

Lines tasks_left(Workplace& place) {
  Lines words;
  for (const DueTask& task :
       list_due(place.store, place.herd().herd, day("2026-10-28")).value().tasks) {
    words.push_back(task.words);
  }
  return words;
}

void block_nobody_knew_of(Workplace& place) {
  (void)place.visited("2026-10-20", {"96 nothing found", "done"});
  (void)place.visited("2026-10-27", {"96 block still on", "412 nothing found", "done"});
}

}  // namespace

TEST_CASE("news said to be of the wrong cow is taken back with the task it made") {
  Workplace place;
  block_nobody_knew_of(place);
  REQUIRE(tasks_left(place).size() == 1);
  const Lines answers = settled(place, "96", "told of the wrong cow");
  CHECK(answers.back() == "told 96: taken back: 96 block still on");
  CHECK(tasks_left(place).empty());
  CHECK(asked(place, "2026-10-27").empty());
}

TEST_CASE("news is taken back in the words of the language the days are called in") {
  Workplace place;
  block_nobody_knew_of(place);
  REQUIRE(set_call_language(place.ports(), "de").ok());
  CHECK(settled(place, "96", "das war die falsche Kuh").size() == 2);
  CHECK(tasks_left(place).empty());
}

TEST_CASE("an answer that does not say the news was wrong leaves its task") {
  for (const char* words : {"the farmer put it on, no mistake", "she is not sore on it"}) {
    CAPTURE(words);
    Workplace place;
    block_nobody_knew_of(place);
    CHECK(settled(place, "96", words).size() == 1);
    CHECK(tasks_left(place).size() == 1);
  }
}

TEST_CASE("news of a number nobody carries is settled by an answer in words") {
  Workplace place;
  (void)place.visited("2026-10-27", {"66 wrap off", "412 nothing found", "done"});
  REQUIRE(asked(place, "2026-10-27") == Lines{"news_unclear 66"});
  CHECK(settled(place, "66", "it was 412") ==
        Lines{"told 66: settled: \"66 wrap off\": No cow of this herd carries the number 66. "
              "Which cow was it?"});
  CHECK(asked(place, "2026-10-27").empty());
}

TEST_CASE("what is asked of a cow is settled by another name she goes by") {
  Workplace place;
  (void)place.visited("2026-10-27",
                      {"412 nothing found", "413 nothing found", "412 LH nothing found", "done"});
  const CowId cow = find_cow(place.store, place.herd().herd, "412", day("2026-10-27")).value();
  CowDetails details;
  details.alias = "Bella";
  REQUIRE(tell_of_cow(place.ports(), place.herd().herd, {cow, day("2026-10-27"), details}, false));
  CHECK(settled(place, "bella", "both hold").front().find("told 412: settled: ") == 0);
  CHECK(asked(place, "2026-10-27").empty());
}

TEST_CASE("two calls of a foot hold when a person says so, until it is called once more") {
  Workplace place;
  (void)place.visited("2026-10-27",
                      {"412 nothing found", "413 nothing found", "412 LH nothing found", "done"});
  REQUIRE(asked(place, "2026-10-27") == Lines{"called_twice 412"});
  CHECK(settled(place, "412", "both hold") ==
        Lines{"told 412: settled: Left hind was called twice in this visit. Do both calls hold?"});
  CHECK(asked(place, "2026-10-27").empty());
  (void)place.visited("2026-10-27", {"413 LH nothing found", "412 LH bruise", "done"});
  const Lines after = asked(place, "2026-10-27");
  CHECK(std::count(after.begin(), after.end(), "called_twice 412") == 1);
  CHECK(std::count(after.begin(), after.end(), "called_twice 413") == 1);
}

TEST_CASE("a wrap nobody knew of is settled by an answer in words") {
  Workplace place;
  (void)place.visited("2026-10-27", {"412 LH wrap still on; nothing found; rest fine", "done"});
  REQUIRE(asked(place, "2026-10-27") == Lines{"on_since_when 412"});
  CHECK(settled(place, "412", "the vet put it on Monday").size() == 1);
  CHECK(asked(place, "2026-10-27").empty());
}

TEST_CASE("a cow told gone that was in the crush is settled as here, or told gone once more") {
  for (const bool is_here : {true, false}) {
    CAPTURE(is_here);
    Workplace place;
    (void)place.visited("2026-10-20", {"77 nothing found", "done"});
    (void)place.visited("2026-10-27", {"77 gone", "77 nothing found", "done"});
    REQUIRE(asked(place, "2026-10-27") == Lines{"told_gone 77"});
    if (is_here) {
      CHECK(settled(place, "77", "still here").size() == 1);
    } else {
      told(place, "77 gone");
    }
    CHECK(asked(place, "2026-10-27").empty());
    const auto cow = select_as<CowRow>(place.store, place.herd().herd).value().front();
    CHECK(cow.left_on.has_value() != is_here);
  }
}

TEST_CASE(
    "a block nobody mentioned in the crush is settled by what is told of it after the visit") {
  const struct {
    const char* told;
    bool is_settled;
  } rows[] = {{"412 block still on", true},
              {"412 block off LH", true},
              {"412 block came off", true},
              {"412 block off RH", false},
              {"412 walks sound", false}};

  for (const auto& row : rows) {
    CAPTURE(row.told);
    Workplace place;
    (void)place.visited("2026-10-06", {"412 LH outside sole ulcer middle, bad; block on inside",
                                       "413 nothing found", "done"});
    (void)place.visited("2026-10-27",
                        {"412 nothing found", "412 done", "413 nothing found", "done"});
    REQUIRE(asked(place, "2026-10-27") == Lines{"unanswered 412"});
    told(place, row.told);
    CHECK(asked(place, "2026-10-27").empty() == row.is_settled);
  }
}

TEST_CASE("what was told of her block after the visit stands when she is called again") {
  Workplace place;
  (void)place.visited("2026-10-06", {"412 LH outside sole ulcer middle, bad; block on inside",
                                     "413 nothing found", "done"});
  (void)place.visited("2026-10-27",
                      {"412 lame LF", "nothing found", "done", "413 nothing found", "done"});
  told(place, "412 block still on");
  REQUIRE(asked(place, "2026-10-27") == Lines{"unanswered 412"});
  (void)place.visited("2026-10-27", {"412 go ahead", "done"});
  CHECK(asked(place, "2026-10-27").empty());
}

TEST_CASE("unclear news is settled by the same news told plainly after the visit") {
  Workplace place;
  wrap_both_hinds(place);
  (void)place.visited("2026-10-27", {"412 wrap off", "513 nothing found", "done"});
  told(place, "412 still lame");
  CHECK(asked(place, "2026-10-27").front() == "news_unclear 412");
  told(place, "412 wrap off LH");
  CHECK(asked(place, "2026-10-27") == Lines{"due_not_seen 412"});
}

TEST_CASE("news nobody understood is settled by any plain news of her") {
  Workplace place;
  (void)place.visited("2026-10-20", {"88 nothing found", "513 nothing found", "done"});
  (void)place.visited("2026-10-27", {"88, 513 stil lme", "412 nothing found", "done"});
  REQUIRE(asked(place, "2026-10-27") == Lines{"news_unclear 513", "news_unclear 88"});
  told(place, "88 still lame");
  CHECK(asked(place, "2026-10-27").front() == "news_unclear 513");
  const Lines after = asked(place, "2026-10-27");
  CHECK(std::count(after.begin(), after.end(), "news_unclear 88") == 0);
}

TEST_CASE("an answer to what nobody asked is refused") {
  Workplace place;
  (void)place.visited("2026-10-27", {"412 nothing found", "done"});
  CHECK(settled(place, "412", "both hold") ==
        Lines{"fault Nothing is asked of 412 that words could settle."});
  CHECK(settled(place, "412", " ") == Lines{"fault Say how it was settled."});
}

TEST_CASE("of a block told off and told still on words of one's own settle nothing, news does") {
  Workplace place;
  (void)place.visited("2026-10-20", {"106 LH outside sole ulcer, bad; block on inside", "done"});
  (void)place.visited("2026-10-27", {"106 block off", "106 block still on", "done"});
  const Lines open = asked(place, "2026-10-27");
  REQUIRE(open == Lines{"news_unclear 106"});
  CHECK(settled(place, "106", "it is off") ==
        Lines{"fault Whether the block of 106 is off or still on is told as news: other words "
              "would leave it in doubt."});
  CHECK(asked(place, "2026-10-27") == open);
  told(place, "106 block off");
  CHECK(asked(place, "2026-10-27").empty());
}

}  // namespace evenclaw::test
