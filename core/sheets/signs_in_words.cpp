#include "core/sheets/signs_in_words.hpp"

#include <algorithm>
#include <cstddef>
#include <string>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/nearest.hpp"

namespace evenclaw {

namespace {

/// What words call in any language.
struct Heard {
  std::vector<const Phrase*> phrases;
  bool is_fall = false;
};

/// No phrase inside another: "lay down in the crush" holds no "down in the crush".
void add_phrases(const Language& language, const std::vector<Token>& tokens, Heard& heard) {
  for (std::size_t at = 0; at < tokens.size();) {
    const Language::Match match = language.longest_match(tokens, at);
    if (match.phrase != nullptr) heard.phrases.push_back(match.phrase);
    at += std::max<std::size_t>(match.word_count, 1);
  }
}

/// What each word nobody knows is a slip of, alone or with the known words before it: "toe
/// necrossis".
void add_slips(const Language& language, const std::string& words, Heard& heard) {
  constexpr TermKind may_tell[] = {TermKind::lesion, TermKind::plain_act, TermKind::opened_act,
                                   TermKind::unclear_word};
  constexpr std::size_t most_before = 3;
  const std::vector<Token> tokens = tokens_of(words);
  for (std::size_t at = 0; at < tokens.size(); ++at) {
    const bool is_word = tokens[at].kind == TokenKind::word;
    const bool is_known =
        language.longest_match(tokens, at).phrase != nullptr || language.fills(tokens[at].folded);
    if (!is_word || is_known) continue;
    const std::size_t earliest = at - std::min(at, most_before);
    const Nearest near = nearest_phrase(tokens, at, earliest, may_tell, language);
    if (near.words.empty() || is_another_word(tokens[at].folded, near)) continue;
    add_phrases(language, tokens_of(near.words), heard);
  }
}

/// A line is quoted where it is kept: its words are looked at without the quotes. What was refused
/// may have been refused for a slip.
Heard heard_in(std::string_view words) {
  std::string bare(words);
  std::replace(bare.begin(), bare.end(), '"', ' ');
  Heard heard;
  for (const CallLanguage& each : call_languages()) {
    const Language& language = each.words();
    add_phrases(language, tokens_of(bare), heard);
    heard.is_fall = heard.is_fall || language.tells_of_a_fall(bare);
    if (is_not_understood(words)) add_slips(language, bare, heard);
  }
  return heard;
}

bool is_act(const Phrase& phrase, ActionKind kind) {
  const bool may_be = phrase.kind == TermKind::plain_act || phrase.kind == TermKind::opened_act;
  return may_be && static_cast<ActionKind>(phrase.value) == kind;
}

/// "Swollen" alone may be of a hock.
bool is_only_swollen(const Phrase& phrase) {
  return static_cast<Lesion>(phrase.value) == Lesion::sw &&
         phrase.words.find(' ') == std::string_view::npos;
}

bool is_named(const SignForVet& sign, const Phrase& phrase, const HeardAs& as) {
  if (phrase.kind == TermKind::lesion) {
    const bool is_it = sign.found && static_cast<Lesion>(phrase.value) == *sign.found;
    const bool is_clear = as.is_of_foot || !is_only_swollen(phrase);
    return as.may_be_found && is_it && is_clear && !sign.is_above_both;
  }
  if (phrase.kind == TermKind::unclear_word) {
    const bool is_pus = static_cast<UnclearWord>(phrase.value) == UnclearWord::abscess;
    return is_pus && !as.is_pus_explained && sign.seen == ActionKind::pus_above;
  }
  return sign.seen && is_act(phrase, *sign.seen);
}

}  // namespace

bool is_not_understood(std::string_view end_reason) {
  return end_reason.find(" not understood") != std::string_view::npos;
}

std::vector<const SignForVet*> signs_in_words(std::string_view words, const HeardAs& as) {
  const Heard heard = heard_in(words);
  HeardAs all = as;
  if (is_not_understood(words)) all.may_be_found = all.is_of_foot = true;
  std::vector<const SignForVet*> named;
  for (const SignForVet& sign : signs_for_vet()) {
    const bool is_there =
        (heard.is_fall && sign.seen == ActionKind::went_down) ||
        std::any_of(heard.phrases.begin(), heard.phrases.end(),
                    [&](const Phrase* phrase) { return is_named(sign, *phrase, all); });
    if (is_there) named.push_back(&sign);
  }
  return named;
}

bool names_the_vet(std::string_view words) {
  const Heard heard = heard_in(words);
  return std::any_of(heard.phrases.begin(), heard.phrases.end(),
                     [](const Phrase* phrase) { return is_act(*phrase, ActionKind::vet); });
}

}  // namespace evenclaw
