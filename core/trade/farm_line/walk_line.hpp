// The lines of a farm walk: "cubicles 115 wide 180 long, 10 looked at", "132 cows 120 cubicles",
// "footbath 3 m by 50, 10 deep, copper 5 percent, 180 through".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/farm_walk.hpp"

namespace evenclaw {

struct WalkLine {
  std::optional<std::string> place;    // "place old shed": what follows was looked at there
  std::vector<WalkMeasured> measured;  // in the order in which it was said
};

/// Reads one line. It is understood whole or refused whole: nothing is guessed, no word dropped. A
/// bare length is centimetres where it can be one ("180 long"); a bare 3 is refused with what to
/// say. A value nobody measures is "call-impossible". How many were looked at belongs to all that
/// was said before it of the same thing. A blank line and a comment (#) say nothing.
Result<WalkLine> read_walk_line(std::string_view text, const Language& language, int line_number);

}  // namespace evenclaw
