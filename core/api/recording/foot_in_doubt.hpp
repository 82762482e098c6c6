// After a refused line that named another foot, what is said without a foot is of neither.
#pragma once

#include <optional>
#include <string_view>

#include "core/api/recording/in_crush.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

/// The feet a line nobody could read may have named, since which no foot was named in a line that
/// could be read; empty when the feet spoken of are in no doubt.
FootSet feet_in_doubt(const InCrush& cow, const Language& language);

/// Why the line cannot be taken: it says something of a foot without naming it, and the feet spoken
/// of are in doubt. Nothing for a line that names a cow other than her.
std::optional<Fault> why_foot_is_in_doubt(const InCrush& cow, const Line& line,
                                          std::string_view text, const Language& language);

}  // namespace evenclaw
