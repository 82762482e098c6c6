// The German table, tried with the lines of docs/format/call-line-de.md as they stand there.
#include <doctest/doctest.h>

#include <fstream>
#include <set>
#include <string>

#include "core/trade/call_line/known_of_her.hpp"
#include "tests/core/trade/call_line/random_turn.hpp"
#include "tests/core/trade/call_line/saying.hpp"
#include "tests/core/trade/call_line/worked_lines.hpp"

using namespace evenclaw;
using saying::rows_under;
using saying::WorkedLine;

namespace {

std::string page_text() {
  std::ifstream file(saying::german_page);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

Turn turn_of(const WorkedLine& row) {
  std::vector<std::string> lines = row.before;
  lines.push_back(row.line);
  return saying::turn_of(lines, german());
}

}  // namespace

TEST_CASE("the German lines of the page say what stands beside them in English") {
  const std::vector<WorkedLine> rows = rows_under("auf Deutsch", saying::german_page);
  CHECK(rows.size() == 20);
  for (const WorkedLine& row : rows) {
    INFO("line ", row.number, ": ", row.line);
    const Turn turn = turn_of(row);
    CHECK(saying::joined(print_turn(turn, german())) == row.outcome);
    CHECK(saying::joined(print_turn(turn, english())) == row.also);
  }
}

TEST_CASE("a refused German line points at the word and proposes German ones") {
  const std::vector<WorkedLine> rows = rows_under("refused", saying::german_page);
  CHECK(rows.size() == 5);
  for (const WorkedLine& row : rows) {
    INFO("line ", row.number, ": ", row.line);
    const Faults faults = saying::faults_of(row.line, true, german());
    REQUIRE(faults.size() == 1);
    const Fault& fault = faults.front();
    CHECK(std::to_string(fault.column) + " " + fault.token + ": " + fault.slug == row.outcome);
    INFO("remedy: ", fault.remedy);
    CHECK(fault.remedy.find(row.also) != std::string::npos);
  }
}

TEST_CASE("in German every turn reads back as it was printed") {
  for (std::uint64_t stream = 0; stream < 1500; ++stream) {
    RandomStream draw(413, stream);
    const Turn turn = random_turn::any_turn(draw);
    const std::vector<std::string> lines = print_turn(turn, german());
    INFO("stream ", stream, ": ", saying::joined(lines));
    CHECK(saying::turn_of(lines, german()) == turn);
  }
}

TEST_CASE("no German words have two meanings") {
  std::set<std::string> seen;
  for (std::size_t i = 0; i < german().phrases().size(); ++i) {
    CAPTURE(german().folded(i));
    CHECK(seen.insert(german().folded(i)).second);
  }
}

TEST_CASE("all that can be said in English can be said in German") {
  for (const Phrase& phrase : english().phrases()) {
    CAPTURE(phrase.words);
    CHECK_FALSE(german().say_as(phrase).empty());
  }
}

TEST_CASE("the German page lists every word, those that were left in English too") {
  const std::string text = page_text();
  for (const Phrase& phrase : german().phrases()) {
    CAPTURE(phrase.words);
    CHECK(text.find("`" + std::string(phrase.words) + "`") != std::string::npos);
  }
}

TEST_CASE("a German cow that lies down goes on, one that goes to the ground does not") {
  const Turn lies = saying::turn_of({"412 HL Limax", "sie legt sich hin"}, german());
  CHECK(lies.end == TurnEnd::done);
  REQUIRE(lies.actions.size() == 1);
  CHECK(lies.actions.front().kind == ActionKind::lies_down);
  CHECK(saying::turn_of({"412 HL Limax", "sie geht zu Boden"}, german()).end ==
        TurnEnd::unfinished);
}

TEST_CASE("a word that German trimmers use of more than one disease is none of them") {
  for (const char* word : {"Phlegmone", "Fäule", "Eiter"}) {
    CAPTURE(word);
    CHECK_FALSE(saying::faults_of("412 HL " + std::string(word), false, german()).empty());
  }
}

TEST_CASE("letters a keyboard lacks may be spelt out") {
  const Turn turn = saying::turn_of({"412 HL außen dünne Sohle; geöffnet"}, german());
  CHECK(saying::turn_of({"412 HL aussen duenne Sohle; geoeffnet"}, german()) == turn);
}

TEST_CASE("what is offered behind a half German line is German") {
  const auto offered = what_may_follow("412 HL Weiße-Linie", saying::in_crush(false), german());
  REQUIRE_FALSE(offered.empty());
  CHECK(offered.front().words.find("Abszess") != std::string::npos);
}

TEST_CASE("a word is taken from the complete table only where its meaning has none") {
  constexpr Phrase own[] = {says("HL", TermKind::foot, Foot::lh)};
  constexpr Phrase complete[] = {says("LH", TermKind::foot, Foot::lh),
                                 says("RH", TermKind::foot, Foot::rh),
                                 says("HL", TermKind::lesion, Lesion::hf)};
  const std::vector<Phrase> all = with_missing_from(own, complete);
  REQUIRE(all.size() == 2);
  CHECK(all[0].words == "HL");
  CHECK(all[1].words == "RH");
}

TEST_CASE("a German note that it stinks is heard as an English one is") {
  constexpr int stinks = static_cast<int>(KeptWord::stinks);
  CHECK(holds_phrase("es stinkt", TermKind::kept_word, stinks, german()));
  CHECK_FALSE(holds_phrase("es stinkt", TermKind::kept_word, stinks, english()));
}

TEST_CASE("a language is found by its code") {
  REQUIRE(call_language("de") != nullptr);
  CHECK(&call_language("de")->words() == &german());
  CHECK(call_language("xx") == nullptr);
}
