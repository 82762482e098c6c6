// Files a command writes for people: whole or not at all, never over something else.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.hpp"

namespace evenclaw::cli {

/// Writes beside the target and renames, so that a half-written file never bears the name. A file
/// that exists is replaced only when its beginning is `ours` (a page this program made), else
/// "output-exists". Faults also: "disk-full", "disk-failed", "file-read-only".
Outcome write_file(const std::string& path, std::string_view content, std::string_view ours);

/// Where a page goes when no --out is given: the folder "sheets" beside the records.
std::string beside(const std::string& records_file, const std::string& name);

}  // namespace evenclaw::cli
