// Lines that count animals together: "12 heifers, far yard, all good bar the little black one".
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/trap.hpp"

namespace evenclaw {

/// What to say for "12 fresh heifers".
constexpr std::string_view remedy_behind_a_count =
    "say the animals right behind their number, and what they are like behind a comma: "
    "\"{12 heifers, fresh, all good}\"";

/// A number and a word for several animals stand at its start, behind "no" when it mends the count
/// of the line before; a word between the two, "12 fresh heifers", is refused, and no cow is named.
/// "412 heifer" is a cow and why she came.
bool counts_animals(std::span<const Token> tokens, const Language& language);

/// How many tokens from `at` on are free words about a batch, where it stands or who is apart: up
/// to a separator, to what became of them, or to "and" before another one who is apart.
std::size_t batch_token_count(std::span<const Token> tokens, std::size_t at,
                              const Language& language);

/// The fault when free words about a batch would swallow something that is called or counted:
/// "12 heifers DD", "bar two".
std::optional<PlacedFault> swallowed_by_a_batch(const NextStep& next, const Language& language);

/// The fault of "12 heifer, all good": the cow 12, a heifer, or twelve of them?
std::optional<PlacedFault> one_or_several(const NextStep& next, const Language& language);

}  // namespace evenclaw
