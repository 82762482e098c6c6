// "No, wrap off 5d": behind "no" an act that could have a time is said for the time that is right.
#pragma once

#include <span>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

/// False for an act without a time behind it, "no, wrap": it says neither what was wrong nor what
/// is right. True for a word of any other kind.
bool has_its_time(const Term& word, std::span<const Token> tokens, const Language& language);

}  // namespace evenclaw
