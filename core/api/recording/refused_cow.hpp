// Whether a line that was refused named a cow: what is said after it would be hers.
#pragma once

#include <string_view>

#include "core/trade/call_line/line.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

enum class CowLikely { none, perhaps, surely };

struct RefusedCow {
  CowLikely likely = CowLikely::none;
  CowSaid
      cow;  // as far as she was named; when it is not sure that a cow was, she is a doubtful one
};

/// surely: it starts with a cow and goes on with words of a turn. perhaps: it starts with a number
/// and goes on with nothing known ("22 nothnig found" names 22?), or with "no" and words that
/// correct nothing ("no tg, black cow" names a cow without a number, the whole line being all that
/// is known of her). none: it starts otherwise, or with a list of numbers, or goes on with news.
RefusedCow cow_in_refused(std::string_view text, const LineContext& context,
                          const Language& language);

}  // namespace evenclaw
