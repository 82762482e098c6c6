// Which entries a picture needs and which pictures an arriving entry changes, found by looking up
// single subjects: nothing ever needs the whole log in memory.
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/entry.hpp"
#include "core/log/picture.hpp"

namespace evenclaw {

/// How the entries of one scope are looked up, as a store can; any order. An entry kept in several
/// versions is given out in all of them as soon as one fits: which one counts is seen here.
struct EntryLookup {
  /// Those that name the subject; of these kinds only, when any is given.
  std::function<Result<std::vector<Entry>>(const Uuid& subject,
                                           const std::vector<std::string>& kinds)>
      touching;
  std::function<Result<std::vector<Entry>>(EntryId id)> versions_of;
};

/// What picture_of_cow() needs for a group: all that touches its cows, openings and corrections of
/// the visits they name, and what corrects the same entries elsewhere. (A turn that one tablet gave
/// to another cow than a second tablet did touches two cows; which of the two corrections counts is
/// seen only by looking at both.) Where a turn counted as another cow's before it was corrected,
/// what was told of that cow's tasks too.
Result<std::vector<Entry>> entries_for_cow(const EntryLookup& lookup, std::span<const CowId> group);

/// What picture_of_visit() needs.
Result<std::vector<Entry>> entries_for_visit(const EntryLookup& lookup, VisitId visit);

/// Every cow and visit whose picture may have changed when `arrived` joined the log (they count as
/// being in `lookup`): what they touch themselves, what the entries they correct, redact or take
/// back touch, what corrects the same entries, and the cows seen in a visit that was opened or
/// corrected. Of an entry kept in several versions whatever any of them touches.
Result<Touched> touched_by_arrival(const EntryLookup& lookup, std::span<const Entry> arrived);

}  // namespace evenclaw
