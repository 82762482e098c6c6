#include "core/paper/font_face.hpp"

#include <cstdint>

#include "core/paper/markup.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view base64_letters =
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

std::uint32_t byte_at(std::string_view bytes, std::size_t at) {
  return at < bytes.size() ? static_cast<unsigned char>(bytes[at]) : 0U;
}

bool is_plain_css(unsigned char byte) {
  const bool letter = (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z');
  return letter || (byte >= '0' && byte <= '9') || byte == ' ' || byte >= 0x80;
}

}  // namespace

std::string base64(std::string_view bytes) {
  std::string text;
  text.reserve((bytes.size() + 2) / 3 * 4);
  for (std::size_t at = 0; at < bytes.size(); at += 3) {
    const std::uint32_t three =
        byte_at(bytes, at) << 16U | byte_at(bytes, at + 1) << 8U | byte_at(bytes, at + 2);
    const std::size_t given = bytes.size() - at;
    text += base64_letters[three >> 18U];
    text += base64_letters[three >> 12U & 63U];
    text += given > 1 ? base64_letters[three >> 6U & 63U] : '=';
    text += given > 2 ? base64_letters[three & 63U] : '=';
  }
  return text;
}

std::string css_string(std::string_view text) {
  constexpr std::string_view digits = "0123456789abcdef";
  std::string quoted = "\"";
  for (const char letter : printable(text)) {
    const auto byte = static_cast<unsigned char>(letter);
    if (is_plain_css(byte)) {
      quoted += letter;
    } else {
      quoted += '\\';
      quoted += digits[byte >> 4U];
      quoted += digits[byte & 15U];
      quoted += ' ';
    }
  }
  return quoted + '"';
}

std::string font_face(const FontFile& font) {
  return "@font-face{font-family:" + css_string(font.family) +
         ";font-weight:" + (font.strong ? "bold" : "normal") + ";src:url(data:font/woff2;base64," +
         base64(font.woff2) + ")format(\"woff2\")}\n";
}

}  // namespace evenclaw
