#include "core/api/recording/refused_cow.hpp"

#include <algorithm>
#include <optional>
#include <vector>

#include "core/base/text.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/nearest.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t longest_name = 8;  // tokens that name a cow

bool starts_a_cow(const std::vector<Token>& tokens, const Language& language) {
  if (tokens.empty()) return false;
  if (tokens.front().kind == TokenKind::number) return true;
  const Language::Match match = language.longest_match(tokens, 0);
  return match.phrase != nullptr && match.phrase->kind == TermKind::no_number;
}

/// "No" with nothing between it and words that are no slip of what can be corrected.
bool says_no_and_corrects_nothing(const std::vector<Token>& tokens, const Language& language) {
  if (tokens.empty()) return false;
  const Language::Match no = language.longest_match(tokens, 0);
  if (no.phrase == nullptr || no.phrase->kind != TermKind::correction) return false;
  std::size_t unknown = 0;
  for (std::size_t at = no.word_count; at < tokens.size(); ++at) {
    const bool is_known = language.longest_match(tokens, at).phrase != nullptr;
    const bool is_word = tokens[at].kind == TokenKind::word;
    if (at == no.word_count && (is_known || !is_word)) return false;
    if (!is_known && is_word) ++unknown;
  }
  return unknown > 1 || (unknown == 1 && !looks_like_a_slip(tokens[no.word_count], language));
}

bool is_list_of_numbers(const std::vector<Token>& tokens) {
  const auto joins = [](const Token& token) {
    return token.kind == TokenKind::comma || token.kind == TokenKind::conjunction ||
           token.folded == "and";
  };
  return tokens.size() > 2 && tokens[0].kind == TokenKind::number && joins(tokens[1]) &&
         tokens[2].kind == TokenKind::number;
}

bool belongs_to_a_turn(TermKind kind) {
  constexpr TermKind kinds[] = {
      TermKind::foot,        TermKind::feet,       TermKind::claw,
      TermKind::lesion,      TermKind::place,      TermKind::degree,
      TermKind::stage,       TermKind::foot_state, TermKind::nothing_after_all,
      TermKind::watch,       TermKind::rest_fine,  TermKind::trimmed,
      TermKind::reason,      TermKind::lame,       TermKind::came_for,
      TermKind::turn_end,    TermKind::opened_act, TermKind::product_act,
      TermKind::walks_sound, TermKind::see_again,  TermKind::white_line_place};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

CowLikely likely_from_rest(const std::vector<Token>& tokens, const Language& language) {
  CowLikely likely = CowLikely::perhaps;
  for (std::size_t at = 1; at < tokens.size(); ++at) {
    const Language::Match match = language.longest_match(tokens, at);
    if (match.phrase == nullptr) continue;
    if (match.phrase->kind == TermKind::news) return CowLikely::none;
    if (belongs_to_a_turn(match.phrase->kind)) likely = CowLikely::surely;
  }
  return likely;
}

/// The cow of the longest beginning that names a cow and nothing else.
std::optional<CowSaid> named_at_start(std::string_view text, const std::vector<Token>& tokens,
                                      LineContext context, const Language& language) {
  context.cow_open = false;
  std::optional<CowSaid> cow;
  for (std::size_t count = 1; count <= std::min(tokens.size(), longest_name); ++count) {
    const Token& last = tokens[count - 1];
    const auto line = read_line(text.substr(0, last.offset + last.length), context, language);
    if (!line || line->clauses.size() != 1) continue;
    if (const auto* named = std::get_if<CowNamed>(&line->clauses.front())) cow = named->cow;
  }
  return cow;
}

}  // namespace

RefusedCow cow_in_refused(std::string_view text, const LineContext& context,
                          const Language& language) {
  if (!is_utf8(text) || text.size() > 4096) return {};
  const std::vector<Token> tokens = tokens_of(text);
  RefusedCow refused;
  if (says_no_and_corrects_nothing(tokens, language)) {
    refused.likely = CowLikely::perhaps;
    refused.cow.known = CowKnown::unnumbered;
    refused.cow.looks = trimmed(text);
    return refused;
  }
  if (!starts_a_cow(tokens, language) || is_list_of_numbers(tokens)) return {};
  refused.likely = likely_from_rest(tokens, language);
  if (refused.likely == CowLikely::none) return {};
  const std::optional<CowSaid> cow = named_at_start(text, tokens, context, language);
  if (!cow) return {};
  refused.cow = *cow;
  const bool is_sure = refused.likely == CowLikely::surely;
  if (!is_sure && cow->known == CowKnown::numbered) refused.cow.known = CowKnown::doubtful;
  return refused;
}

}  // namespace evenclaw
