// What ships inside the program: its version, the fonts of its pages, the example visits.
#pragma once

#include <string_view>
#include <vector>

#include "core/api/sheet.hpp"
#include "report/pdf/pdf.hpp"

namespace evenclaw::cli {

inline constexpr std::string_view version = "0.1.0";

std::vector<FontFile> fonts();

/// The same fonts with all their letters, for pages that are printed.
std::vector<PrintFont> print_fonts();

/// One visit of the example: the day its file is named after, and its called lines.
struct ExampleVisit {
  std::string_view name;  // "2026-10-27.calls"
  std::string_view calls;
};

std::vector<ExampleVisit> example_visits();  // by day

}  // namespace evenclaw::cli
