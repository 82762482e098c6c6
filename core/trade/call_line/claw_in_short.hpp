// "Block in", "sole ulcer out": the claw said as short as can be.
#pragma once

#include <cstddef>
#include <optional>
#include <span>

#include "core/trade/call_line/grammar.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

/// The claw that the word at `at` means where one stands in the line; nothing where no claw may
/// stand, or where the word leads on to something else: "in 3 weeks", "in the middle".
std::optional<Claw> claw_in_short(std::span<const Token> tokens, std::size_t at, Spot spot,
                                  const LineBuilder& said, const Language& language);

/// A claw in full stands there.
bool is_claw(std::span<const Token> tokens, std::size_t at, const Language& language);

}  // namespace evenclaw
