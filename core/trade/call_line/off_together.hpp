// "Wrap and block off": what became of the second is said of the first as well.
#pragma once

#include <cstddef>
#include <optional>
#include <span>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/trap.hpp"

namespace evenclaw {

/// The longest phrase at `at`. The bare word for a wrap or block, joined by "and" to what became of
/// the other of the two, is the phrase that says the same of it: "wrap" in "wrap and block off" is
/// "wrap off". In a line led in as news, where nothing is put on, a comma joins them too.
Language::Match match_of_both(std::span<const Token> tokens, std::size_t at,
                              const Language& language);

/// The fault of "wrap, block off" and "block inside and wrap off": is the first off as well, or put
/// on today?
std::optional<PlacedFault> off_too_or_put_on(const NextStep& next, const Language& language);

}  // namespace evenclaw
