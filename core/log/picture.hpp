// The picture: from the entries that touch a subject to its flat rows, one pure function.
#pragma once

#include <map>
#include <span>
#include <vector>

#include "core/base/id.hpp"
#include "core/log/entry.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// Who is the same cow as whom, from the same_cow entries of a herd that were not taken back.
class CowGroups {
 public:
  explicit CowGroups(std::span<const Entry> entries);
  /// The smallest id of her group; herself when she stands alone.
  [[nodiscard]] CowId representative(CowId cow) const;
  /// All of her group, sorted; at least herself.
  [[nodiscard]] std::vector<CowId> group_of(CowId cow) const;

 private:
  std::map<CowId, std::vector<CowId>> groups_;
  std::map<CowId, CowId> representative_;
};

/// All rows of one cow. `group` is her group_of(); `entries` hold at least every entry that touches
/// a cow of the group and the openings and corrections of the visits they name; others do no harm;
/// their order does not matter. Entries of unknown kind or newer version are passed over (they
/// stay in the log). Pure: no today, no clock.
Rows picture_of_cow(HerdId herd, std::span<const CowId> group, std::span<const Entry> entries);

/// The row of one visit and those of what was counted together at it, from the entries that touch
/// it; no row when it was never opened. What is recorded of the farm has an id as a visit has and
/// is pictured here too: the rows of a mobility scoring, a farm walk, a change.
Rows picture_of_visit(HerdId herd, VisitId visit, std::span<const Entry> entries);

/// The cows and visits an entry touches, which have to be pictured anew after it. same_cow and its
/// taking back touch both cows; a redact touches what its target touched (its subjects say so).
struct Touched {
  std::vector<CowId> cows;
  std::vector<VisitId> visits;
};

Touched touched_by(const Entry& entry);

}  // namespace evenclaw
