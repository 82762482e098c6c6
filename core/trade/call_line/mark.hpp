// Which terminal of the grammar a token is that is no known word.
#pragma once

#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

/// A word is an unknown one.
TermKind kind_of_mark(TokenKind kind);

}  // namespace evenclaw
