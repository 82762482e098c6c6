#include "core/trade/call_line/off_together.hpp"

#include <string>
#include <utility>

#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

std::optional<FixtureSaid> fixture_in(const Phrase* phrase) {
  if (phrase == nullptr) return std::nullopt;
  if (phrase->kind == TermKind::block_of) return FixtureSaid{Fixture::block, FixtureStep::put_on};
  const bool is_fixture = phrase->kind == TermKind::block_act || phrase->kind == TermKind::wrap_act;
  return is_fixture ? fixture_said(static_cast<ActionKind>(phrase->value)) : std::nullopt;
}

bool tells_its_fate(const FixtureSaid& said) {
  return is_off_after(said.step) || said.step == FixtureStep::left_on ||
         said.step == FixtureStep::not_known;
}

/// Behind claws, and behind what a block is made of.
std::size_t behind_details(std::span<const Token> tokens, std::size_t at,
                           const Language& language) {
  for (;;) {
    const Language::Match match = language.longest_match(tokens, at);
    const bool is_detail = match.phrase != nullptr && (match.phrase->kind == TermKind::claw ||
                                                       match.phrase->kind == TermKind::material);
    if (!is_detail) return at;
    at += match.word_count;
  }
}

/// The bare word at `at` and what stands behind it.
struct Together {
  const Phrase* of_first = nullptr;  // "wrap off", when the second is off
  std::size_t second = 0;            // where what became of the other one begins
  std::size_t second_end = 0;
  bool has_details = false;  // "block inside and wrap off"
  bool has_comma = false;
};

/// "Wrap off" for "wrap" and the fate of a block: any phrase of that word which tells the same.
const Phrase* same_fate(const std::string& word, const FixtureSaid& fate,
                        const Language& language) {
  for (std::size_t i = 0; i < language.phrases().size(); ++i) {
    if (language.folded(i).rfind(word + ' ', 0) != 0) continue;
    const Phrase& phrase = language.phrases()[i];
    const std::optional<FixtureSaid> said = fixture_in(&phrase);
    if (said && said->fixture != fate.fixture && said->step == fate.step) return &phrase;
  }
  return nullptr;
}

std::optional<Together> said_together(std::span<const Token> tokens, std::size_t at,
                                      const Language& language) {
  if (at >= tokens.size() || tokens[at].kind != TokenKind::word) return std::nullopt;
  const Language::Match word = language.longest_match(tokens, at);
  const std::optional<FixtureSaid> put_on = fixture_in(word.phrase);
  const bool is_bare = word.word_count == 1 && put_on && put_on->step == FixtureStep::put_on;
  if (word.phrase != nullptr && !is_bare) return std::nullopt;
  Together both;
  std::size_t behind = behind_details(tokens, at + 1, language);
  both.has_details = behind > at + 1;
  const std::size_t first_joint = behind;
  while (const std::size_t joint = language.joining_tokens(tokens, behind)) {
    both.has_comma = both.has_comma || tokens[behind].kind == TokenKind::comma;
    behind += joint;
  }
  if (behind == first_joint) return std::nullopt;
  both.second = behind_details(tokens, behind, language);
  const Language::Match other = language.longest_match(tokens, both.second);
  const std::optional<FixtureSaid> fate = fixture_in(other.phrase);
  if (!fate || !tells_its_fate(*fate)) return std::nullopt;
  both.second_end = both.second + other.word_count;
  both.of_first = same_fate(tokens[at].folded, *fate, language);
  return both.of_first == nullptr ? std::nullopt : std::optional(both);
}

bool is_led_in(std::span<const Token> tokens, const Language& language) {
  const std::size_t start = first_said(tokens, language);
  const Phrase* first = language.longest_match(tokens, start).phrase;
  return first != nullptr && first->kind == TermKind::news_lead;
}

}  // namespace

Language::Match match_of_both(std::span<const Token> tokens, std::size_t at,
                              const Language& language) {
  const std::optional<Together> both = said_together(tokens, at, language);
  const bool is_clear =
      both && !both->has_details && (!both->has_comma || is_led_in(tokens, language));
  if (is_clear) return {both->of_first, 1};
  return language.longest_match(tokens, at);
}

std::optional<PlacedFault> off_too_or_put_on(const NextStep& next, const Language& language) {
  const std::optional<FixtureSaid> first = [&]() -> std::optional<FixtureSaid> {
    const Phrase phrase{next.term.said, next.term.kind, next.term.value};
    return fixture_in(&phrase);
  }();
  if (!first || first->step != FixtureStep::put_on) return std::nullopt;
  const auto both = said_together(next.tokens, next.term.first_token, language);
  if (!both) return std::nullopt;
  const auto words_of = [&](std::size_t from, std::size_t end) {
    const Token& last = next.tokens[end - 1];
    const std::size_t begin = next.tokens[from].offset;
    return std::string(next.text.substr(begin, last.offset + last.length - begin));
  };
  const std::size_t behind = next.term.first_token + 1;
  const std::size_t end = behind_details(next.tokens, behind, language);
  const std::string details = end > behind ? ' ' + words_of(behind, end) : std::string();
  const std::string second = "; " + words_of(both->second, both->second_end) + '"';
  const std::string off(language.say_as(*both->of_first));
  const std::string on(next.term.kind == TermKind::block_of
                           ? next.term.said
                           : language.say(next.term.kind, next.term.value));
  const std::string said(next.term.said);
  return PlacedFault{
      not_understood(
          "is that said of the " + said + " as well, or is the " + said + " put on today?",
          "of both: \"" + off + details + second + "; put on today: \"" + on + details + second),
      next.term};
}

}  // namespace evenclaw
