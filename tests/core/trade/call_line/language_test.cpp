#include "core/trade/call_line/language.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

using K = TermKind;

// An invented language, to show that a language is a table and no code.
constexpr Phrase moonish_phrases[] = {
    says("bim", K::foot, Foot::lh),
    says("bam", K::foot, Foot::rh),
    says("ola", K::claw, Claw::outside),
    says("ula", K::claw, Claw::inside),
    says("krik lun", K::lesion, Lesion::wla),
    says("krik", K::lesion, Lesion::wl),
    says("mor", K::lesion, Lesion::dd),
    says("tak", K::place, Place::heel),
    says("achi", K::place, Place::behind),
    says("furcht", K::degree, Degree::bad),
    says("roh", K::stage, DdStage::raw),
    says("klotz", K::block_act, ActionKind::block_on),
    says("wik\xC3\xB6l", K::wrap_act, ActionKind::wrap_on),
    says("wik\xC3\xB6l pum", K::wrap_act, ActionKind::wrap_off),
    says("okulo", K::see_again, ActionKind::see_again),
    {"ab", K::off},
    says("dod", K::weekday, Weekday::thursday),
    {"tago", K::day_unit},
    {"hum", K::lame},
    {"resto bona", K::rest_fine},
    {"kaj", K::conjunction},
    {"noto", K::note},
    says("for", K::news, News::gone),
};

constexpr std::string_view moonish_how_done[] = {"duoble"};
constexpr std::string_view moonish_number_leads[] = {"numer"};
constexpr ShortWord moonish_short_words[] = {{"q", "mip"}};
constexpr std::string_view moonish_fillers[] = {"ol"};

const Language& moonish() {
  static const Language language(
      "moonish", moonish_phrases,
      {moonish_how_done, moonish_number_leads, moonish_short_words, moonish_fillers, {}, {}});
  return language;
}

std::string match_in(const Language& language, std::string_view line) {
  const std::vector<Token> tokens = tokens_of(line);
  const Language::Match match = language.longest_match(tokens, 0);
  return match.phrase == nullptr ? "" : std::string(match.phrase->words);
}

}  // namespace

TEST_CASE("the longest phrase is taken") {
  CHECK(match_in(english(), "white line abscess heel") == "white line abscess");
  CHECK(match_in(english(), "white line heel") == "white line");
  CHECK(match_in(english(), "white heel").empty());
  CHECK(match_in(english(), "412").empty());
}

TEST_CASE("behind the last word no phrase begins") {
  const std::vector<Token> tokens = tokens_of("412");
  CHECK(english().longest_match(tokens, tokens.size()).phrase == nullptr);
}

TEST_CASE("a zone is the sign of the zone and a number in one word") {
  CHECK(english().zone_in("z4") == 4);
  CHECK(english().zone_in("zone12") == 12);
  CHECK_FALSE(english().zone_in("z").has_value());
  CHECK_FALSE(english().zone_in("zx").has_value());
  CHECK_FALSE(english().zone_in("z99999").has_value());
  CHECK_FALSE(english().zone_in("heel").has_value());
}

TEST_CASE("the first words of a meaning are printed") {
  CHECK(english().say(K::foot, Foot::lh) == "LH");
  CHECK(english().say(K::wrap_act, ActionKind::wrap_off) == "wrap taken off");
  CHECK(moonish().say(K::foot, Foot::lf).empty());
}

TEST_CASE("a second language needs no code: lines are read with its words") {
  const Turn said =
      saying::turn_of({"412 hum bim", "BIM ola krik-lun tak, furcht; klotz ula; okulo 28 tago",
                       "bam mor roh achi; wik\xC3\x96l, ab dod", "resto bona"},
                      moonish());
  const Turn meant = saying::turn_of(
      {"412 lame LH", "LH outside white line abscess heel, bad; block on inside; see again 28d",
       "RH DD raw behind; wrap on, off Thu", "rest fine"});
  CHECK(said == meant);
}

TEST_CASE("a second language needs no code: turns are printed and read back with its words") {
  const Turn turn = saying::turn_of(
      {"412 lame LH", "LH outside white line abscess heel, bad; block on inside; see again 28d"});
  const std::vector<std::string> lines = print_turn(turn, moonish());
  REQUIRE(lines.size() == 2);
  CHECK(lines[0] == "412 hum bim");
  CHECK(lines[1] == "bim ola krik lun tak, furcht; klotz ula; okulo 28 tago");
  CHECK(saying::turn_of(lines, moonish()) == turn);
}

TEST_CASE("a second language needs no code: news, faults and offers come in its words") {
  const Result<Line> news = read_line("77 for", saying::in_crush(false), moonish());
  REQUIRE(news.ok());
  CHECK(std::get<NewsSaid>(news.value().clauses.front()).news == News::gone);

  const Faults faults = saying::faults_of("bim ola krik lum", true, moonish());
  REQUIRE(faults.size() == 1);
  CHECK(faults.front().token == "krik lum");
  CHECK(faults.front().remedy.find("krik lun") != std::string::npos);

  const auto offered = what_may_follow("412 bim ola krik", saying::in_crush(false), moonish());
  REQUIRE_FALSE(offered.empty());
  CHECK(offered.front().words == "lun");
}

TEST_CASE("a second language needs no code: it has its own words beside") {
  CHECK(moonish().tells_how_done("duoble"));
  CHECK_FALSE(moonish().tells_how_done("twice"));
  CHECK(english().tells_how_done("twice"));
  CHECK(moonish().leads_a_number("numer"));
  CHECK_FALSE(moonish().leads_a_number("nr"));
  CHECK(english().leads_a_number("nr"));
  CHECK(moonish().fills("ol"));
  CHECK_FALSE(moonish().fills("the"));
  CHECK(english().fills("the"));
}

TEST_CASE("numbers are joined by a comma, a sign or the language's own word") {
  CHECK(english().joining_tokens(tokens_of("412, 513"), 1) == 1);
  CHECK(english().joining_tokens(tokens_of("412 & 513"), 1) == 1);
  CHECK(english().joining_tokens(tokens_of("412 and 513"), 1) == 1);
  CHECK(english().joining_tokens(tokens_of("412 kaj 513"), 1) == 0);
  CHECK(moonish().joining_tokens(tokens_of("412 kaj 513"), 1) == 1);
  CHECK(english().joining_tokens(tokens_of("412 513"), 1) == 0);
  CHECK(english().joining_tokens(tokens_of("412"), 1) == 0);
}

TEST_CASE("what a phrase of another language means is said in one's own words, all or one") {
  CHECK(english().say_as(says("wik", K::wrap_act, ActionKind::wrap_off)) == "wrap taken off");
  CHECK(english().say_as(says_of_all("wik", K::wrap_act, ActionKind::wrap_off)) ==
        "wraps taken off");
  CHECK(moonish().say_as(says("LF", K::foot, Foot::lf)).empty());
}

TEST_CASE("words of one language mean nothing in another") {
  CHECK_FALSE(saying::faults_of("LH outside SU", true, moonish()).empty());
  CHECK_FALSE(saying::faults_of("bim ola krik", true).empty());
}

TEST_CASE("an ending behind an apostrophe is short for a word of the language") {
  CHECK(moonish().short_for("q") == "mip");
  CHECK(moonish().short_for("s").empty());
  CHECK(english().short_for("s") == "is");
}

TEST_CASE("an answer says in either language that what was told does not hold") {
  struct Row {
    const Language& language;
    const char* words;
    bool is_wrong;
  };

  const Row rows[] = {
      {english(), "told of the wrong cow", true},
      {english(), "Mistaken, it was 412", true},
      {english(), "not so", true},
      {english(), "she is not sore on it", false},
      {english(), "the farmer put it on, no mistake", false},
      {english(), "put on by the farmer", false},
      {german(), "das war die falsche Kuh", true},
      {german(), "stimmt nicht", true},
      {german(), "kein Irrtum, der Bauer hat ihn geklebt", false},
      {german(), "stimmt, nicht mehr drauf", false},
  };
  for (const Row& row : rows) {
    CAPTURE(row.words);
    CHECK(row.language.says_it_was_wrong(row.words) == row.is_wrong);
  }
}

TEST_CASE("who is dead died, and who was sold was not culled") {
  CHECK(english().alike_to("dead") == "died");
  CHECK(english().alike_to("died") == "died");
  CHECK(german().alike_to("tot") == "verendet");
  CHECK(english().alike_to("sold") == "sold");
  CHECK(english().alike_to("culled") == "culled");
  CHECK(english().alike_to("") == "");
  CHECK(moonish().alike_to("for") == "for");
}

TEST_CASE("a fall is heard in whole words only") {
  CHECK(english().tells_of_a_fall("She went down, let her out"));
  CHECK_FALSE(english().tells_of_a_fall("went, down the road"));
  CHECK_FALSE(english().tells_of_a_fall("felled"));
  CHECK(german().tells_of_a_fall("liegt am Boden"));
  CHECK_FALSE(moonish().tells_of_a_fall("went down"));
}

TEST_CASE("every language has its words for a fall, and which of its words are alike") {
  for (const CallLanguage& each : call_languages()) {
    CAPTURE(each.code);
    const Language& language = each.words();
    CHECK_FALSE(language.words_beside().falls.empty());
    CHECK_FALSE(language.words_beside().alike.empty());
    for (const WordsAlike& alike : language.words_beside().alike) {
      CAPTURE(alike.words);
      const std::vector<Token> words = tokens_of(alike.words);
      const std::vector<Token> as = tokens_of(alike.as);
      const Language::Match one = language.longest_match(words, 0);
      const Language::Match other = language.longest_match(as, 0);
      REQUIRE(one.phrase != nullptr);
      REQUIRE(other.phrase != nullptr);
      CHECK(one.phrase->words == alike.words);
      CHECK(other.phrase->words == alike.as);
      CHECK(one.phrase->kind == other.phrase->kind);
      CHECK(one.phrase->value == other.phrase->value);
    }
  }
}
