#include "core/trade/call_line/spoken_tokens.hpp"

#include <cstddef>
#include <string>
#include <utility>

#include "core/trade/call_line/spoken_numbers.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view straight_apostrophe = "'";

/// Where the last apostrophe of the word stands, and how long it is; npos when there is none.
std::pair<std::size_t, std::size_t> last_apostrophe(std::string_view said) {
  const std::size_t straight = said.rfind(straight_apostrophe);
  const std::size_t curly = said.rfind(curly_apostrophe);
  if (straight == std::string_view::npos) return {curly, curly_apostrophe.size()};
  if (curly == std::string_view::npos) return {straight, straight_apostrophe.size()};
  return straight > curly ? std::pair(straight, straight_apostrophe.size())
                          : std::pair(curly, curly_apostrophe.size());
}

/// "block's" would be read as the plural "blocks" otherwise.
void add_parts(std::vector<Token>& parts, Token token, std::string_view text,
               const Language& language) {
  const std::string_view said = text.substr(token.offset, token.length);
  const auto [at, length] = last_apostrophe(said);
  const bool has_one = token.kind == TokenKind::word && at != std::string_view::npos && at > 0 &&
                       !language.spells_with_apostrophe(token.folded);
  const std::string_view meant =
      has_one ? language.short_for(folded_word(said.substr(at + length))) : std::string_view();
  if (meant.empty()) {
    parts.push_back(std::move(token));
    return;
  }
  Token ending = token;
  ending.offset = token.offset + at;
  ending.length = token.length - at;
  ending.folded = folded_word(meant);
  token.length = at;
  token.folded = folded_word(said.substr(0, at));
  parts.push_back(std::move(token));
  parts.push_back(std::move(ending));
}

}  // namespace

std::vector<Token> spoken_tokens(std::string_view text, const Language& language) {
  std::vector<Token> tokens = tokens_of(text);
  std::vector<Token> parts;
  parts.reserve(tokens.size());
  for (Token& token : tokens) add_parts(parts, std::move(token), text, language);
  parts = with_digits_spelt(std::move(parts), text, language);
  return with_spoken_numbers(std::move(parts), language);
}

std::size_t first_said(std::span<const Token> tokens, const Language& language) {
  std::size_t at = 0;
  while (at < tokens.size()) {
    const bool parts = tokens[at].kind == TokenKind::colon || tokens[at].kind == TokenKind::strong;
    const std::size_t joining = parts ? 1 : language.joining_tokens(tokens, at);
    if (joining == 0) return at;
    at += joining;
  }
  return at;
}

}  // namespace evenclaw
