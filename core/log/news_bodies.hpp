// The bodies of entries that hold news nobody could read, and what a person answered to a question.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/id.hpp"

namespace evenclaw {

/// What was said of one number and could not be taken: news nobody understood, of a number nobody
/// carries, or a correction that fits nothing. Also the name of a caller or writer that may be
/// misspelt, without the name. It does nothing and is asked about when the visit closes.
struct NewsUnread {
  static constexpr std::string_view kind = "news_unread";
  static constexpr std::int32_t version = 2;
  VisitId visit;
  Day day;
  std::string number;        // as said
  std::optional<CowId> cow;  // who carried it, if anybody did
  std::string words;
  std::string asked;
  std::optional<PersonId> person;  // whom a doubtful name was read as; since version 2

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("visit", &NewsUnread::visit, "visit at which it was told");
    visit("day", &NewsUnread::day, "day it was told");
    visit("number", &NewsUnread::number,
          "the number it was told of, as said; caller or writer of a doubtful name");
    visit("cow", &NewsUnread::cow, "the cow that carried it, if any");
    visit("words", &NewsUnread::words, "as said");
    visit("asked", &NewsUnread::asked, "what is asked about it");
    visit("person", &NewsUnread::person, "whom a doubtful name was read as");
  }
};

/// What was asked of a number when a visit was closed, answered by a person in words: news that
/// nobody could be sure of, a foot called twice.
struct QuestionSettled {
  static constexpr std::string_view kind = "question_settled";
  static constexpr std::int32_t version = 1;
  VisitId visit;
  Day day;
  std::string number;
  std::optional<CowId> cow;
  // The news it settles or takes back, as said; all that was asked when absent.
  std::optional<std::string> about;
  std::string words;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("visit", &QuestionSettled::visit, "visit at which it was asked");
    visit("day", &QuestionSettled::day, "day it was answered");
    visit("number", &QuestionSettled::number, "the number it was asked of");
    visit("cow", &QuestionSettled::cow, "the cow that carries it, if any");
    visit("about", &QuestionSettled::about,
          "the news it settles or takes back, as said; all when absent");
    visit("words", &QuestionSettled::words, "the answer");
  }
};

}  // namespace evenclaw
