#include "core/sheets/signs_in_words.hpp"

#include <algorithm>
#include <iterator>
#include <string>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

namespace {

/// Kept as the reason why her turn was broken off, these are no call and no check hears them.
constexpr std::string_view falls[] = {
    "went down",       "going down",        "gone down",  "is down",     "fell",     "collapsed",
    "bricht zusammen", "zusammengebrochen", "umgefallen", "hingefallen", "zu boden", "am boden"};

bool tells_of_a_fall(const std::vector<Token>& tokens) {
  std::string said = " ";
  for (const Token& token : tokens) said += token.folded + ' ';
  return std::any_of(std::begin(falls), std::end(falls), [&](std::string_view fall) {
    return said.find(' ' + std::string(fall) + ' ') != std::string::npos;
  });
}

bool is_named(const SignForVet& sign, const Phrase& phrase, bool may_be_found) {
  if (phrase.kind == TermKind::lesion) {
    const bool is_it = sign.found && static_cast<Lesion>(phrase.value) == *sign.found;
    return may_be_found && is_it && !sign.is_above_both;
  }
  const bool is_act = phrase.kind == TermKind::plain_act || phrase.kind == TermKind::opened_act;
  return is_act && sign.seen && static_cast<ActionKind>(phrase.value) == *sign.seen;
}

/// A line is quoted where it is kept: its words are looked at without the quotes.
std::vector<Token> words_of(std::string_view text) {
  std::string bare(text);
  std::replace(bare.begin(), bare.end(), '"', ' ');
  return tokens_of(bare);
}

}  // namespace

bool is_not_understood(std::string_view end_reason) {
  return end_reason.find(" not understood") != std::string_view::npos;
}

std::vector<const SignForVet*> signs_in_words(std::string_view words) {
  const std::vector<Token> tokens = words_of(words);
  const bool is_fall = tells_of_a_fall(tokens);
  const bool may_be_found = is_not_understood(words);
  std::vector<const SignForVet*> named;
  for (const SignForVet& sign : signs_for_vet()) {
    bool is_there = is_fall && sign.seen == ActionKind::went_down;
    for (const Language* language : {&english(), &german()}) {
      for (std::size_t at = 0; at < tokens.size() && !is_there; ++at) {
        const Phrase* phrase = language->longest_match(tokens, at).phrase;
        is_there = phrase != nullptr && is_named(sign, *phrase, may_be_found);
      }
    }
    if (is_there) named.push_back(&sign);
  }
  return named;
}

}  // namespace evenclaw
