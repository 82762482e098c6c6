// A line that could be a call of a cow, and is news of her: she is not in the crush, and it answers
// or contradicts what was told of her at this visit.
#pragma once

#include <string_view>

#include "core/api/recording/crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

/// "412 LH wrap off", once it was asked whether the wrap of this visit is off, and "308 not lame"
/// of one who was told to be lame still, as news; "412 RH wrap off" of a wrap that is known as
/// well, while the turn of another cow is under way. Any other line as it is.
Result<Line> as_news_of_one_out(const VisitBook& book, const Crush& crush, Line line,
                                std::string_view text);

}  // namespace evenclaw
