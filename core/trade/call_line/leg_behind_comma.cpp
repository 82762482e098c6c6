#include "core/trade/call_line/leg_behind_comma.hpp"

#include <cstddef>
#include <variant>

namespace evenclaw {

namespace {

template <class T, class AnyClause>
auto* said_as(AnyClause& clause) {
  auto* turn = std::get_if<TurnClause>(&clause);
  return turn == nullptr ? nullptr : std::get_if<T>(turn);
}

bool is_comma(std::span<const Token> tokens, std::size_t at) {
  return at < tokens.size() && tokens[at].kind == TokenKind::comma;
}

/// "Lame" or "lame 2 of 3" ends right before the comma at `comma`.
bool stands_before(const PlacedClause& lame, std::size_t clauses_between,
                   std::span<const Token> tokens, std::size_t comma) {
  if (clauses_between > 0) return tokens[comma - 1].kind == TokenKind::number;
  return lame.from.first_token + lame.from.token_count == comma;
}

/// Behind the feet and those joined to them: nothing more, or a separator.
bool is_left_alone(std::span<const Token> tokens, std::size_t at, const Language& language) {
  bool is_parted = false;
  while (at < tokens.size()) {
    const Language::Match match = language.longest_match(tokens, at);
    const bool is_foot = match.phrase != nullptr && (match.phrase->kind == TermKind::foot ||
                                                     match.phrase->kind == TermKind::feet);
    const std::size_t joining = language.joining_tokens(tokens, at);
    if (!is_foot && joining == 0) break;
    is_parted = is_comma(tokens, at);
    at += is_foot ? match.word_count : joining;
  }
  return is_parted || at == tokens.size() || tokens[at].kind == TokenKind::strong;
}

}  // namespace

void add_leg_behind_comma(Line& line, std::span<const PlacedClause> placed,
                          std::span<const Token> tokens, const Language& language) {
  for (std::size_t at = 1; at < placed.size() && at < line.clauses.size(); ++at) {
    const auto* feet = said_as<FeetNamed>(line.clauses[at]);
    if (feet == nullptr) continue;
    const bool is_scored = at > 1 && said_as<MobilityTold>(line.clauses[at - 1]) != nullptr;
    const std::size_t before = is_scored ? 2 : 1;
    auto* why = said_as<ReasonSaid>(line.clauses[at - before]);
    if (why == nullptr || why->reason != Reason::lame || !why->lame.empty()) continue;
    const std::size_t first = placed[at].from.first_token;
    const bool is_behind = first > 1 && is_comma(tokens, first - 1) &&
                           stands_before(placed[at - before], before - 1, tokens, first - 1);
    if (is_behind && is_left_alone(tokens, first, language)) why->lame = feet->feet;
  }
}

}  // namespace evenclaw
