#include "core/sheets/callers.hpp"

#include <doctest/doctest.h>

#include "core/paper/text.hpp"
#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

PersonId person(const std::string& name) {
  return PersonId{uuid_derived("person " + name)};
}

/// Anna begins with three cows, Ben takes over for one of them and another.
VisitSheetInput two_callers() {
  InventedDay day("Hollow Meadow");
  day.input().visit.caller = person("Anna");
  for (const char* name : {"Anna", "Ben"}) day.input().people.push_back({person(name), name});

  const struct {
    const char* cow;
    const char* caller;
  } rows[] = {{"412", "Anna"}, {"413", "Anna"}, {"414", "Anna"}, {"414", "Ben"}, {"415", "Ben"}};

  for (const auto& row : rows) {
    day.turn(row.cow).caller = person(row.caller);
    day.last_turn().writer = person("Ben");
    day.rest_fine();
  }
  return day.input();
}

}  // namespace

TEST_CASE("one caller is named alone, several with the cows each judged") {
  VisitSheetInput input = two_callers();
  CHECK(callers_of(input, english_wording()) == "Anna (3 cows) and Ben (2 cows)");
  CHECK(writers_of(input, english_wording()) == "Ben");
  input.rows.turns.resize(3);
  CHECK(callers_of(input, english_wording()) == "Anna");
}

TEST_CASE("whoever began stands first, also with fewer cows; who was not named is said so") {
  VisitSheetInput input = two_callers();
  input.visit.caller = person("Ben");
  CHECK(callers_of(input, english_wording()) == "Ben (2 cows) and Anna (3 cows)");
  input.rows.turns.front().caller = PersonId{};
  CHECK(callers_of(input, english_wording()) ==
        "Ben (2 cows), Anna (2 cows) and nobody named (1 cow)");
}

TEST_CASE("where no turn names a caller the one of the opening is told") {
  VisitSheetInput input = two_callers();
  for (TurnRow& turn : input.rows.turns) turn.caller = PersonId{};
  input.visit.caller = PersonId{};
  input.caller = "";
  CHECK(callers_of(input, english_wording()).empty());
  input.caller = "Anna";
  CHECK(callers_of(input, english_wording()) == "Anna");
  input.rows.turns.clear();
  CHECK(callers_of(input, english_wording()) == "Anna");
}

TEST_CASE("on the list a cow names her caller only where it is another one") {
  const VisitSheetInput input = two_callers();
  const std::string text = to_plain_text(visit_sheet(input));
  std::size_t named = 0;
  for (auto at = text.find("alled by Ben"); at != std::string::npos;
       at = text.find("alled by Ben", at + 1)) {
    ++named;
  }
  CHECK(named == 2);
  CHECK(text.find("alled by Anna") == std::string::npos);
}

}  // namespace evenclaw
