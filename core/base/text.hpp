// Text as people type it: valid UTF-8, letter case without a locale, spaces at the ends.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace evenclaw {

/// True when every byte belongs to well-formed UTF-8 (RFC 3629: no overlong forms, no surrogates,
/// nothing beyond U+10FFFF). The empty text is valid.
bool is_utf8(std::string_view text);

/// The same text with each ill-formed byte replaced by U+FFFD; valid text comes back unchanged.
std::string valid_utf8(std::string_view text);

/// True for a text of one line that shows as it is written: UTF-8 without control characters
/// (Unicode Cc). The empty text is.
bool is_one_plain_line(std::string_view text);

/// Lower case for comparing words: ASCII, Latin-1 and Latin Extended-A letters (the languages of
/// western and middle Europe); every other byte stays. Not for showing to people.
std::string fold_case(std::string_view text);

/// The text without spaces, tabs, carriage returns and line feeds at either end.
std::string_view trimmed(std::string_view text);

/// How many characters (code points) the text has; ill-formed bytes that are no continuation count.
std::size_t character_count(std::string_view text);

/// At most `max_characters` characters, with "..." after them when something was left off.
std::string shortened(std::string_view text, std::size_t max_characters);

/// The number these digits make; nothing for no digits, for anything else, and for more than
/// `most_digits` (at most nine) of them.
std::optional<int> whole_number(std::string_view digits, std::size_t most_digits);

}  // namespace evenclaw
