// Letters that only look like those that are meant: of another alphabet, or in place of a digit.
#pragma once

#include <string>
#include <string_view>

namespace evenclaw {

/// The word with its Cyrillic and Greek letters that look like Latin ones written in those; "" when
/// it holds none, or others that look like no Latin letter.
std::string in_latin_letters(std::string_view word);

/// "4l3" and "4O3" as the number they look like; "" when other letters are in it, or none.
std::string in_digits(std::string_view word);

/// "say the number again, 413 if that is meant".
std::string number_again(std::string_view said);

}  // namespace evenclaw
