// Which cow on record a line of a list means.
#pragma once

#include <optional>
#include <string>

#include "core/api/importing/known_herd.hpp"
#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/exchange/herd_record.hpp"

namespace evenclaw {

/// A record with its numbers as they are compared, and the day on which its number is hers.
struct RecordAsked {
  const HerdRecord* record = nullptr;
  std::string number;      // without leading zeros
  std::string tag;         // tag_key()
  std::string electronic;  // 15 digits
  Day on;
};

RecordAsked asked_of(const HerdRecord& record, Day on);

/// By her ear tag or electronic number; else by her number, of those who ever carried it: the one
/// of whom the record tells nothing new, else the one of whom all its events are known, else
/// whoever carries it on the day (of several the one who gives it back first); else the one who
/// carries it from the next later day on, unless the record tells that she left. So a list that is
/// read again means the same cows, also where a number was given to another cow meanwhile. Nothing
/// for a cow nobody has recorded. Fault "list-unreadable" when its numbers are those of two cows.
Result<std::optional<CowId>> cow_meant(const KnownHerd& herd, const RecordAsked& asked);

/// Nothing in the record is new, or otherwise than it is known of her.
bool tells_nothing_new(const KnownCow& cow, const RecordAsked& asked);

}  // namespace evenclaw
