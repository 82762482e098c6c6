// The greys of the page, as in the HTML: that of text is dark enough to be read with poor eyes and
// after a bad copier, that of drawings light enough to be told from black beside it.
#pragma once

#include <cstdint>

namespace evenclaw {

inline constexpr std::uint16_t text_grey_65535 = 0x4444;
inline constexpr double drawing_grey = 0x8a / 255.0;

}  // namespace evenclaw
