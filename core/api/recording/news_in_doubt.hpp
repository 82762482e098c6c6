// News of a number nobody is sure of: it closes nothing, and it is asked whose it is.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/api/recording/crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

/// "412 wrap off; 104? wrap off": what is told of 104 is refused and kept to ask, and "412 wrap
/// off" is given back to be taken; "" when nothing else is told. Nothing for any other line, nor
/// while she stands in the crush.
Result<std::optional<std::string>> ask_of_news_in_doubt(VisitBook& book, Crush& crush,
                                                        std::string_view text,
                                                        const LineContext& context);

}  // namespace evenclaw
