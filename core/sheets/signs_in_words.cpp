#include "core/sheets/signs_in_words.hpp"

#include <algorithm>
#include <string>
#include <utility>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

namespace {

bool is_named(const SignForVet& sign, const Phrase& phrase, bool may_be_found) {
  if (phrase.kind == TermKind::lesion) {
    const bool is_it = sign.found && static_cast<Lesion>(phrase.value) == *sign.found;
    return may_be_found && is_it && !sign.is_above_both;
  }
  const bool is_act = phrase.kind == TermKind::plain_act || phrase.kind == TermKind::opened_act;
  return is_act && sign.seen && static_cast<ActionKind>(phrase.value) == *sign.seen;
}

struct Said {
  std::string words;
  std::vector<Token> tokens;
  bool may_be_found;
};

/// A line is quoted where it is kept: its words are looked at without the quotes.
Said said_in(std::string_view text) {
  std::string bare(text);
  std::replace(bare.begin(), bare.end(), '"', ' ');
  std::vector<Token> tokens = tokens_of(bare);
  return {std::move(bare), std::move(tokens), is_not_understood(text)};
}

bool is_told(const SignForVet& sign, const Said& said, const Language& language) {
  if (sign.seen == ActionKind::went_down && language.tells_of_a_fall(said.words)) return true;
  for (std::size_t at = 0; at < said.tokens.size(); ++at) {
    const Phrase* phrase = language.longest_match(said.tokens, at).phrase;
    if (phrase != nullptr && is_named(sign, *phrase, said.may_be_found)) return true;
  }
  return false;
}

}  // namespace

bool is_not_understood(std::string_view end_reason) {
  return end_reason.find(" not understood") != std::string_view::npos;
}

std::vector<const SignForVet*> signs_in_words(std::string_view words) {
  const Said said = said_in(words);
  const auto languages = call_languages();
  std::vector<const SignForVet*> named;
  for (const SignForVet& sign : signs_for_vet()) {
    const bool is_there =
        std::any_of(languages.begin(), languages.end(),
                    [&](const CallLanguage& each) { return is_told(sign, said, each.words()); });
    if (is_there) named.push_back(&sign);
  }
  return named;
}

}  // namespace evenclaw
