// Free words said of a cow at a visit: why she was not done, why she came, notes of her and her
// feet.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/sheets/signs_in_words.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

enum class WordsAre { why_not_done, why_unfinished, came_for, note };

/// The words live as long as the rows.
struct WordsOfHer {
  WordsAre are = WordsAre::note;
  std::string_view words;
  std::optional<Foot> foot = std::nullopt;  // of all of her when none
};

/// In the order of her turns, then of her feet.
std::vector<WordsOfHer> words_of_her(const CowSeen& cow);

/// "not finished: she went down", "came for: pus", "said in a note: swollen above the horn".
std::string words_as_told(const WordsOfHer& said, const Wording& wording);

/// Nobody has read them as a call or told them as the reason why she was not done: then somebody
/// has to be asked what is meant.
bool is_only_asked(const WordsOfHer& said);

/// What is found on a foot counts in all of them but a reason that was understood.
HeardAs heard_as(const WordsOfHer& said);

/// Those that name the vet and tell of no sign.
std::vector<WordsOfHer> words_naming_the_vet(const CowSeen& cow);

}  // namespace evenclaw
