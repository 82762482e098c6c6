// "News" in front of a line, which only says what kind of line it is.
#pragma once

#include <string_view>

#include "core/trade/call_line/language.hpp"

namespace evenclaw {

/// "112 wrap off" of "news: 112 wrap off"; the whole line where no such word leads it in, or
/// nothing stands behind it.
std::string_view behind_news_lead(std::string_view line, const Language& language);

/// The line is led in as news, and something stands behind that.
bool is_led_in_as_news(std::string_view line, const Language& language);

}  // namespace evenclaw
