// A document as one HTML file that needs nothing else: no script, no reference to anywhere.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/paper/document.hpp"

namespace evenclaw {

/// A font that travels inside the page.
struct FontFile {
  std::string family;      // "B612"
  bool strong = false;     // the bold cut
  std::string_view woff2;  // the bytes of the file
};

/// Without fonts the page asks for B612 where it is installed, else a plain sans-serif. Equal
/// documents give equal bytes.
std::string to_html(const Document& document, const std::vector<FontFile>& fonts = {});

}  // namespace evenclaw
