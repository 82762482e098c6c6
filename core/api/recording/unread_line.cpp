#include "core/api/recording/unread_line.hpp"

#include <algorithm>
#include <vector>

#include "core/base/text.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t longest_label = 3;  // words

/// Words that join others or say who speaks, and tell nothing by themselves.
bool only_joins(TermKind kind) {
  constexpr TermKind kinds[] = {
      TermKind::conjunction, TermKind::alternative, TermKind::with,        TermKind::number_word,
      TermKind::time_in,     TermKind::both,        TermKind::only,        TermKind::out_of,
      TermKind::till,        TermKind::by_whom,     TermKind::correction,  TermKind::scrapped,
      TermKind::negation,    TermKind::animals,     TermKind::measure_tail};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

}  // namespace

std::string whom_it_may_be_of(std::string_view text, const Language& language) {
  if (!is_utf8(text)) return {};
  const std::vector<Token> tokens = spoken_tokens(text, language);
  std::size_t end = 0;
  for (std::size_t words = 0; end < tokens.size() && words < longest_label; ++words) {
    const Phrase* phrase = language.longest_match(tokens, end).phrase;
    const bool tells = phrase != nullptr && !only_joins(phrase->kind);
    if (tokens[end].kind != TokenKind::word && end > 0) break;
    if (end > 1 && tells) break;
    ++end;
  }
  if (end == 0) return std::string(trimmed(text));
  const Token& last = tokens[end - 1];
  const std::size_t from = tokens.front().offset;
  return std::string(text.substr(from, last.offset + last.length - from));
}

bool holds_a_call_word(std::string_view text, const Language& language) {
  if (!is_utf8(text)) return false;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  for (std::size_t at = 0; at < tokens.size(); ++at) {
    const Phrase* phrase = language.longest_match(tokens, at).phrase;
    const bool is_joining =
        phrase == nullptr || (only_joins(phrase->kind) && phrase->kind != TermKind::animals);
    if (!is_joining) return true;
  }
  return false;
}

}  // namespace evenclaw
