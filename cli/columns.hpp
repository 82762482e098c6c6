// Words in columns of a terminal, and how many there are of something.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace evenclaw::cli {

/// What fits a terminal nobody has widened.
inline constexpr std::size_t terminal_width = 80;

/// The text filled up with spaces to so many characters; a longer one stays whole.
std::string padded(std::string_view text, std::size_t width);

/// "1 cow", "2 cows".
std::string counted(std::int64_t count, std::string_view one, std::string_view several);

/// Parts with `between` between them.
std::string joined(const std::vector<std::string>& parts, std::string_view between);

/// The text behind `lead`, broken at spaces so that no line is wider than a terminal; further lines
/// begin below the first word. A word wider than that stands on a line of its own.
std::string wrapped_behind(std::string_view lead, std::string_view text);

/// Rows of equally many cells, each column as wide as its widest cell, each line indented by two.
std::string table(const std::vector<std::vector<std::string>>& rows);

}  // namespace evenclaw::cli
