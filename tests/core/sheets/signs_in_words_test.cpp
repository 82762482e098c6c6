#include "core/sheets/signs_in_words.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

/// The acts and lesions of the rows, "went_down fever".
std::string named(std::string_view words) {
  std::string all;
  for (const SignForVet* sign : signs_in_words(words)) {
    if (!all.empty()) all += ' ';
    const bool is_by_check = !sign->seen && !sign->found;
    if (is_by_check) all += sign->check;
    if (sign->seen) all += word_of(*sign->seen);
    if (sign->found) all += word_of(*sign->found);
  }
  return all;
}

}  // namespace

TEST_CASE("why she was let out and a line nobody understood may tell of a sign") {
  const struct {
    const char* words;
    const char* named;
  } rows[] = {{"went down", "went_down"},
              {"went down in the crush", "went_down"},
              {"fever and sore mouth", "sore_mouth fever"},
              {"sie liegt am Boden", "went_down"},
              {"no time", ""},
              {"lay down in the crush", ""},
              {"swollen hock", ""},
              {"\"331 xyzzy went down badly\" was not understood", "went_down"},
              {"\"331 foo blisters\", \"LH bar\" were not understood", "blisters"},
              {"\"331 LH foul smellz\" was not understood", "IP"},
              {"\"331 Fieber xyz\" was not understood", "fever"},
              {"\"331 LH keeps bleeding, foo\" was not understood", "bleeding"},
              {"\"331 LH pus out of it xyz\" was not understood", "pus_above"},
              {"\"331 Eiter raus xyz\" was not understood", "pus_above"},
              {"\"801 blistrs in the mouth\" was not understood", "sore_mouth"},
              {"\"803 fevr\" was not understood", "fever"},
              {"\"807 went dwn in the crush\" was not understood", "went_down"},
              {"\"810 LH toe necrossis\" was not understood", "TN"},
              {"\"812 LH foll between, bad\" was not understood", "IP"},
              {"\"861 LH pus abov the coronet\" was not understood", "pus_above"},
              {"fevr", "fever"},
              {"blistrs on her tongue", "blisters"},
              {"has a temperature", "fever"},
              {"salivating", "sore_mouth"},
              {"vesicles", "blisters"},
              {"ulcers in the mouth", "sore_mouth"},
              {"sores on the teats", "blisters"},
              {"cannot get up", "went_down"},
              {"downer", "went_down"},
              {"three legged lame", "worst-walk-needs-the-vet"},
              {"joint swollen", "SW"},
              {"bone is showing", "bone_showing"},
              {"bled a lot", "bleeding"},
              {"\"9 LH bleding\" was not understood", "bleeding"},
              {"\"9 LH fracture\" was not understood", "worst-walk-needs-the-vet"},
              {"bleeding", "bleeding"},
              {"\"9 xyzq on\" was not understood", ""},
              {"\"9 blok on inside\" was not understood", ""},
              {"\"9 LH sole ulcr, block on inside\" was not understood", ""},
              {"\"9 wrap stil on\" was not understood", ""},
              {"plus the other one", ""},
              {"\"331 LH SU foo\" was not understood", ""}};

  for (const auto& row : rows) CHECK_MESSAGE(named(row.words) == row.named, row.words);
}

TEST_CASE("a sign in a line nobody understood is only asked about, one of a reason is told") {
  for (const auto& [words, is_asked] :
       {std::pair("\"331 foo blisters\" was not understood", true), std::pair("fever", false)}) {
    InventedDay day("Hollow Meadow");
    TurnRow& turn = day.turn("331");
    turn.end = TurnEnd::unfinished;
    turn.end_reason = words;
    const VisitView view = view_of(day.input(), english_wording());
    const std::vector<SignOfHer> signs = signs_of_her(view.cows.at(0));
    REQUIRE(signs.size() == 1);
    CHECK(signs.front().is_only_asked == is_asked);
  }
}

TEST_CASE("of a note what is found counts, a swelling alone only on a foot, explained pus not") {
  const struct {
    const char* words;
    HeardAs as;
    std::size_t signs;
  } rows[] = {{"swollen above the horn", {}, 0},
              {"swollen above the horn", {.may_be_found = true}, 1},
              {"swollen hock", {.may_be_found = true}, 0},
              {"swollen", {.may_be_found = true, .is_of_foot = true}, 1},
              {"pus", {.may_be_found = true}, 1},
              {"pus", {.may_be_found = true, .is_pus_explained = true}, 0},
              {"pus above the horn", {.may_be_found = true, .is_pus_explained = true}, 1}};

  for (const auto& row : rows) {
    CHECK_MESSAGE(signs_in_words(row.words, row.as).size() == row.signs, row.words);
  }
}

TEST_CASE("words name the vet unless he came or is not needed") {
  CHECK(names_the_vet("the vet should see it"));
  CHECK(names_the_vet("Tierarzt soll gucken"));
  CHECK_FALSE(names_the_vet("vet not needed"));
  CHECK_FALSE(names_the_vet("vet came"));
  CHECK_FALSE(names_the_vet("runs with the dry cows"));
}

}  // namespace evenclaw
