#include "core/api/recording/two_cows.hpp"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <utility>

#include "core/api/news_lead.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/call_line/trap.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

bool joins(const std::vector<Token>& tokens, std::size_t at, const Language& language) {
  if (tokens[at].kind == TokenKind::strong || tokens[at].kind == TokenKind::comma) return true;
  return language.joining_tokens(tokens, at) > 0;
}

PartOfLine part_of(std::string_view text, const std::vector<Token>& tokens, std::size_t from,
                   std::size_t end, const Language& language) {
  while (end > from + 1 && joins(tokens, end - 1, language)) --end;
  const Token& number = tokens[from];
  const Token& last = tokens[end - 1];
  const std::string digits(number.folded.empty() ? text.substr(number.offset, number.length)
                                                 : std::string_view(number.folded));
  return {plain_number(digits),
          std::string(text.substr(number.offset, last.offset + last.length - number.offset))};
}

/// "412 RH", "412 lame": a cow and what is called of her, whatever stands before it.
bool calls_a_cow(const std::vector<Token>& tokens, std::size_t at, const Language& language) {
  if (tokens[at].kind != TokenKind::number || at + 1 >= tokens.size()) return false;
  if (is_part_of_a_word(tokens, at, language)) return false;
  const Phrase* behind = language.longest_match(tokens, at + 1).phrase;
  constexpr TermKind kinds[] = {TermKind::foot, TermKind::feet, TermKind::lame, TermKind::reason};
  return behind != nullptr &&
         std::find(std::begin(kinds), std::end(kinds), behind->kind) != std::end(kinds);
}

constexpr std::size_t longest_line_bytes = 4096;

}  // namespace

std::optional<CowFurtherOn> cow_further_on(std::string_view text, const Language& language) {
  if (!is_utf8(text) || text.size() > longest_line_bytes) return std::nullopt;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  if (tokens.empty() || tokens.front().kind != TokenKind::word) return std::nullopt;
  for (std::size_t at = 2; at < tokens.size(); ++at) {
    if (!joins(tokens, at - 1, language) || !calls_a_cow(tokens, at, language)) continue;
    std::size_t end = at - 1;
    while (end > 0 && joins(tokens, end, language)) --end;
    const std::size_t from = tokens.front().offset;
    const std::size_t behind = tokens[end].offset + tokens[end].length;
    return CowFurtherOn{std::string(text.substr(from, behind - from)),
                        part_of(text, tokens, at, tokens.size(), language)};
  }
  return std::nullopt;
}

std::vector<PartOfLine> parts_of_cows(std::string_view text, const Language& language) {
  if (!is_utf8(text) || text.size() > longest_line_bytes) return {};
  text = behind_news_lead(text, language);
  const std::vector<Token> tokens = spoken_tokens(text, language);
  std::size_t from = first_said(tokens, language);
  if (from >= tokens.size() || tokens[from].kind != TokenKind::number) return {};
  std::vector<PartOfLine> parts;
  for (std::size_t at = from + 1; at < tokens.size(); ++at) {
    if (!names_another_cow(tokens, at, language)) continue;
    parts.push_back(part_of(text, tokens, from, at, language));
    from = at;
  }
  if (parts.empty()) return {};
  parts.push_back(part_of(text, tokens, from, tokens.size(), language));
  // A list of numbers is told of all of them.
  const bool is_a_list = std::any_of(parts.begin(), parts.end(), [](const PartOfLine& part) {
    return part.words.find(' ') == std::string::npos;
  });
  return is_a_list ? std::vector<PartOfLine>() : parts;
}

std::optional<std::string> part_of_one(std::string_view text, const std::string& number,
                                       const Language& language) {
  for (PartOfLine& part : parts_of_cows(text, language)) {
    if (part.number == plain_number(number)) return std::move(part.words);
  }
  return std::nullopt;
}

std::string told_of_one(std::string_view text, const std::string& number,
                        const Language& language) {
  if (auto part = part_of_one(text, number, language)) return *std::move(part);
  const std::string said(behind_news_lead(trimmed(text), language));
  if (!names_several_cows(said, language)) return said;
  const std::vector<Token> tokens = spoken_tokens(said, language);
  std::size_t at = 0;
  while (at < tokens.size()) {
    const bool is_number = tokens[at].kind == TokenKind::number;
    const std::size_t joining = is_number ? 1 : language.joining_tokens(tokens, at);
    if (joining == 0) break;
    at += joining;
  }
  return at < tokens.size() ? number + ' ' + said.substr(tokens[at].offset) : said;
}

}  // namespace evenclaw
