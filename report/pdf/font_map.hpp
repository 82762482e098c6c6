// The fonts a page is set in: those shipped with the program, whatever the machine has.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "report/pdf/pdf.hpp"

namespace evenclaw {

enum class FontReach {
  shipped,  // nothing but what ships with the program: equal on every machine
  machine   // for letters the shipped fonts lack, what the machine has
};

/// The name under which the shipped fonts are asked for. No font of a machine bears it.
std::string_view shipped_family();

/// A PangoFontMap, kept by the thread that asks for it. Faults: "print-failed" when a font cannot
/// be read.
Result<std::shared_ptr<void>> font_map(const std::vector<PrintFont>& fonts, FontReach reach);

}  // namespace evenclaw
