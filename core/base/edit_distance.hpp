// How far a typed word is from a known one, for proposing the nearest right word.
#pragma once

#include <cstddef>
#include <string_view>

namespace evenclaw {

/// Fewest insertions, deletions, replacements and swaps of neighbours that turn `a` into `b`
/// (Damerau 1964, Levenshtein 1966; the restricted form, in which no part is edited twice).
/// Counts bytes, so fold_case() both first; symmetric, 0 only for equal texts.
std::size_t edit_distance(std::string_view a, std::string_view b);

}  // namespace evenclaw
