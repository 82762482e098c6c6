// The cells of a list of findings, read by what a person said of its words and by the words of the
// trade.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "core/exchange/finding_scheme.hpp"
#include "core/exchange/finding_terms.hpp"
#include "core/trade/dd_stage.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/lesion.hpp"

namespace evenclaw {

/// What a cell says: a value, that its line tells of no finding, or, without both, nothing that is
/// known.
template <class T>
struct CellSaid {
  std::optional<T> value = {};
  bool is_passed_over = false;
};

class FindingWords {
 public:
  explicit FindingWords(const FindingScheme& scheme);

  /// As it was said of the word, else by its atlas code where codes were said; never by its look.
  [[nodiscard]] CellSaid<Lesion> lesion(std::string_view cell) const;

  // The others as it was said of the word, else by the words of the trade. A word is first looked
  // for as it is written, then without regard to letter case.

  /// Of the column of feet or of claws: either may tell both.
  [[nodiscard]] CellSaid<FootSaid> foot(HerdColumn column, std::string_view cell) const;
  [[nodiscard]] CellSaid<PlaceSaid> place(std::string_view cell) const;
  /// A zone's number, 0 to 12; "4,0" of a spreadsheet is 4.
  [[nodiscard]] CellSaid<PlaceSaid> zone(std::string_view cell) const;
  [[nodiscard]] CellSaid<Degree> degree(std::string_view cell) const;
  [[nodiscard]] CellSaid<DdStage> stage(std::string_view cell) const;

 private:
  [[nodiscard]] const std::string* meaning(HerdColumn column, std::string_view cell) const;

  bool is_icar_;
  std::map<std::pair<HerdColumn, std::string>, std::string> exactly_;
  std::map<std::pair<HerdColumn, std::string>, std::string> folded_;
};

}  // namespace evenclaw
