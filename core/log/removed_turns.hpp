// Turns whose contents were taken away: that they were there still shows.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/log/entry.hpp"

namespace evenclaw {

struct RemovedTurn {
  EntryId turn;
  std::vector<Uuid> subjects;  // the herd, the visit, and the cow or cows it counted as
  std::optional<Day>
      removed_on;  // by the clock of who took it away; none when only the body is gone
  std::optional<PersonId> removed_by;
  std::string why;
};

/// Of turns and redactions of a herd (any versions, any order) the turns nothing corrects whose
/// body is gone, or is to go with a redaction among these; by the id of the turn.
std::vector<RemovedTurn> removed_turns(std::span<const Entry> entries);

/// The same of animals counted together; `turn` is the id of the entry that counted them.
std::vector<RemovedTurn> removed_counts(std::span<const Entry> entries);

}  // namespace evenclaw
