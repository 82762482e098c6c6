// "Not lame", "vet not needed": kept in words, unless it was said before.
#pragma once

#include <optional>

#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// Why it cannot be denied beside what was said of her; nothing when it can.
std::optional<Refusal> why_not_denied(const Turn& turn, const NoteSaid& said);

}  // namespace evenclaw
