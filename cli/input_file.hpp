// A file from outside, read whole and within a limit.
#pragma once

#include <cstdint>
#include <string>

#include "core/base/result.hpp"

namespace evenclaw::cli {

/// All bytes of a file. Faults: "file-not-found", "file-unreadable" (a folder, no right to read),
/// "file-too-large" as soon as more than `largest` bytes are there, and then no more is read than
/// that, whatever the file says of its size.
Result<std::string> bytes_of_file(const std::string& path, std::int64_t largest);

}  // namespace evenclaw::cli
