// Whether a line that was refused named a cow: what is said after it would be hers.
#pragma once

#include <string_view>

#include "core/trade/call_line/line.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

enum class CowLikely { none, perhaps, surely };

struct RefusedCow {
  CowLikely likely = CowLikely::none;
  CowSaid cow;  // when she was surely named
};

/// surely: it starts with a cow and goes on with words of a turn. perhaps: it starts with a number
/// and goes on with nothing known. none: it starts otherwise, or with a list of numbers, or goes on
/// with news.
RefusedCow cow_in_refused(std::string_view text, const LineContext& context,
                          const Language& language);

}  // namespace evenclaw
