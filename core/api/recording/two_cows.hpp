// "203 LH sole ulcer, 204 RH fine": two cows in one line, of which each is told on a line of her
// own.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/trade/call_line/language.hpp"

namespace evenclaw {

struct PartOfLine {
  std::string number;
  std::string words;  // with the number before it
};

/// What the line says of each cow, in the order said; nothing unless it names more than one.
std::vector<PartOfLine> parts_of_cows(std::string_view text, const Language& language);

/// Of a line that tells of several cows, each behind her number, what it tells of that one; nothing
/// where it does not name her so.
std::optional<std::string> part_of_one(std::string_view text, const std::string& number,
                                       const Language& language);

/// The same, and "883 and 884 LH DD" as it was said of 884 alone; all of any other line.
std::string told_of_one(std::string_view text, const std::string& number, const Language& language);

/// "Rest fine, 412 RH whilte line side", which starts without a number.
struct CowFurtherOn {
  std::string before;  // of the cow in the crush
  PartOfLine her;
};

/// Where a foot or how she came stands behind a number further on; nothing else is surely a cow.
std::optional<CowFurtherOn> cow_further_on(std::string_view text, const Language& language);

}  // namespace evenclaw
