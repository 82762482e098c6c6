#include "core/api/recording/said_again.hpp"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/api/recording/amount_alone.hpp"
#include "core/api/recording/refused_feet.hpp"
#include "core/api/recording/said_otherwise.hpp"
#include "core/base/edit_distance.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/cow_number.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/spoken_numbers.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/call_line/term.hpp"
#include "core/trade/call_line/trap.hpp"

namespace evenclaw {

namespace {

/// A line as it is compared: the digits it starts with, "3 4" and "no 34" like "34", and what is
/// behind them.
struct Compared {
  std::string number;
  bool has_letters = false;  // in the number: "4l3"
  bool in_a_word = false;    // the number: "thirteen"
  bool is_misread = false;   // it is a reader's with a slip in it
  std::string rest;
  std::vector<std::string> words;
};

/// The digits of a number token, however it was said.
std::string digits_of(const Token& token, std::string_view line) {
  return token.folded.empty() ? fold_case(line.substr(token.offset, token.length)) : token.folded;
}

/// The tokens of the line; a number word it starts with, "seven LH", is the number it says.
std::vector<Token> compared_tokens(std::string_view line, const Language& language) {
  std::vector<Token> tokens = spoken_tokens(line, language);
  const std::optional<int> alone = number_word_at(tokens, 0, language);
  if (!alone) return tokens;
  tokens.front().kind = TokenKind::number;
  tokens.front().folded = std::to_string(*alone);
  return tokens;
}

/// "And", and words to be left out, as "has a".
bool says_nothing(const std::vector<Token>& tokens, std::size_t at, const Language& language) {
  const Language::Match match = language.longest_match(tokens, at);
  if (match.phrase == nullptr) return language.fills(tokens[at].folded);
  return only_joins(match.phrase->kind);
}

void add_words_inside(std::vector<std::string>& words, std::string_view quoted_words) {
  const std::string inside = fold_case(unquoted(quoted_words));
  for (const Token& word : tokens_of(inside)) {
    words.push_back(inside.substr(word.offset, word.length));
  }
}

Compared compared(std::string_view line, const Language& language) {
  Compared parts;
  std::size_t from = 0;
  bool at_start = true;
  const std::vector<Token> tokens = compared_tokens(line, language);
  const std::size_t announced = announced_tokens(tokens, language);
  parts.in_a_word = number_word_at(spoken_tokens(line, language), 0, language).has_value();
  const std::size_t first = announced == 0 ? first_said(tokens, language) : announced - 1;
  if (first < tokens.size()) from = tokens[first].offset;
  parts.is_misread = misread_tag_tokens(tokens, first) > 0;
  for (std::size_t at = first; at < tokens.size(); ++at) {
    const Token& token = tokens[at];
    const std::string_view said = line.substr(token.offset, token.length);
    const bool ends_number = at > 0 && is_part_of_a_word(tokens, at - 1, language);
    if (at_start && (token.kind == TokenKind::number || ends_number)) {
      parts.has_letters |= ends_number;
      parts.number += token.kind == TokenKind::number ? digits_of(token, line) : fold_case(said);
      from = token.offset + token.length;
      continue;
    }
    at_start = false;
    if (token.kind == TokenKind::quoted) add_words_inside(parts.words, said);
    const bool is_word = token.kind == TokenKind::word || token.kind == TokenKind::number;
    if (is_word && !says_nothing(tokens, at, language)) parts.words.push_back(fold_case(said));
  }
  parts.rest = fold_case(trimmed(line.substr(from)));
  return parts;
}

bool differ_by_a_slip(const std::string& refused, const std::string& now) {
  constexpr std::size_t letters_for_two_slips = 4;
  const std::size_t fewest = refused.size() < letters_for_two_slips ? 1 : 2;
  return edit_distance(refused, now) <= std::max(fewest, refused.size() / 4);
}

/// In short words every letter counts: LH is not RH.
bool is_word_meant(const std::string& refused, const std::string& now) {
  return edit_distance(refused, now) <= refused.size() / 3;
}

/// Every word is there, in the same order, each with a slip at most.
bool is_said_within(const std::vector<std::string>& refused, const std::vector<std::string>& now) {
  std::size_t found = 0;
  for (const std::string& word : now) {
    if (found < refused.size() && is_word_meant(refused[found], word)) ++found;
  }
  return found == refused.size();
}

/// What the phrases of a line are, those in front first; words that are unknown are left out.
std::vector<TermKind> kinds_in(std::string_view line, const Language& language) {
  const std::vector<Token> tokens = tokens_of(line);
  std::vector<TermKind> kinds;
  std::size_t at = 0;
  while (at < tokens.size()) {
    const Language::Match match = language.longest_match(tokens, at);
    if (match.phrase != nullptr) kinds.push_back(match.phrase->kind);
    at += match.phrase == nullptr ? 1 : match.word_count;
  }
  return kinds;
}

bool starts_with(const std::vector<TermKind>& kinds, TermKind kind) {
  return !kinds.empty() && kinds.front() == kind;
}

bool are_all(const std::vector<TermKind>& kinds, TermKind one, TermKind other) {
  return std::all_of(kinds.begin(), kinds.end(),
                     [&](TermKind kind) { return kind == one || kind == other; });
}

/// "Ditto", "same", "same as last time".
bool means_what_was_said_before(TermKind kind) {
  return kind == TermKind::ditto || kind == TermKind::compared || kind == TermKind::as_last_time;
}

/// "No, not that one" and any correction; a correction nobody understood and "nothing after all";
/// "ditto" and whatever is said of her in full.
bool is_said_otherwise(const std::vector<TermKind>& refused, const std::vector<TermKind>& now) {
  if (!refused.empty() && means_what_was_said_before(refused.front()))
    return std::all_of(refused.begin(), refused.end(), means_what_was_said_before);
  if (!starts_with(refused, TermKind::correction)) return false;
  if (starts_with(now, TermKind::nothing_after_all)) return true;
  return starts_with(now, TermKind::correction) &&
         are_all(refused, TermKind::correction, TermKind::not_that);
}

bool is_a_foot(TermKind kind) {
  return kind == TermKind::foot || kind == TermKind::feet;
}

std::vector<std::string> folded_words(std::string_view line, std::span<const Token> tokens) {
  std::vector<std::string> words;
  words.reserve(tokens.size());
  for (const Token& token : tokens) {
    words.push_back(fold_case(line.substr(token.offset, token.length)));
  }
  return words;
}

/// What a correction says, without the feet it names; nothing for a line that is none.
std::optional<std::vector<std::string>> words_of_correction(std::string_view line,
                                                            const Language& language) {
  const std::vector<Token> tokens = compared_tokens(line, language);
  std::optional<std::vector<std::string>> words;
  std::size_t at = !tokens.empty() && tokens.front().kind == TokenKind::number ? 1 : 0;
  while (at < tokens.size()) {
    const Language::Match match = language.longest_match(tokens, at);
    const std::size_t count = std::max<std::size_t>(match.word_count, 1);
    const std::span<const Token> here = std::span(tokens).subspan(at, count);
    at += count;
    const TokenKind kind = here.front().kind;
    const bool is_word = kind == TokenKind::word || kind == TokenKind::number;
    if (!is_word || (match.phrase != nullptr && is_a_foot(match.phrase->kind))) continue;
    if (words) {
      const std::vector<std::string> more = folded_words(line, here);
      words->insert(words->end(), more.begin(), more.end());
      continue;
    }
    const bool corrects = match.phrase != nullptr && match.phrase->kind == TermKind::correction;
    if (!corrects) return std::nullopt;
    words.emplace();
  }
  return words;
}

/// "412 RH no, no DD" fits nothing and "412 LH no, no DD" does: the foot was the slip.
bool is_corrected_again(std::string_view refused, std::string_view now, const Language& language) {
  const auto before = words_of_correction(refused, language);
  const auto after = words_of_correction(now, language);
  return before && after && before->size() == after->size() && is_said_within(*before, *after);
}

/// "RH same" and then what was found there.
bool is_said_in_full(const std::vector<TermKind>& refused) {
  const bool is_ditto = std::any_of(refused.begin(), refused.end(), means_what_was_said_before);
  return is_ditto && std::all_of(refused.begin(), refused.end(), [](TermKind kind) {
           return means_what_was_said_before(kind) || is_a_foot(kind);
         });
}

/// "LH nothing found", and perhaps her number before it.
bool says_nothing_was_found(std::string_view line, const Language& language) {
  const std::vector<Token> tokens = tokens_of(line);
  bool any = false;
  for (std::size_t at = 0; at < tokens.size();) {
    const Phrase* phrase = language.longest_match(tokens, at).phrase;
    const bool is_state = phrase != nullptr && phrase->kind == TermKind::foot_state;
    if (is_state && static_cast<FootState>(phrase->value) != FootState::nothing_found) return false;
    const bool is_other_phrase = phrase != nullptr && !is_state && !is_a_foot(phrase->kind);
    const bool is_other_word = phrase == nullptr && tokens[at].kind == TokenKind::word;
    if (is_other_phrase || is_other_word) return false;
    any |= is_state;
    at += std::max<std::size_t>(language.longest_match(tokens, at).word_count, 1);
  }
  return any;
}

/// "LH nothing found" where a lesion was called, and then "nothing after all".
bool is_taken_back_instead(std::string_view refused, std::string_view now,
                           const Language& language) {
  const std::vector<TermKind> kinds = kinds_in(now, language);
  if (std::find(kinds.begin(), kinds.end(), TermKind::nothing_after_all) == kinds.end())
    return false;
  const FootSet before = feet_in_refused(refused, language).named;
  const FootSet after = feet_in_refused(now, language).named;
  return says_nothing_was_found(refused, language) && (after.empty() || before == after);
}

/// Only a number was said, and in one word: "thirteen" may be the end of 413.
bool ends_her_number(const Compared& before, const Compared& after) {
  const std::string& end = before.number;
  return before.in_a_word && before.words.empty() && after.number.size() >= end.size() &&
         after.number.compare(after.number.size() - end.size(), end.size(), end) == 0;
}

/// Nothing but a number in one word was said, and this line names none.
bool leaves_out_the_number(const Compared& before, const Compared& after) {
  return before.in_a_word && before.words.empty() && after.number.empty();
}

bool are_other_cows(const Compared& before, const Compared& after) {
  if (before.number.empty() || after.number.empty()) return false;
  if (before.has_letters) return edit_distance(before.number, after.number) > 1;
  // No cow has such a number: it is the reader's that is said next.
  constexpr std::size_t most_digits_lost = 2;
  if (before.is_misread) return edit_distance(before.number, after.number) > most_digits_lost;
  return before.number != after.number;
}

}  // namespace

bool is_said_again(std::string_view refused, std::string_view now, const Language& language) {
  if (!is_utf8(refused) || !is_utf8(now)) return false;
  if (is_amount_alone(refused, language)) return holds_the_amount(refused, now, language);
  const Compared before = compared(refused, language);
  const Compared after = compared(now, language);
  if (ends_her_number(before, after)) return true;
  if (are_other_cows(before, after) || leaves_out_the_number(before, after)) return false;
  const std::vector<TermKind> kinds_before = kinds_in(refused, language);
  if (is_said_otherwise(kinds_before, kinds_in(now, language))) return true;
  if (is_corrected_again(refused, now, language)) return true;
  if (is_taken_back_instead(refused, now, language)) return true;
  const FootSet feet_before = feet_in_refused(refused, language).named;
  const FootSet feet_after = feet_in_refused(now, language).named;
  if (!feet_before.empty() && feet_before != feet_after) return false;
  if (is_said_in_full(kinds_before)) return true;
  if (is_said_within(before.words, after.words)) return true;
  return differ_by_a_slip(before.rest, after.rest) && holds_what_was_known(refused, now, language);
}

bool is_named_again(std::string_view refused, std::string_view now, const Language& language) {
  if (!is_utf8(refused) || !is_utf8(now)) return false;
  const std::vector<Token> tokens = compared_tokens(refused, language);
  for (std::size_t at = 0; at < tokens.size(); ++at) {
    // "Next one 413": the one is no number here.
    const Phrase* phrase = language.longest_match(tokens, at).phrase;
    if (phrase != nullptr && phrase->kind != TermKind::number_word) return false;
    if (tokens[at].kind != TokenKind::number) continue;
    const std::string_view behind = refused.substr(tokens[at].offset);
    const bool is_her_number = compared(behind, language).number == compared(now, language).number;
    return is_her_number && is_said_again(behind, now, language);
  }
  return false;
}

}  // namespace evenclaw
