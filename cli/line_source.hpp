// Lines of a file, a pipe or the keyboard, with the limits a called line has.
#pragma once

#include <istream>
#include <optional>
#include <string>
#include <vector>

#include "core/base/result.hpp"

namespace evenclaw::cli {

/// Larger files are no day's calls: a very long day is under 100 kB.
inline constexpr std::int64_t largest_call_file = 64LL * 1024 * 1024;

/// All lines of a file of calls. Refused whole, so that nothing is half recorded: a file that is
/// not there or cannot be read, one over largest_call_file, one with NUL bytes ("file-unreadable":
/// no text), and every line that is no UTF-8 or longer than a called line may be, with its number.
Result<std::vector<std::string>> lines_of_file(const std::string& path);

/// The next line of a stream without its line ending; nothing at the end. A line that is no text is
/// a fault for that line only, so that a pipe goes on.
Result<std::optional<std::string>> next_line(std::istream& stream, int line_number);

}  // namespace evenclaw::cli
