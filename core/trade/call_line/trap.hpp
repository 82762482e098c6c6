// Words the grammar could take, but in a way that nobody means who says them.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

#include "core/trade/call_line/grammar.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/line_builder.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

/// The term that would be taken next, and what it stands behind.
struct NextStep {
  Spot spot;
  const Step& step;
  const Term& term;
  std::span<const Token> tokens;
  std::string_view text;
  const LineBuilder& said;
};

/// The fault when the step would misread: a leg said before "lame", an adverb as the name of a
/// product, two lesions that share a word, a claw joined to another, a number with letters in it as
/// a cow.
std::optional<PlacedFault> trap_in(const NextStep& next, const Language& language);

/// How many tokens a line begins with that say "no 413", "nr. 413": a correction or the next cow?
/// 0 for any other line.
std::size_t announced_tokens(std::span<const Token> tokens, const Language& language);

/// The fault of such a line.
std::optional<PlacedFault> announced_number(std::span<const Token> tokens, std::string_view text,
                                            const Language& language);

/// Whether "and" follows a number said in words that a smaller one may still follow: "two hundred
/// and LH SU".
bool number_breaks_off(std::span<const Token> tokens, std::size_t number, std::string_view text,
                       const Language& language);

/// Whether the number stands behind a separator in a line that began with one or with who works,
/// with words behind it that are no unit: "101 vet; 102 wraps off", "caller Ben, 413 lame".
bool names_another_cow(std::span<const Token> tokens, std::size_t number, const Language& language);

/// "78 mm", "3 weeks", "2 of 3": no cow, whatever stands before it.
bool has_its_unit(std::span<const Token> tokens, std::size_t number, const Language& language);

/// Whether letters that mean nothing stand right behind the digits: "4l3", "41O".
bool is_part_of_a_word(std::span<const Token> tokens, std::size_t number, const Language& language);

}  // namespace evenclaw
