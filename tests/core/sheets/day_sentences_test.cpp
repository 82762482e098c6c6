#include "core/sheets/day_sentences.hpp"

#include <doctest/doctest.h>

#include "core/base/random.hpp"
#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

std::vector<std::string> sentences_of(const VisitSheetInput& input) {
  return day_sentences(view_of(input, english_wording()));
}

/// Every number with the word before and the word behind it.
struct Number {
  std::string before;
  int value = 0;
  std::string behind;
};

std::vector<Number> numbers_in(const std::string& sentence) {
  std::vector<std::string> words(1);
  for (const char letter : sentence) {
    const bool glued =
        letter == '(' || letter == ')' || letter == ',' || letter == ';' || letter == '.';
    if (letter == ' ') {
      words.emplace_back();
    } else if (!glued) {
      words.back() += letter;
    }
  }
  std::vector<Number> numbers;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i].empty() || words[i].find_first_not_of("0123456789") != std::string::npos) continue;
    numbers.push_back(
        {i > 0 ? words[i - 1] : "", std::stoi(words[i]), i + 1 < words.size() ? words[i + 1] : ""});
  }
  return numbers;
}

VisitSheetInput random_day(RandomStream& random) {
  InventedDay day("Hollow Meadow");
  const auto cows = static_cast<int>(random.below(30));
  for (int i = 0; i < cows; ++i) {
    const bool lame = random.below(4) == 0;
    TurnRow& turn = day.turn(std::to_string(100 + i), lame ? Reason::lame : Reason::routine);
    if (random.below(8) == 0) {
      turn.end = TurnEnd::not_done;
      continue;
    }
    day.rest_fine();
    if (random.below(3) == 0) {
      day.found({Foot::lh, Claw::outside, random.below(2) == 0 ? Lesion::su : Lesion::wla});
    }
  }
  return day.input();
}

}  // namespace

TEST_CASE("the day is told with what each count is out of") {
  CHECK(sentences_of(three_cow_day()) ==
        std::vector<std::string>{
            "Feet were lifted on 3 of 3 cows that came or were expected.",
            "Something was found on 2 of 3 cows with feet lifted, such as digital dermatitis (1 "
            "of 3 cows) and white line abscess (1 of 3 cows).",
            "1 of 3 cows that were in the crush came lame: 1 of 1 with something "
            "found on a lame leg."});
}

TEST_CASE("below ten cows there is no percentage, from ten on it stands behind its count") {
  for (const int cows : {9, 10}) {
    InventedDay day("Hollow Meadow");
    for (int i = 0; i < cows; ++i) {
      day.turn(std::to_string(100 + i));
      day.rest_fine();
      if (i < 3) day.found({Foot::lh, Claw::outside, Lesion::su});
    }
    const std::string sentence = sentences_of(day.input()).at(1);
    CHECK((sentence.find("3 of 10 cows with feet lifted (30 %)") != std::string::npos) ==
          (cows == 10));
    CHECK((sentence.find('%') != std::string::npos) == (cows == 10));
  }
}

TEST_CASE("cows not seen and not done count among those expected") {
  CHECK(sentences_of(day_with_doubts()).at(0) ==
        "Feet were lifted on 3 of 5 cows that came or were expected.");
}

TEST_CASE("a day without cows says so and nothing else") {
  InventedDay day("Hollow Meadow");
  CHECK(sentences_of(day.input()) == std::vector<std::string>{"No cow was called at this visit."});
}

TEST_CASE("nothing found is said with how many were looked at") {
  CHECK(sentences_of(day_with_nothing_found()).at(1) ==
        "Nothing was found on 12 of 12 cows with feet lifted.");
}

TEST_CASE("a lame cow with something on another leg has no cause shown") {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::lame, {Foot::lh});
  day.found({Foot::rh, Claw::outside, Lesion::su});
  CHECK(sentences_of(day.input()).at(2) ==
        "1 of 1 cows that were in the crush came lame: 1 of 1 with nothing found or called "
        "on a lame leg.");
}

TEST_CASE("a finding on a cow whose lame leg nobody called is not counted as found on it") {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::lame);
  day.found({Foot::rh, Claw::outside, Lesion::su});
  CHECK(sentences_of(day.input()).at(2) ==
        "1 of 1 cows that were in the crush came lame: 1 of 1 with the lame leg not "
        "called.");
  day.turn("413", Reason::lame, {Foot::lh});
  day.found({Foot::lh, Claw::outside, Lesion::su});
  CHECK(sentences_of(day.input()).at(2) ==
        "2 of 2 cows that were in the crush came lame: 1 of 2 with something found on a "
        "lame leg, 1 of 2 with the lame leg not called.");
}

TEST_CASE("blisters on the lame leg are something found on it") {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::lame, {Foot::lh});
  day.foot(Foot::lh, FootState::finding);
  day.did({ActionKind::blisters, Foot::lh});
  CHECK(sentences_of(day.input()).at(2) ==
        "1 of 1 cows that were in the crush came lame: 1 of 1 with something found on a lame "
        "leg.");
}

TEST_CASE("what she is trimmed for and what the knife did is nothing that was found") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.rest_fine();
  day.found({Foot::lh, Claw::outside, Lesion::overgrown});
  day.turn("413");
  day.rest_fine();
  day.found({Foot::lh, Claw::outside, Lesion::blood_drawn});
  CHECK(sentences_of(day.input()).at(1) ==
        "Nothing was found on 2 of 2 cows with feet lifted. Not counted as found: blood drawn and "
        "overgrown.");
}

TEST_CASE("a cow of whose foot nobody said what was found counts neither way") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::nothing_found);
  day.turn("413");
  day.foot(Foot::lh, FootState::nothing_found);
  day.foot(Foot::rh, FootState::unsaid);
  CHECK(sentences_of(day.input()).at(1) ==
        "Nothing was found on 1 of 1 cows of whom it was said what was found.");
}

TEST_CASE("why the cows came is told as not called where nobody said") {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::not_called);
  day.rest_fine();
  day.turn("413");
  day.rest_fine();
  CHECK(sentences_of(day.input()).at(2) ==
        "0 of 2 cows that were in the crush came lame. Reason not called: 1 of 2 cows that were "
        "called.");
}

TEST_CASE("what ties with the second of the most found is named too, unless too many do") {
  struct Row {
    std::vector<int> cows;  // with each lesion
    const char* words;
  };

  const Row rows[] = {
      {{3, 2, 2},
       "most often sole ulcer (3 of 10 cows), white line abscess (2 of 10 cows) and growth between "
       "the claws (2 of 10 cows)."},
      {{3, 1, 1, 1, 1}, "most often sole ulcer (3 of 10 cows)."},
      {{1, 1, 1, 1, 1}, "such as "}};
  constexpr Lesion lesions[] = {Lesion::su, Lesion::wla, Lesion::ih, Lesion::tu, Lesion::hhe};
  for (const Row& row : rows) {
    InventedDay day("Hollow Meadow");
    for (int i = 0; i < 10; ++i) {
      day.turn(std::to_string(100 + i));
      day.rest_fine();
      for (std::size_t at = 0; at < row.cows.size(); ++at) {
        if (i < row.cows[at]) day.found({Foot::lh, Claw::outside, lesions[at]});
      }
    }
    const std::string sentence = sentences_of(day.input()).at(1);
    CAPTURE(sentence);
    CHECK(sentence.find(row.words) != std::string::npos);
  }
}

TEST_CASE("every number of any day stands with its denominator") {
  RandomStream random(20261124, 1);
  for (int i = 0; i < 200; ++i) {
    for (const std::string& sentence : sentences_of(random_day(random))) {
      for (const Number& number : numbers_in(sentence)) {
        const bool is_count = number.behind == "of";
        const bool is_base = number.before == "of";
        const bool is_percent = number.behind == "%";
        CHECK_MESSAGE(is_count + is_base + is_percent == 1, sentence);
      }
    }
  }
}

}  // namespace evenclaw
