// News that reaches the business between visits: the farmer rings that the wraps are off.
#pragma once

#include <string_view>

#include "core/api/herds.hpp"
#include "core/api/ports.hpp"
#include "core/api/reply.hpp"
#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"

namespace evenclaw {

/// One line of news ("412, 513 wraps off; 77 gone; 620 still lame"), told on `day`. What is clear
/// is recorded together; an unknown number or an unclear foot is an item of the reply. A line that
/// says anything else is refused whole: it belongs to a visit.
Result<Reply> take_news(const Ports& ports, const Herd& herd, Day day, std::string_view line,
                        const Language& language);

}  // namespace evenclaw
