#include "core/exchange/life_words.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("events are known by their names in four languages") {
  CHECK(event_named(" Kalbung ")->event == LifeEvent::calved);
  CHECK(event_named("droogzetten")->event == LifeEvent::dried_off);
  CHECK(event_named("Achat")->event == LifeEvent::arrived);
  CHECK(event_named("SOLD")->way == LeavingWay::sold);
  CHECK(event_named("verendet")->way == LeavingWay::died);
  CHECK(event_named("culled")->way == LeavingWay::slaughtered);
  CHECK(event_named("Abgang")->way == LeavingWay::not_told);
  CHECK_FALSE(event_named("insemination"));
  CHECK_FALSE(event_named(""));
}

TEST_CASE("our own words are events, so that what was exported is read again") {
  for (const auto& row : EnumWords<LifeEvent>::table) {
    CAPTURE(row.word);
    REQUIRE(event_named(row.word));
    CHECK(event_named(row.word)->event == row.value);
  }
}

TEST_CASE("a reason is told by the words it holds") {
  struct Row {
    std::string_view words;
    LeavingReason reason;
  };

  constexpr Row rows[] = {{"lame, old", LeavingReason::feet_and_legs},
                          {"Klauenprobleme", LeavingReason::feet_and_legs},
                          {"Euter", LeavingReason::udder},
                          {"infertility", LeavingReason::fertility},
                          {"vruchtbaarheid", LeavingReason::fertility},
                          {"low yield", LeavingReason::production},
                          {"feet_and_legs", LeavingReason::feet_and_legs},
                          {"went to a show", LeavingReason::other},
                          {"", LeavingReason::not_told}};
  for (const Row& row : rows) {
    CAPTURE(row.words);
    CHECK(reason_named(row.words) == row.reason);
  }
  for (const auto& row : EnumWords<LeavingReason>::table)
    CHECK(reason_named(row.word) == row.value);
}
