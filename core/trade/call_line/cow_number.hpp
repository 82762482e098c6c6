// How long the number of a cow may be, and what a reader's number with a slip in it looks like.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/open_item.hpp"

namespace evenclaw {

/// Why these digits, said like that, are not the number of a cow.
std::optional<Refusal> why_no_cow_number(std::string_view said, std::string_view digits);

/// How many tokens from `at` on are a reader's number with a digit too few or too many, in one or
/// in two parts ("82600000060001", "826 00000060001"); 0 when it is none.
std::size_t misread_tag_tokens(std::span<const Token> tokens, std::size_t at);

}  // namespace evenclaw
