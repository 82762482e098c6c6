// What to say instead of words that are known but stand where they cannot.
#pragma once

#include <string>

#include "core/trade/call_line/term.hpp"

namespace evenclaw {

/// What to do about the term; "" when there is nothing to propose. Words to be said stand in braces
/// (quoted_words.hpp).
std::string remedy_for(const Term& term);

}  // namespace evenclaw
