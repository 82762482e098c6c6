// What the cells of one line of a list of findings say was found.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/exchange/finding_words.hpp"
#include "core/exchange/herd_columns.hpp"
#include "core/trade/past_finding.hpp"

namespace evenclaw {

/// A cell that holds something, of a column for which tells_of_a_finding().
struct FindingCell {
  HerdColumn holds = HerdColumn::lesion;
  std::size_t column = 0;  // from 0
  std::string text;
};

/// What is wrong with one of the cells, by its place among them; of the line when there is none.
struct FindingFault {
  std::optional<std::size_t> cell;
  std::string what;  // behind the words of the cell: "is no lesion ..."
  std::string remedy;
};

struct FindingRead {
  PastFinding finding;          // without its day; when there are no faults
  bool is_passed_over = false;  // no lesion stands in the line, or a word says that it is none
  std::vector<FindingFault> faults;
};

/// A line without a lesion tells of no finding, unless it says where or how bad. Faults: a word
/// nobody explained, a claw or place told in two ways, a stage of another lesion than digital
/// dermatitis. A word that is passed over passes over its line, whatever else stands in it.
FindingRead finding_in(const std::vector<FindingCell>& cells, const FindingWords& words);

}  // namespace evenclaw
