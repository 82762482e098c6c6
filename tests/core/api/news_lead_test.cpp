#include "core/api/news_lead.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace evenclaw;

TEST_CASE("what stands behind the word that leads news in") {
  const struct {
    const char* line;
    const char* behind;
  } rows[] = {
      {"news 112 wrap off", "112 wrap off"},  {"News: 301, 303 wraps off", "301, 303 wraps off"},
      {"since last time 77 gone", "77 gone"}, {"and news, 77 gone", "77 gone"},
      {"112 wrap off", "112 wrap off"},       {"news", "news"},
      {"newspaper 112", "newspaper 112"},     {"", ""},
  };

  for (const auto& row : rows) {
    CAPTURE(row.line);
    CHECK(std::string(behind_news_lead(row.line, english())) == row.behind);
  }
  CHECK(behind_news_lead("Neues: 77 weg", german()) == "77 weg");
}

TEST_CASE("a line is led in as news when something is told behind that word") {
  CHECK(is_led_in_as_news("news 112 wrap off", english()));
  CHECK_FALSE(is_led_in_as_news("112 wrap off", english()));
  CHECK_FALSE(is_led_in_as_news("news", english()));
  CHECK_FALSE(is_led_in_as_news("\xff news 112", english()));
}
