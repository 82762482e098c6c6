// Free words inside a line: where they end, and when they must stand in quotes.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

enum class TextExtent {
  none,
  to_separator,  // up to , : ; · or a full stop
  to_strong,     // up to ; · or a full stop
  of_a_reason,   // what she came for, as far
  of_an_end,     // why she was let out, as far
  to_line_end,
  of_a_batch  // up to a separator or to what became of the animals (batch_line.hpp)
};

/// Whether free words may stand behind a phrase of that kind: "spray", "note", "no tag".
bool free_words_may_follow(TermKind kind);

/// Whether the words are nothing but a number as short as one a herd gives: "no number, 418".
bool is_a_herd_number(std::span<const Token> tokens);

/// How many of the tokens from `at` on belong to free words of this extent.
std::size_t text_token_count(std::span<const Token> tokens, std::size_t at, TextExtent extent);

/// How many of those tokens are the name of a product: it ends before the words that tell who gave
/// it or directed it.
std::size_t name_token_count(std::span<const Token> tokens, std::size_t at, std::size_t count,
                             const Language& language);

/// True when part of the words would also be an act, a foot or a finding, so that it is unclear
/// whether they describe or call: "brown heifer, lame LH". Up to a separator any such word counts;
/// up to a strong one a part between commas counts that is made of such words only. Why she was let
/// out may be what is called of a cow who shows it: "not done, went down in the crush".
bool could_be_calls(std::span<const Token> tokens, TextExtent extent, const Language& language);

/// The words between quotes, with a quote inside them doubled.
std::string in_quotes(std::string_view words);

/// The words as they are printed: bare when reading gives them back unchanged, else in quotes.
std::string printed_text(std::string_view words, TextExtent extent, const Language& language);

/// A foot is named in it, and a lesion or what else is called of one, or an act or a task stands in
/// it: a note in which a call may have been meant.
bool may_tell_of_a_finding(std::string_view words, const Language& language);

}  // namespace evenclaw
