// The text of a file as other programs write it: which encoding its bytes are in, and the text as
// UTF-8.
#pragma once

#include <string>
#include <string_view>

#include "core/base/enum_words.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

enum class Encoding { utf_8, utf_16_le, utf_16_be, windows_1252 };

template <>
struct EnumWords<Encoding> {
  static constexpr EnumWord<Encoding> table[] = {{Encoding::utf_8, "UTF-8"},
                                                 {Encoding::utf_16_le, "UTF-16 LE"},
                                                 {Encoding::utf_16_be, "UTF-16 BE"},
                                                 {Encoding::windows_1252, "Windows-1252"}};
};

struct DecodedText {
  std::string text;  // valid UTF-8, without the mark some programs put first
  Encoding encoding = Encoding::utf_8;
};

/// A byte order mark tells (Unicode 15, 23.8). Without one, zero bytes at every second place of the
/// beginning are UTF-16, what is well-formed UTF-8 is that, and the rest is Windows-1252 (the
/// WHATWG table of windows-1252 without its five empty places), which western spreadsheets write:
/// common practice, no source. Fault "file-unreadable", with the line: half a character at the end
/// of UTF-16, a lone surrogate, an empty place, a control character other than tab and line ends:
/// the file is cut off, or no text.
Result<DecodedText> decoded_text(std::string_view bytes);

}  // namespace evenclaw
