// What a person says the words of a list of findings mean: never guessed at, and kept for the next
// list of the herd.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/exchange/herd_columns.hpp"
#include "core/trade/past_finding.hpp"

namespace evenclaw {

/// What is said for a word whose lines tell of no finding.
inline constexpr std::string_view word_passed_over = "ignore";
/// And for one that tells nothing of its column.
inline constexpr std::string_view word_telling_nothing = "not called";

struct WordSaid {
  HerdColumn column = HerdColumn::lesion;
  std::string word;   // as it stands in the list
  std::string means;  // in our words (core/exchange/finding_terms.hpp), or one of the two above

  friend bool operator==(const WordSaid&, const WordSaid&) = default;
};

struct FindingScheme {
  std::optional<bool> icar = {};  // lesions are the codes of the ICAR Claw Health Atlas
  std::vector<WordSaid> words = {};

  friend bool operator==(const FindingScheme&, const FindingScheme&) = default;
};

/// "icar", "A=DD, Klauenfäule=HHE, X=ignore", or both: "icar, X=ignore"; "not icar" takes the first
/// back. Parts are parted by semicolons where one stands in it, so that a word may hold a comma.
/// Faults "usage" for each part that says nothing, or names no lesion that is known.
Result<FindingScheme> lesions_said(std::string_view typed);

/// "foot:1=LH, claw:a=outside, place:4=zone 4, degree:2=plain, stage:II=M2": the words of the other
/// columns. Faults "usage" as above.
Result<FindingScheme> words_said(std::string_view typed);

/// The one with what was said now; the last word holds.
FindingScheme with_words_said(FindingScheme known, const FindingScheme& now);

/// Whether it says what any lesion is.
bool tells_lesions(const FindingScheme& scheme);

/// In which of the three ways it tells them.
LesionScheme kind_of(const FindingScheme& scheme);

}  // namespace evenclaw
