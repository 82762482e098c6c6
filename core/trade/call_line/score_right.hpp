// "No, 4/5": behind "no" a score with its scale is the mobility score that is right.
#pragma once

#include <cstddef>
#include <span>
#include <string_view>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

/// "4/5", "2 of 3" at `at`: a number of one digit, and how far a scale of mobility runs.
bool is_score(std::span<const Token> tokens, std::size_t at, std::string_view text,
              const Language& language);

}  // namespace evenclaw
