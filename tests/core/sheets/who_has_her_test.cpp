#include "core/sheets/who_has_her.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

TEST_CASE("who has to be told of a cow that left follows from the words in which it was told") {
  const struct {
    const char* told;
    const char* whom;
    const char* with_authority;
  } rows[] = {
      {"513 sold", "sold, Mon 23 Nov: tell the buyer",
       "sold, Mon 23 Nov: tell the buyer and the authority"},
      {"513 culled", "gone for slaughter, Mon 23 Nov: tell the slaughterhouse",
       "gone for slaughter, Mon 23 Nov: tell the slaughterhouse and the authority"},
      {"513 gone", "left the herd, Mon 23 Nov: tell whoever has her now",
       "left the herd, Mon 23 Nov: tell whoever has her now and the authority"},
      {"513 died", "left the herd, Mon 23 Nov: tell whoever has her now",
       "died, Mon 23 Nov: tell the authority"},
  };

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    CowRow left = day.known("513");
    left.left_on = day.input().visit.day - 1;
    left.left_words = row.told;
    const VisitView view = view_of(day.input(), english_wording());
    CHECK(who_has_her(left, view) == row.whom);
    CHECK(who_has_her_and_authority(left, view) == row.with_authority);
  }
}

}  // namespace evenclaw
