#include <span>
#include <vector>

#include "core/trade/call_line/batch_line.hpp"
#include "core/trade/call_line/parser.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"

namespace evenclaw {

std::vector<LineSort> possible_sorts(std::string_view text, const Language& language) {
  const std::vector<Token> tokens = spoken_tokens(text, language);
  const std::size_t start = first_said(tokens, language);
  if (start == tokens.size()) return {LineSort::turn_or_visit};
  const Phrase* first = language.longest_match(tokens, start).phrase;
  if (first != nullptr && first->kind == TermKind::news_lead) return {LineSort::news};
  if (counts_animals(std::span(tokens).subspan(start), language)) return {LineSort::batch};
  if (tokens[start].kind != TokenKind::number) return {LineSort::turn_or_visit};
  return {LineSort::turn_or_visit, LineSort::news};
}

}  // namespace evenclaw
