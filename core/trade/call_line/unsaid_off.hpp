// "Wrap 3d": a time right behind what is put on today is when it comes off.
#pragma once

#include <cstddef>
#include <span>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line_builder.hpp"

namespace evenclaw {

/// A number of days or weeks stands at `at`, and what was said last waits for the day it comes off.
bool tells_when_it_comes_off(std::span<const Token> tokens, std::size_t at, const LineBuilder& said,
                             const Language& language);

}  // namespace evenclaw
