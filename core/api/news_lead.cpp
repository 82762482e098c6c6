#include "core/api/news_lead.hpp"

#include <vector>

#include "core/base/text.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"

namespace evenclaw {

namespace {

/// Of what stands behind the word that leads in, and of a line that has none of itself.
std::size_t first_behind_lead(const std::vector<Token>& tokens, const Language& language) {
  const std::size_t start = first_said(tokens, language);
  if (start >= tokens.size()) return 0;
  const Language::Match match = language.longest_match(tokens, start);
  if (match.phrase == nullptr || match.phrase->kind != TermKind::news_lead) return 0;
  std::size_t at = start + match.word_count;
  while (at < tokens.size() && tokens[at].kind != TokenKind::word &&
         tokens[at].kind != TokenKind::number) {
    ++at;
  }
  return at;
}

}  // namespace

std::string_view behind_news_lead(std::string_view line, const Language& language) {
  if (!is_utf8(line)) return line;
  const std::vector<Token> tokens = spoken_tokens(line, language);
  const std::size_t at = first_behind_lead(tokens, language);
  return at > 0 && at < tokens.size() ? line.substr(tokens[at].offset) : line;
}

bool is_led_in_as_news(std::string_view line, const Language& language) {
  return behind_news_lead(line, language).size() < line.size();
}

}  // namespace evenclaw
