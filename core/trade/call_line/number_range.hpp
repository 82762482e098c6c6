// "250-253": numbers with a dash between them, and those that may be meant between the two.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

/// The numbers from the one before the dash up to the one at `at`; only these two where those
/// between are too many to be meant, or the second is not the higher one. Nothing when no dash
/// alone parts the number at `at` from a number before it.
std::vector<std::string> numbers_of_range(std::span<const Token> tokens, std::size_t at,
                                          std::string_view text);

}  // namespace evenclaw
