#include "core/sheets/signs_in_words.hpp"

#include <algorithm>
#include <cstddef>
#include <string>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"

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

/// A line is quoted where it is kept: its words are looked at without the quotes.
Heard heard_in(std::string_view words) {
  std::string bare(words);
  std::replace(bare.begin(), bare.end(), '"', ' ');
  const std::vector<Token> tokens = tokens_of(bare);
  Heard heard;
  for (const CallLanguage& each : call_languages()) {
    add_phrases(each.words(), tokens, heard);
    heard.is_fall = heard.is_fall || each.words().tells_of_a_fall(bare);
  }
  return heard;
}

bool is_named(const SignForVet& sign, const Phrase& phrase, bool may_be_found) {
  if (phrase.kind == TermKind::lesion) {
    const bool is_it = sign.found && static_cast<Lesion>(phrase.value) == *sign.found;
    return may_be_found && is_it && !sign.is_above_both;
  }
  const bool is_act = phrase.kind == TermKind::plain_act || phrase.kind == TermKind::opened_act;
  return is_act && sign.seen && static_cast<ActionKind>(phrase.value) == *sign.seen;
}

}  // namespace

bool is_not_understood(std::string_view end_reason) {
  return end_reason.find(" not understood") != std::string_view::npos;
}

std::vector<const SignForVet*> signs_in_words(std::string_view words) {
  const Heard heard = heard_in(words);
  const bool may_be_found = is_not_understood(words);
  std::vector<const SignForVet*> named;
  for (const SignForVet& sign : signs_for_vet()) {
    const bool is_there =
        (heard.is_fall && sign.seen == ActionKind::went_down) ||
        std::any_of(heard.phrases.begin(), heard.phrases.end(),
                    [&](const Phrase* phrase) { return is_named(sign, *phrase, may_be_found); });
    if (is_there) named.push_back(&sign);
  }
  return named;
}

}  // namespace evenclaw
