#include "core/trade/call_line/batch_line.hpp"

#include <algorithm>
#include <string>
#include <utility>

#include "core/trade/batch.hpp"
#include "core/trade/call_line/grammar.hpp"
#include "core/trade/call_line/spoken_numbers.hpp"
#include "core/trade/reason.hpp"

namespace evenclaw {

namespace {

const Phrase* phrase_at(std::span<const Token> tokens, std::size_t at, const Language& language) {
  return at < tokens.size() ? language.longest_match(tokens, at).phrase : nullptr;
}

bool is_kind_at(std::span<const Token> tokens, std::size_t at, TermKind kind,
                const Language& language) {
  const Phrase* phrase = phrase_at(tokens, at, language);
  return phrase != nullptr && phrase->kind == kind;
}

bool tells_what_became(TermKind kind) {
  constexpr TermKind kinds[] = {TermKind::rest_fine,   TermKind::foot_state, TermKind::trimmed,
                                TermKind::all_trimmed, TermKind::only,       TermKind::bar,
                                TermKind::twice,       TermKind::feet,       TermKind::foot};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

bool is_separator(TokenKind kind) {
  return kind == TokenKind::comma || kind == TokenKind::colon || kind == TokenKind::strong;
}

/// "And the lame one", "and 413".
bool names_another(std::span<const Token> tokens, std::size_t conjunction,
                   const Language& language) {
  const std::size_t behind = conjunction + 1;
  if (!is_kind_at(tokens, conjunction, TermKind::conjunction, language)) return false;
  if (behind >= tokens.size()) return true;
  const Phrase* phrase = phrase_at(tokens, behind, language);
  const bool goes_on = phrase != nullptr && tells_what_became(phrase->kind);
  return goes_on || tokens[behind].kind == TokenKind::number ||
         language.is_article(tokens[behind].folded);
}

bool is_number_alone(std::span<const Token> tokens, std::size_t at, const Language& language) {
  if (tokens[at].kind != TokenKind::number) return false;
  const std::size_t behind = at + 1;
  return behind == tokens.size() || is_separator(tokens[behind].kind) ||
         names_another(tokens, behind, language);
}

/// What is said of one animal only, and no words for a place.
bool is_called_of_one(TermKind kind) {
  constexpr TermKind kinds[] = {TermKind::foot,
                                TermKind::feet,
                                TermKind::claw,
                                TermKind::lesion,
                                TermKind::lame,
                                TermKind::block_act,
                                TermKind::wrap_act,
                                TermKind::opened_act,
                                TermKind::block_of,
                                TermKind::product_act,
                                TermKind::stage,
                                TermKind::other_lesion,
                                TermKind::see_again,
                                TermKind::watch,
                                TermKind::walks_sound,
                                TermKind::measure,
                                TermKind::white_line_place};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

Term at_phrase(const NextStep& next, std::size_t at, std::size_t count) {
  Term term = next.term;
  term.first_token = at;
  term.token_count = std::max<std::size_t>(count, 1);
  return term;
}

std::optional<PlacedFault> called_in_a_place(const NextStep& next, const Language& language) {
  const std::size_t end = next.term.first_token + next.term.token_count;
  for (std::size_t at = next.term.first_token; at < end;) {
    const Language::Match match = language.longest_match(next.tokens, at);
    if (match.phrase != nullptr && match.phrase->kind == TermKind::animals) {
      return PlacedFault{not_understood("animals are counted twice in this line",
                                        "give each count a line of its own"),
                         at_phrase(next, at, match.word_count)};
    }
    if (match.phrase != nullptr && is_called_of_one(match.phrase->kind)) {
      return PlacedFault{not_understood("what is found or done is called of one cow, by her number "
                                        "or what she looks like; a count tells that nothing was "
                                        "found or that they were trimmed",
                                        "count the others, and call her on a line of her own"),
                         at_phrase(next, at, match.word_count)};
    }
    at += std::max<std::size_t>(match.word_count, 1);
  }
  return std::nullopt;
}

/// "One" counts one and is no number here.
bool counts_several(const NextStep& next, std::size_t at, const Language& language) {
  if (next.tokens[at].kind == TokenKind::number) return true;
  const Phrase* phrase = phrase_at(next.tokens, at, language);
  if (phrase == nullptr) return false;
  const bool is_many = phrase->kind == TermKind::number_word && phrase->value > 1;
  return is_many || phrase->kind == TermKind::animals || phrase->kind == TermKind::alternative;
}

std::optional<PlacedFault> several_apart(const NextStep& next, const Language& language) {
  const std::size_t end = next.term.first_token + next.term.token_count;
  for (std::size_t at = next.term.first_token; at < end; ++at) {
    const Phrase* phrase = phrase_at(next.tokens, at, language);
    const bool describes = phrase != nullptr && phrase->kind == TermKind::lame;
    if (phrase != nullptr && is_called_of_one(phrase->kind) && !describes) {
      return PlacedFault{not_understood("what was found or done is called of her, not told with "
                                        "what she looks like",
                                        "say only what she looks like, and call the rest on the "
                                        "next line"),
                         next.term};
    }
    if (!counts_several(next, at, language)) continue;
    return PlacedFault{
        not_understood("it is unclear who was not like the others: each is named by herself",
                       "say who, one after the other: \"{bar} ... {and} ...\"; or count only the "
                       "others and call her on a line of her own"),
        next.term};
  }
  return std::nullopt;
}

/// "12 fresh heifers". "412 big head" may be what a cow looks like.
bool has_a_word_between(std::span<const Token> tokens, std::size_t number,
                        const Language& language) {
  constexpr std::size_t most_digits = 3;
  const std::size_t at = number + 1;
  if (tokens[number].length > most_digits || tokens[at].kind != TokenKind::word) return false;
  const Language::Match word = language.longest_match(tokens, at);
  const bool is_like = word.phrase == nullptr || word.phrase->kind == TermKind::reason;
  const Phrase* behind =
      phrase_at(tokens, at + std::max<std::size_t>(word.word_count, 1), language);
  return is_like && behind != nullptr && behind->kind == TermKind::animals &&
         static_cast<AnimalKind>(behind->value) != AnimalKind::animals;
}

}  // namespace

bool counts_animals(std::span<const Token> tokens, const Language& language) {
  std::size_t at = 0;
  if (is_kind_at(tokens, 0, TermKind::correction, language)) {
    at = language.longest_match(tokens, 0).word_count;
    if (at < tokens.size() && tokens[at].kind == TokenKind::comma) ++at;
  }
  if (at + 1 >= tokens.size() || tokens[at].kind != TokenKind::number) return false;
  return is_kind_at(tokens, at + 1, TermKind::animals, language) ||
         has_a_word_between(tokens, at, language);
}

std::size_t batch_token_count(std::span<const Token> tokens, std::size_t at,
                              const Language& language) {
  if (is_number_alone(tokens, at, language)) return 0;
  std::size_t end = at;
  while (end < tokens.size() && !is_separator(tokens[end].kind)) {
    const Language::Match match = language.longest_match(tokens, end);
    if (match.phrase != nullptr && tells_what_became(match.phrase->kind)) break;
    if (names_another(tokens, end, language)) break;
    end += std::max<std::size_t>(match.word_count, 1);
  }
  return end - at;
}

std::optional<PlacedFault> swallowed_by_a_batch(const NextStep& next, const Language& language) {
  if (next.term.kind != TermKind::text) return std::nullopt;
  const bool is_quoted = next.tokens[next.term.first_token].kind == TokenKind::quoted;
  if (is_quoted) return std::nullopt;
  if (next.step.from == Spot::batch) return called_in_a_place(next, language);
  if (next.step.from == Spot::batch_bar) return several_apart(next, language);
  return std::nullopt;
}

std::optional<PlacedFault> one_or_several(const NextStep& next, const Language& language) {
  const bool is_of_all = next.term.kind == TermKind::all_trimmed ||
                         (next.term.kind == TermKind::rest_fine && next.term.plural);
  if (!is_of_all || next.tokens.empty() || next.tokens[0].kind != TokenKind::number) {
    return std::nullopt;
  }
  const Phrase* reason = phrase_at(next.tokens, 1, language);
  const bool is_one = reason != nullptr && reason->kind == TermKind::reason &&
                      static_cast<Reason>(reason->value) == Reason::heifer;
  std::size_t behind = 2;
  while (behind < next.tokens.size() && is_separator(next.tokens[behind].kind)) ++behind;
  if (!is_one || behind != next.term.first_token) return std::nullopt;
  const std::string number =
      next.tokens[0].folded.empty()
          ? std::string(next.text.substr(next.tokens[0].offset, next.tokens[0].length))
          : next.tokens[0].folded;
  const bool could_count = number.size() <= 3 && number.find('.') == std::string::npos &&
                           std::stoi(number) <= most_in_a_batch;
  if (!could_count) return std::nullopt;
  const std::string several(language.say(TermKind::animals, AnimalKind::heifers));
  return PlacedFault{
      not_understood("is that the cow " + number + ", or are they counted?",
                     "of the cow: \"" + number + " {heifer}; {rest fine}\"; of several: \"" +
                         number + ' ' + several + ", {all good}\""),
      next.term};
}

}  // namespace evenclaw
