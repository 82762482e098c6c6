// Cuts a line into words, numbers, quoted words and separators, each with its place.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace evenclaw {

/// The apostrophe that telephones and tablets write.
inline constexpr std::string_view curly_apostrophe = "\xE2\x80\x99";

enum class TokenKind {
  word,    // letters and digits that start with a letter
  number,  // digits, perhaps with one decimal point: 412, 7.5
  date,    // a day written as 2026-10-09
  quoted,  // "..." with "" for a quote inside; curly quotes as well
  comma,   // , or a dash that stands alone
  colon,
  strong,       // ; · or a full stop before a space or the end
  conjunction,  // & + /
  doubt,        // ?
  stray         // anything else, one character
};

struct Token {
  TokenKind kind = TokenKind::stray;
  std::size_t offset = 0;  // in bytes
  std::size_t length = 0;
  std::string folded;  // a word in lower case, without apostrophes; of a number said in words, or
                       // with a blank in it, its digits
};

/// All tokens of a line, in order; only spaces lie between them. A hyphen inside a word counts as a
/// space, so that "white-line" and "white line" are the same two words. Bytes that are no UTF-8
/// make tokens too, which mean nothing.
std::vector<Token> tokens_of(std::string_view line);

/// A word as tokens_of() folds it: lower case, without apostrophes.
std::string folded_word(std::string_view word);

/// The words inside a quoted token.
std::string unquoted(std::string_view quoted);

/// The column, in characters from 1, of the byte at `offset`.
int column_at(std::string_view line, std::size_t offset);

}  // namespace evenclaw
