// News of a cow without a number, told by the words she is called by: "red cow wrap off".
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

/// The news of a line that begins with one of `names`, the longest that fits, and tells nothing but
/// news behind it; her name stands where a number would. Letter case does not matter, nor an
/// article in front. Nothing for any other line.
std::optional<Line> news_by_looks(std::string_view text, std::span<const std::string> names,
                                  const LineContext& context, const Language& language);

}  // namespace evenclaw
