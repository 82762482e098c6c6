#include "core/exchange/decoded_text.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

using namespace std::string_view_literals;

constexpr std::string_view mark_of_utf_8 = "\xef\xbb\xbf"sv;
constexpr std::string_view mark_of_utf_16_le = "\xff\xfe"sv;
constexpr std::string_view mark_of_utf_16_be = "\xfe\xff"sv;
constexpr std::size_t looked_at = 512;
constexpr char32_t first_surrogate = 0xD800;
constexpr char32_t first_low_surrogate = 0xDC00;
constexpr char32_t behind_surrogates = 0xE000;

// 0x80 to 0x9F of windows-1252; 0 where it has no character.
constexpr std::array<char16_t, 32> windows_1252_high = {
    0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

void append_utf_8(std::string& text, char32_t c) {
  const auto byte = [&](char32_t bits) { text += static_cast<char>(bits); };
  const auto following = [&](int shift) { byte(0x80U | ((c >> shift) & 0x3FU)); };
  if (c < 0x80) {
    byte(c);
  } else if (c < 0x800) {
    byte(0xC0U | (c >> 6U));
    following(0);
  } else if (c < 0x10000) {
    byte(0xE0U | (c >> 12U));
    following(6);
    following(0);
  } else {
    byte(0xF0U | (c >> 18U));
    following(12);
    following(6);
    following(0);
  }
}

int line_at_end_of(std::string_view text) {
  return 1 + static_cast<int>(std::count(text.begin(), text.end(), '\n'));
}

Fault no_text(int line, std::string message) {
  return {.slug = "file-unreadable",
          .message = std::move(message),
          .line = line,
          .remedy = "Write the list out anew, as text in UTF-8, and see that it is whole."};
}

char32_t unit_at(std::string_view bytes, std::size_t at, bool is_big) {
  const auto first = static_cast<unsigned char>(bytes[at]);
  const auto second = static_cast<unsigned char>(bytes[at + 1]);
  return is_big ? static_cast<char32_t>(first << 8U | second)
                : static_cast<char32_t>(second << 8U | first);
}

Result<std::string> from_utf_16(std::string_view bytes, bool is_big) {
  std::string text;
  text.reserve(bytes.size());
  for (std::size_t at = 0; at < bytes.size(); at += 2) {
    if (at + 1 == bytes.size()) {
      return no_text(line_at_end_of(text), "the file is cut off in the middle of a character");
    }
    char32_t c = unit_at(bytes, at, is_big);
    if (c >= first_surrogate && c < behind_surrogates) {
      const char32_t low = at + 3 < bytes.size() ? unit_at(bytes, at + 2, is_big) : 0;
      const bool is_pair =
          c < first_low_surrogate && low >= first_low_surrogate && low < behind_surrogates;
      if (!is_pair) return no_text(line_at_end_of(text), "these bytes are no text");
      c = 0x10000 + ((c - first_surrogate) << 10U) + (low - first_low_surrogate);
      at += 2;
    }
    append_utf_8(text, c);
  }
  return text;
}

Result<std::string> from_windows_1252(std::string_view bytes) {
  std::string text;
  text.reserve(bytes.size() + bytes.size() / 8);
  for (const char byte : bytes) {
    const auto c = static_cast<unsigned char>(byte);
    const bool is_in_table = c >= 0x80 && c < 0xA0;
    const char32_t meant = is_in_table ? windows_1252_high.at(c - 0x80U) : char32_t{c};
    if (meant == 0 && c != 0) {
      return no_text(line_at_end_of(text), "these bytes are text in no encoding that is known");
    }
    append_utf_8(text, meant);
  }
  return text;
}

/// Western text in UTF-16 has a zero byte in nearly every character.
std::optional<bool> is_big_utf_16(std::string_view bytes) {
  const std::string_view beginning = bytes.substr(0, looked_at);
  std::size_t zeros_first = 0;
  std::size_t zeros_second = 0;
  for (std::size_t at = 0; at < beginning.size(); ++at) {
    if (beginning[at] == '\0') ++(at % 2 == 0 ? zeros_first : zeros_second);
  }
  const std::size_t most = beginning.size() / 4;
  if (zeros_first > most && zeros_second == 0) return true;
  if (zeros_second > most && zeros_first == 0) return false;
  return std::nullopt;
}

bool begins_with(std::string_view bytes, std::string_view mark) {
  return bytes.substr(0, mark.size()) == mark;
}

Result<DecodedText> decoded(std::string_view bytes) {
  const auto as_utf_16 = [](std::string_view units, bool is_big) -> Result<DecodedText> {
    auto text = from_utf_16(units, is_big);
    if (!text) return text.faults();
    return DecodedText{*std::move(text), is_big ? Encoding::utf_16_be : Encoding::utf_16_le};
  };
  if (begins_with(bytes, mark_of_utf_16_le)) return as_utf_16(bytes.substr(2), false);
  if (begins_with(bytes, mark_of_utf_16_be)) return as_utf_16(bytes.substr(2), true);
  if (const auto is_big = is_big_utf_16(bytes)) return as_utf_16(bytes, *is_big);
  if (begins_with(bytes, mark_of_utf_8)) bytes.remove_prefix(mark_of_utf_8.size());
  if (is_utf8(bytes)) return DecodedText{std::string(bytes), Encoding::utf_8};
  auto text = from_windows_1252(bytes);
  if (!text) return text.faults();
  return DecodedText{*std::move(text), Encoding::windows_1252};
}

bool is_no_text(char byte) {
  const auto c = static_cast<unsigned char>(byte);
  return (c < 0x20 && byte != '\t' && byte != '\n' && byte != '\r') || c == 0x7F;
}

}  // namespace

Result<DecodedText> decoded_text(std::string_view bytes) {
  auto read = decoded(bytes);
  if (!read) return read;
  const auto wrong = std::find_if(read->text.begin(), read->text.end(), is_no_text);
  if (wrong == read->text.end()) return read;
  const auto at = static_cast<std::size_t>(wrong - read->text.begin());
  return no_text(line_at_end_of(std::string_view(read->text).substr(0, at)),
                 "a character that cannot be shown stands in it, so the file is no text");
}

}  // namespace evenclaw
