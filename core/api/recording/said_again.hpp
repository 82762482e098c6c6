// Whether a line that was refused has been said again with its slip mended.
#pragma once

#include <string_view>

#include "core/trade/call_line/language.hpp"

namespace evenclaw {

/// True when `now` says again what `refused` said: the same but for a slip, with nothing that was
/// known left out, or every word of it and more. Her number may be left out the second time, but
/// another number or another foot is another thing: "22 nothnig found" is not said again by "23
/// nothing found". What tells nothing by itself is said again by what does: "no, not that one" by
/// any correction, "ditto" by any line of hers.
bool is_said_again(std::string_view refused, std::string_view now, const Language& language);

/// True when `now` starts with her number and says what `refused` said behind words nobody knows:
/// "next one 413" by any line that starts with 413, "nr 413 lame" by "413 lame LH".
bool is_named_again(std::string_view refused, std::string_view now, const Language& language);

}  // namespace evenclaw
