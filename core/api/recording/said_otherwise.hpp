// Whether a line that was refused has been said again in other words.
#pragma once

#include <string_view>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/term.hpp"
#include "core/trade/foot.hpp"

namespace evenclaw {

/// "On", "and", "both" and the like tell nothing by themselves.
bool only_joins(TermKind kind);

/// True when `now` holds every known word of `refused` that the refusal did not point at, in
/// whatever order, and the words it pointed at or others in their place: "LH rot" and "LH foul",
/// "wrap LH" and "LH wrap". A word that looks like a slip stands for what it looks like: "wrp" is
/// not said again by "spray", and "410 DD", which lacked its foot, by "LH DD" alone. The number of
/// the cow must be the same, and so must the feet where both lines name them; but to a line with
/// every word a foot may be added that one of them lacked. A correction is never said in other
/// words.
bool is_said_in_other_words(std::string_view refused, std::string_view now,
                            const Language& language);

/// True when every word of `refused` that is known, its feet aside, was said in `now` as well, in
/// these words or in others of the same meaning.
bool holds_what_was_known(std::string_view refused, std::string_view now, const Language& language);

/// The same of what can be put down by itself, a finding or something done, and not of its details.
bool holds_what_was_called(std::string_view refused, std::string_view now,
                           const Language& language);

/// True unless `refused` told of a foot without naming it while `spoken_of` was spoken of, and
/// `now` is of other feet; those of a line that names none are `named_last`. What is said of the
/// cow herself, and what corrects, is of any foot.
bool may_be_of_the_same_feet(std::string_view refused, FootSet spoken_of, std::string_view now,
                             FootSet named_last, const Language& language);

}  // namespace evenclaw
