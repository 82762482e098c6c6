// What a line says beside what was called or told of her before at this visit.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/api/recording/crush.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

/// "No number; lame RH" while another one without a number or any words for her stands there and
/// something was called of her: it names the next cow. Not when it says again what was refused.
bool names_the_next_without_name(const VisitBook& book, const Crush& crush, const Line& line,
                                 std::string_view text);

/// Why "412 mobility 3 of 3" is not taken: at her call before, 412 was scored otherwise. Nothing
/// for any other line, nor for one that called her then already, as in a file given again.
std::optional<Fault> scored_otherwise_before(const VisitBook& book, const Crush& crush,
                                             const Line& line, std::string_view text);

}  // namespace evenclaw
