#include <doctest/doctest.h>

#include <optional>
#include <string>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

struct ToldOfHer {
  const char* what;
  std::optional<std::string> breed;
  std::optional<HeiferOrCow> heifer_or_cow;
  int told_days_ago;
  std::optional<WeightClass> weight;
};

Names fired_knowing(const ToldOfHer& told, const std::string& lines) {
  ToldDay day = told_day(lines);
  CowFactsRow row;
  row.breed = told.breed;
  row.heifer_or_cow = told.heifer_or_cow;
  if (told.heifer_or_cow) row.heifer_or_cow_on = day.today - told.told_days_ago;
  row.weight = told.weight;
  day.past.known.rows.cow_facts = {row};
  return rules_fired(day.warnings(), false);
}

constexpr const char* short_and_far_too_short[] = {"412\nLH outside length 72 mm",
                                                   "412\nLH outside length 68 mm"};

}  // namespace

TEST_CASE("a toe is asked about below 75 mm and stopped below 70 mm") {
  CHECK(fired_on("412\nLH outside length 75 mm").empty());
  CHECK(fired_on("412\nLH outside length 74.9 mm") == Names{"ask toe-short LH"});
  CHECK(fired_on("412\nLH outside length 70 mm") == Names{"ask toe-short LH"});
  CHECK(fired_on("412\nLH outside length 69.9 mm") == Names{"stop toe-far-too-short LH"});
}

TEST_CASE("one warning for her, about her shortest toe") {
  CHECK(fired_on("412\nLH outside length 72 mm; inside length 71 mm\nRH outside length 74 mm") ==
        Names{"ask toe-short LH"});
  CHECK(fired_on("412\nLH outside length 72 mm\nRH outside length 68 mm") ==
        Names{"stop toe-far-too-short RH"});
}

TEST_CASE("other measures are no toe lengths") {
  CHECK(fired_on("412\nLH outside heel height 35 mm; sole thickness 6 mm").empty());
}

TEST_CASE("of a heifer no value holds") {
  CHECK(fired_on("412 heifer\nLH outside length 68 mm").empty());
  CHECK(fired_on("412 fresh, heifer\nLH outside length 68 mm").empty());
}

TEST_CASE(
    "no value holds for small breeds, for cows under 400 kg and for a heifer told of lately") {
  const ToldOfHer silent[] = {
      {"a Jersey", "Jersey", {}, 0, {}},
      {"a Jersey cow", " jersey", HeiferOrCow::cow, 10, WeightClass::from_400_kg},
      {"a light cow", {}, {}, 0, WeightClass::under_400_kg},
      {"a light Holstein", "Holstein", HeiferOrCow::cow, 10, WeightClass::under_400_kg},
      {"a heifer", {}, HeiferOrCow::heifer, 365, {}},
  };
  for (const ToldOfHer& told : silent) {
    CAPTURE(told.what);
    for (const char* lines : short_and_far_too_short) CHECK(fired_knowing(told, lines).empty());
  }
}

TEST_CASE("an adult of a large breed, and one of whom nothing was told, is measured") {
  const ToldOfHer measured[] = {
      {"nothing told", {}, {}, 0, {}},
      {"a Holstein", "Holstein", {}, 0, {}},
      {"another large breed", "Ayrshire", HeiferOrCow::cow, 900, WeightClass::from_400_kg},
      {"told a heifer more than a year ago", {}, HeiferOrCow::heifer, 366, {}},
  };
  for (const ToldOfHer& told : measured) {
    CAPTURE(told.what);
    CHECK(fired_knowing(told, short_and_far_too_short[0]) == Names{"ask toe-short LH"});
    CHECK(fired_knowing(told, short_and_far_too_short[1]) == Names{"stop toe-far-too-short LH"});
  }
}

TEST_CASE("a heifer that came fresh or to be dried off has calved") {
  const ToldOfHer heifer = {"a heifer", {}, HeiferOrCow::heifer, 100, {}};
  CHECK(fired_knowing(heifer, "412 fresh\nLH outside length 72 mm") == Names{"ask toe-short LH"});
  CHECK(fired_knowing(heifer, "412 dry off\nLH outside length 72 mm") == Names{"ask toe-short LH"});
  CHECK(fired_knowing(heifer, "412 routine\nLH outside length 72 mm").empty());
}

TEST_CASE("a long toe is never said to be right") {
  CHECK(told_day("412\nLH outside length 90 mm").warnings().empty());
}

TEST_CASE("the words say for whom the figure holds") {
  CHECK(told_day("412\nLH outside length 72 mm").warnings()[0].words ==
        "Toe 72 mm (left hind outside): Holsteins need 83 (median; 90 proposed). Sole firm?");
  CHECK(told_day("412\nLH outside length 68.5 mm").warnings()[0].words ==
        "Toe 68.5 mm (left hind outside): no more off; Holsteins need 83 (median; 90 proposed).");
}
