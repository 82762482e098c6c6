// Numbers that are said in words: "four twelve", "four weeks".
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

/// "All 4" as "all four": a digit that is a word of a phrase the language has.
std::vector<Token> with_digits_spelt(std::vector<Token> tokens, std::string_view text,
                                     const Language& language);

/// The tokens, with words that say a number made one number token whose `folded` holds the digits:
/// "four twelve" and "four hundred and twelve" are 412, "four one two" as well, and "two
/// thousand and five" is 2005. A single word is a number only before a unit or on either side of
/// "of" ("four weeks", "two of three"); words of a longer phrase ("all four") stay what they are.
std::vector<Token> with_spoken_numbers(std::vector<Token> tokens, const Language& language);

/// The value of a number word that stands there alone; nothing for any other token.
std::optional<int> number_word_at(const std::vector<Token>& tokens, std::size_t at,
                                  const Language& language);

}  // namespace evenclaw
