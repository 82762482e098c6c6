// How cows are named on a sheet, and the order in which they stand there.
#pragma once

#include <map>
#include <span>
#include <string>

#include "core/base/id.hpp"
#include "core/sheets/words.hpp"
#include "core/trade/cow_rows.hpp"

namespace evenclaw {

class CowNames {
 public:
  CowNames(std::span<const CowRow> cows, const Wording& wording);

  /// "412", "513 or 531?" when her number is in doubt, "?" when none is known: what stands large
  /// keeps to its column.
  [[nodiscard]] std::string label(CowId cow) const;

  /// "412", "513 or 531?"; "" when none is known.
  [[nodiscard]] std::string number(CowId cow) const;

  /// What a cow without a number looks like, "" for the others.
  [[nodiscard]] std::string looks(CowId cow) const;

  /// What stands beside the label of a cow without a number, "no number (brown heifer)"; "" for the
  /// others.
  [[nodiscard]] std::string beside_label(CowId cow) const;

  /// Where there is no room for a line of its own: "412", "no number (brown heifer)".
  [[nodiscard]] std::string in_text(CowId cow) const;

  /// By number (9 before 10 before 10a), those without one last by their looks.
  [[nodiscard]] bool before(CowId a, CowId b) const;

 private:
  struct Name {
    bool numberless = true;
    std::string number;
    std::string label;
    std::string looks;
  };

  [[nodiscard]] const Name& name_of(CowId cow) const;

  std::map<CowId, Name> names_;
  Name unknown_;
};

/// Numbers as people sort them: by length once leading zeros are gone, then by their characters.
bool number_before(std::string_view a, std::string_view b);

}  // namespace evenclaw
