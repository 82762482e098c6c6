#include "core/sheets/medicine_in_words.hpp"

#include <doctest/doctest.h>

#include "core/sheets/farmers_page.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

TEST_CASE("a medicine is heard by the names of the list and by the words it is spoken of with") {
  const struct {
    const char* words;
    bool is_heard;
  } rows[] = {{"given longmix", true},
              {"came for longmix", true},
              {"LMX on Monday", true},
              {"Longmix 20 ml", true},
              {"longmixer", false},
              {"antibiotic this morning, milk in the bucket", true},
              {"\"901 milk to the calves\" was not understood", true},
              {"\"901 milk withheld\" was not understood", true},
              {"\"901 injected something in the neck\" was not understood", true},
              {"heute gespritzt", true},
              {"Milch an die Kälber", true},
              {"\"901 milk 3 milkings\" was not understood", true},
              {"\"901 meat 28\" was not understood", true},
              {"\"901 withdrawl 4d\" was not understood", true},
              {"\"901 injcted by the vet\" was not understood", true},
              {"\"901 dried off with tubes\" was not understood", true},
              {"\"901 dry cow tube\" was not understood", true},
              {"do not sell her milk", true},
              {"she had the dry cow tube last week", true},
              {"has mastitis and tubes in", true},
              {"on abs", true},
              {"wormed", true},
              {"lngmix yesterday", true},
              {"had milk fever", false},
              {"kicks in the parlour", false},
              {"foot in the bucket, gave way behind", false},
              {"", false}};

  for (const auto& row : rows) {
    CHECK_MESSAGE(names_a_medicine(row.words, {{"lmx", "longmix"}}) == row.is_heard, row.words);
  }
}

TEST_CASE(
    "a cow of whom a note tells a medicine stands under ask first, and nothing given is not "
    "said") {
  InventedDay day("Hollow Meadow");
  day.input().product_names = {{"lmx", "longmix"}};
  day.turn("901").note = "longmix on Monday";
  day.rest_fine();
  const std::string page = text_of(farmers_page(view_of(day.input(), english_wording())));
  CHECK_MESSAGE(holds(page, "# 901  Said in a note: longmix on Monday.\n"), page);
  CHECK_MESSAGE(holds(page, "ask the trimmer and the farmer today"), page);
  CHECK_MESSAGE(!holds(page, "Nothing was given"), page);
}

TEST_CASE("what was told in words at an earlier visit is asked until a withdrawal is told") {
  InventedDay day("Hollow Meadow");
  day.turn("901");
  day.input().medicine_told_before = {
      {day.id_of("901"), day.input().visit.day - 7, "said in a note: given longmix"}};
  const auto asked = [&] {
    return medicine_to_ask(view_of(day.input(), english_wording())).size();
  };
  CHECK(asked() == 1);
  day.did({ActionKind::no_withdrawal});
  CHECK(asked() == 0);
}

TEST_CASE("a note that names what was called of her is not asked about") {
  InventedDay day("Hollow Meadow");
  day.input().product_names = {{"lmx", "longmix"}};
  day.turn("901").note = "lmx nearly empty";
  CHECK(medicine_to_ask(view_of(day.input(), english_wording())).size() == 1);
  day.did({ActionKind::given, std::nullopt, Claw::none, "Longmix"});
  CHECK(medicine_to_ask(view_of(day.input(), english_wording())).empty());
}

TEST_CASE("where only words tell of a medicine, something is left to do") {
  InventedDay day("Hollow Meadow");
  day.turn("901").note = "milk in the bucket";
  day.rest_fine();
  const std::string page = text_of(farmers_page(view_of(day.input(), english_wording())));
  CHECK_MESSAGE(!holds(page, "Nothing is left to do"), page);
}

}  // namespace evenclaw
