// The heads under which herd programs and spreadsheets keep what we read, by language.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/exchange/herd_columns.hpp"

namespace evenclaw {

/// What a column with that head holds, letter case, hyphens, underlines and dots apart; nothing for
/// a head that is not known. English, German, Dutch and French words of the trade, from memory; no
/// program's own list was looked at.
std::optional<HerdColumn> held_under(std::string_view head);

/// The heads of one column, folded.
struct KnownHeads {
  HerdColumn holds;
  std::vector<std::string_view> heads;
};

/// All that are understood besides the words of HerdColumn themselves.
std::vector<KnownHeads> known_heads();

}  // namespace evenclaw
