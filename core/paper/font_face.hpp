// Fonts carried inside a page.
#pragma once

#include <string>
#include <string_view>

#include "core/paper/html.hpp"

namespace evenclaw {

/// RFC 4648 section 4, with padding.
std::string base64(std::string_view bytes);

/// The @font-face rule of one font; families are quoted and escaped.
std::string font_face(const FontFile& font);

/// A text as a quoted CSS string that cannot end the string or the style element it stands in.
std::string css_string(std::string_view text);

}  // namespace evenclaw
