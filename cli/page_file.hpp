// A page for people as a file, in the form that was asked for.
#pragma once

#include <string>

#include "cli/output_file.hpp"
#include "core/api/sheet.hpp"

namespace evenclaw::cli {

/// Faults: those of write_page(), and "print-failed".
Outcome write_sheet(const std::string& path, PageForm form, const SheetMade& sheet);

}  // namespace evenclaw::cli
