// The tokens of a line as they are said: short words written out, number words made numbers.
#pragma once

#include <cstddef>
#include <span>
#include <string_view>
#include <vector>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

/// tokens_of() with "rest's" taken apart into "rest" and "is", where the language knows the ending
/// as a short word, and with_spoken_numbers(). Offsets and lengths are those of the text as typed.
std::vector<Token> spoken_tokens(std::string_view text, const Language& language);

/// The first token that is neither a separator nor a joining word: "and 413" begins with 413. The
/// number of tokens when there is none.
std::size_t first_said(std::span<const Token> tokens, const Language& language);

}  // namespace evenclaw
