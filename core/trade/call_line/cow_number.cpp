#include "core/trade/call_line/cow_number.hpp"

#include <string>

#include "core/base/ascii.hpp"
#include "core/base/quotation.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t digits_of_a_reader = 15;
constexpr std::size_t digits_of_a_country = 3;

// Some herds call a cow by her national tag, which has twelve digits at the most behind the letters
// of its country (Regulation (EU) 2021/520, article 12). Nobody calls more; thirteen and fourteen
// are a reader's number of which a digit was lost.
constexpr std::size_t longest_herd_number = 12;

// Behind three digits that stand alone so many are the rest of a reader's number; less could be a
// herd number that was said in two parts.
constexpr std::size_t shortest_rest_of_a_tag = 8;

bool is_too_long(std::size_t digits) {
  return digits > longest_herd_number && digits != digits_of_a_reader;
}

std::size_t digits_at(std::span<const Token> tokens, std::size_t at) {
  if (at >= tokens.size() || tokens[at].kind != TokenKind::number) return 0;
  return tokens[at].folded.empty() ? tokens[at].length : tokens[at].folded.size();
}

}  // namespace

std::optional<Refusal> why_no_cow_number(std::string_view said, std::string_view digits) {
  std::size_t count = 0;
  for (const char c : digits) count += is_digit(c) ? 1 : 0;
  if (digits.find('.') != std::string_view::npos) {
    return not_understood(quoted(said) + " is not the number of a cow",
                          "a cow is digits only: say the number again");
  }
  if (!is_too_long(count)) return std::nullopt;
  return not_understood(quoted(said) + " is not the number of a cow: a reader's number has 15 " +
                            "digits, this has " + std::to_string(count),
                        "read her again, or say her herd number");
}

std::size_t misread_tag_tokens(std::span<const Token> tokens, std::size_t at) {
  const std::size_t first = digits_at(tokens, at);
  if (is_too_long(first)) return 1;
  const std::size_t rest = digits_at(tokens, at + 1);
  return first == digits_of_a_country && rest >= shortest_rest_of_a_tag ? 2 : 0;
}

}  // namespace evenclaw
