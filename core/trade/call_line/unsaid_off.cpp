#include "core/trade/call_line/unsaid_off.hpp"

#include <variant>

#include "core/trade/call_line/open_item.hpp"

namespace evenclaw {

bool tells_when_it_comes_off(std::span<const Token> tokens, std::size_t at, const LineBuilder& said,
                             const Language& language) {
  if (tokens[at].kind != TokenKind::number || at + 1 >= tokens.size()) return false;
  const Phrase* unit = language.longest_match(tokens, at + 1).phrase;
  const bool is_time =
      unit != nullptr && (unit->kind == TermKind::day_unit || unit->kind == TermKind::week_unit);
  if (!is_time || said.clauses().empty()) return false;
  const auto* item = std::get_if<TurnClause>(&said.clauses().back().clause);
  return item != nullptr && awaits_off(*item);
}

}  // namespace evenclaw
