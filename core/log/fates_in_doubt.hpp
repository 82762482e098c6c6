// Wraps and blocks that one visit tells to be off and to be still on.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/base/id.hpp"
#include "core/log/cow_story.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/foot_rows.hpp"

namespace evenclaw {

/// What was told later, and says which of the two holds.
struct FateSettled {
  Moment moment;
  bool is_off = false;
  bool is_made_anew = false;  // still on, and what was closed was asked for once more
};

/// One telling that it is off, beside one that it is still on.
struct FateInDoubt {
  EntryId told_by;  // that it is off
  Fixture fixture = Fixture::wrap;
  Foot foot = Foot::lf;
  Claw claw = Claw::not_called;  // of a block, where one of the two tellings called it
  std::optional<FateSettled> settled;
};

/// In one turn in either order; else told off first, or on two devices, for there nobody knows
/// which came first. Still on as news that was asked about counts as told. It is settled by news
/// that comes last at the visit where all was told on one device, or by what is told of it after
/// the visit. Where a new one was put on at that visit nothing is in doubt: that one is on.
std::vector<FateInDoubt> fates_in_doubt(const CowStory& story);

/// The doubt about that telling, of that foot and claw; nullptr when there is none.
const FateInDoubt* doubt_about(std::span<const FateInDoubt> doubts, EntryId told_by,
                               Fixture fixture, Foot foot, Claw claw);

}  // namespace evenclaw
