// A document as plain text for a terminal or an e-mail.
#pragma once

#include <cstddef>
#include <string>

#include "core/paper/document.hpp"

namespace evenclaw {

/// Lines of at most `width` characters (outside of tables a longer word stands alone), each ended
/// by a line feed. Of figures only the captions stand. Control characters are left out.
std::string to_plain_text(const Document& document, std::size_t width = 80);

}  // namespace evenclaw
