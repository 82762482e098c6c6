// A document as a PDF file on A4, to be printed without a browser.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/paper/document.hpp"

namespace evenclaw {

/// A font the page may be set in; the program ships a regular and a bold cut of one family.
struct PrintFont {
  std::string_view bytes;  // of an OpenType file
};

/// The bytes of the file: pages with their text to be selected and searched, the fonts in it, no
/// date of its making, so that equal documents give equal bytes where the shipped fonts have all
/// letters. Where they lack one, a font of the machine lends it. Faults: "print-failed".
Result<std::string> to_pdf(const Document& document, const std::vector<PrintFont>& fonts);

}  // namespace evenclaw
