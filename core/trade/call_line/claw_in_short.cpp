#include "core/trade/call_line/claw_in_short.hpp"

#include <algorithm>
#include <iterator>

#include "core/trade/call_line/open_item.hpp"

namespace evenclaw {

namespace {

bool may_stand(Spot spot, const LineBuilder& said) {
  constexpr Spot spots[] = {Spot::block,  Spot::finding, Spot::feet,      Spot::loose,
                            Spot::opened, Spot::measure, Spot::correction};
  if (std::find(std::begin(spots), std::end(spots), spot) != std::end(spots)) return true;
  const bool is_free = spot == Spot::turn || spot == Spot::paused;
  if (!is_free || said.clauses().empty()) return false;
  const auto* item = std::get_if<TurnClause>(&said.clauses().back().clause);
  return item != nullptr && awaits_claw(*item);
}

/// Nothing that "in" could lead to: the line or the part of it ends, or a detail follows.
bool ends_there(std::span<const Token> tokens, std::size_t behind, const Language& language) {
  if (behind >= tokens.size()) return true;
  constexpr TokenKind marks[] = {TokenKind::comma, TokenKind::colon, TokenKind::strong,
                                 TokenKind::conjunction, TokenKind::doubt};
  if (std::find(std::begin(marks), std::end(marks), tokens[behind].kind) != std::end(marks)) {
    return true;
  }
  constexpr TermKind kinds[] = {TermKind::degree, TermKind::material, TermKind::off,
                                TermKind::conjunction};
  const Phrase* phrase = language.longest_match(tokens, behind).phrase;
  return phrase != nullptr &&
         std::find(std::begin(kinds), std::end(kinds), phrase->kind) != std::end(kinds);
}

}  // namespace

std::optional<Claw> claw_in_short(std::span<const Token> tokens, std::size_t at, Spot spot,
                                  const LineBuilder& said, const Language& language) {
  if (tokens[at].kind != TokenKind::word) return std::nullopt;
  const std::optional<Claw> claw = language.claw_in_short(tokens[at].folded);
  if (!claw || !may_stand(spot, said)) return std::nullopt;
  const Language::Match match = language.longest_match(tokens, at);
  const bool means_more = match.word_count > 1;
  const bool may_lead_on = match.word_count == 1 && !ends_there(tokens, at + 1, language);
  return means_more || may_lead_on ? std::nullopt : claw;
}

bool is_claw(std::span<const Token> tokens, std::size_t at, const Language& language) {
  const Phrase* phrase = language.longest_match(tokens, at).phrase;
  return phrase != nullptr && phrase->kind == TermKind::claw;
}

}  // namespace evenclaw
