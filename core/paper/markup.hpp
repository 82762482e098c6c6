// Text made safe for HTML and SVG.
#pragma once

#include <string>
#include <string_view>

namespace evenclaw {

/// For element content and double-quoted attributes alike: & < > " ' become character references,
/// control characters that no page may hold are left out, ill-formed UTF-8 becomes U+FFFD.
std::string escaped(std::string_view text);

/// The same for element content that has to fit a column: a word of more than 14 characters may be
/// parted behind every tenth.
std::string escaped_prose(std::string_view text);

/// As escaped(), without escaping: what a terminal or a page may be given to show. Line ends and
/// tabs become single spaces.
std::string printable(std::string_view text);

/// "12.5": at most two decimals, none that are zero, never "-0"; for lengths of a drawing.
std::string decimal(double value);

}  // namespace evenclaw
