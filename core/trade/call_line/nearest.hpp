// The known words nearest to ones that were not understood.
#pragma once

#include <cstddef>
#include <limits>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

struct Nearest {
  std::string_view words;  // as printed; "" when nothing is near
  std::size_t first_token = 0;
  std::size_t token_count = 1;
  std::size_t distance = std::numeric_limits<std::size_t>::max();
};

/// The phrase of one of these kinds that differs least from the words at `unknown`, alone or
/// together with words beside it from `earliest` on. Near means: one letter in three, at least one.
Nearest nearest_phrase(std::span<const Token> tokens, std::size_t unknown, std::size_t earliest,
                       std::span<const TermKind> kinds, const Language& language);

/// "Never" for "fever", "picked" for "kicked": in a short word the first letter is the one that is
/// hardly ever wrong.
bool is_another_word(std::string_view said, const Nearest& near);

/// The line with each word nobody knows put as the phrase of one of these kinds that it is a slip
/// of; a word that is a slip of none stays.
std::string with_slips_mended(std::string_view line, std::span<const TermKind> kinds,
                              const Language& language);

/// "did you mean "lame"?"; "" when nothing is near.
std::string meant_by(const Nearest& near);

/// Whether a single word looks like a slip of any word of the language.
bool looks_like_a_slip(const Token& word, const Language& language);

}  // namespace evenclaw
