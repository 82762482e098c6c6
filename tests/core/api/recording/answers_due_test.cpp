#include "core/api/recording/answers_due.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace evenclaw;

namespace {

Warning warning_of(Rank rank, const std::string& rule) {
  Warning warning;
  warning.rule = rule;
  warning.rank = rank;
  warning.words = "Is it so?";
  warning.answers = {"go ahead"};
  return warning;
}

}  // namespace

TEST_CASE("an answer carries the number of the line that was being taken") {
  AnswersDue answers;
  answers.add(ReplyKind::mark, "still in the crush");
  answers.next_line();
  answers.next_line();
  answers.add(ReplyKind::told, "today's feet: hinds");
  const std::vector<ReplyItem> given = answers.given();
  REQUIRE(given.size() == 2);
  CHECK(given[0].line == 0);
  CHECK(given[1].line == 2);
  CHECK(answers.line() == 2);
}

TEST_CASE("what was given is not due any more") {
  AnswersDue answers;
  answers.add(ReplyKind::told, "caller Ben");
  CHECK(answers.given().size() == 1);
  CHECK(answers.count() == 0);
  CHECK(answers.given().empty());
}

TEST_CASE("stops and asks are shown beside the crush, notes are for the sheet") {
  AnswersDue answers;
  answers.show({warning_of(Rank::stop, "no-block"), warning_of(Rank::note, "stood-long"),
                warning_of(Rank::ask, "which-claw")},
               "412");
  CHECK(answers.shows(warning_of(Rank::stop, "no-block"), "412"));
  CHECK_FALSE(answers.shows(warning_of(Rank::note, "stood-long"), "412"));
  CHECK_FALSE(answers.shows(warning_of(Rank::stop, "no-block"), "413"));
  const std::vector<ReplyItem> given = answers.given();
  REQUIRE(given.size() == 2);
  CHECK(given[0].kind == ReplyKind::stop);
  CHECK(given[0].slug == "no-block");
  CHECK(given[1].kind == ReplyKind::ask);
  CHECK(given[1].answers == std::vector<std::string>{"go ahead"});
}

TEST_CASE("what is on record already names the entry that holds it") {
  AnswersDue answers;
  EntryId entry;
  entry.value.bytes[0] = 7;
  answers.add_there_already("412", entry);
  const std::vector<ReplyItem> given = answers.given();
  REQUIRE(given.size() == 1);
  CHECK(given[0].kind == ReplyKind::there_already);
  CHECK(given[0].cow == "412");
  CHECK(given[0].entry == entry);
}

TEST_CASE("of a cow that never stood there no question is asked; what reached the store is told") {
  AnswersDue answers;
  answers.add(ReplyKind::mark, "degree not called").cow = "412";
  const std::size_t first_of_her = answers.count();
  answers.add(ReplyKind::question, "Nobody carries that number.").cow = "412";
  answers.add(ReplyKind::refused, "Not understood.").cow = "412";
  answers.add(ReplyKind::mark, "place not called").cow = "411";
  answers.add(ReplyKind::saved, "").cow = "412";
  answers.forget_of("412", first_of_her);
  const std::vector<ReplyItem> given = answers.given();
  REQUIRE(given.size() == 4);
  CHECK(given[0].words == "degree not called");
  CHECK(given[1].kind == ReplyKind::refused);
  CHECK(given[2].cow == "411");
  CHECK(given[3].kind == ReplyKind::saved);
}

TEST_CASE("what was given already cannot be taken out again") {
  AnswersDue answers;
  answers.add(ReplyKind::mark, "degree not called").cow = "412";
  const std::size_t first_of_her = answers.count();
  (void)answers.given();
  answers.forget_of("412", first_of_her);
  CHECK(answers.count() == 0);
}
