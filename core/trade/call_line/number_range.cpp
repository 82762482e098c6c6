#include "core/trade/call_line/number_range.hpp"

#include <optional>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

constexpr int most_between = 60;  // no more stand behind one crush in a day

}  // namespace

std::vector<std::string> numbers_of_range(std::span<const Token> tokens, std::size_t at,
                                          std::string_view text) {
  if (at < 2 || tokens[at].kind != TokenKind::number) return {};
  const Token& dash = tokens[at - 1];
  const Token& first = tokens[at - 2];
  const bool is_dash = dash.kind == TokenKind::comma && text[dash.offset] != ',';
  if (!is_dash || first.kind != TokenKind::number) return {};
  const std::string from(text.substr(first.offset, first.length));
  const std::string to(text.substr(tokens[at].offset, tokens[at].length));
  constexpr std::size_t most_digits = 6;
  const std::optional<int> low = whole_number(from, most_digits);
  const std::optional<int> high = whole_number(to, most_digits);
  const bool are_near = low && high && *low < *high && *high - *low <= most_between &&
                        from.size() == to.size() && from.front() != '0';
  if (!are_near) return {from, to};
  std::vector<std::string> numbers;
  for (int number = *low; number <= *high; ++number) numbers.push_back(std::to_string(number));
  return numbers;
}

}  // namespace evenclaw
