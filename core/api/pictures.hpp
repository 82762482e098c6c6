// Making the pictures of touched cows and visits anew, so that rows always fit the log.
#pragma once

#include <set>

#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"

namespace evenclaw {

/// The cows and visits of one herd that have to be pictured anew.
struct SubjectsToPicture {
  std::set<CowId> cows;
  std::set<VisitId> visits;
};

/// Adds to a write the rows its entries change: of every cow and visit they touch, and of the cows
/// of a visit whose opening or correction is among them. The entries count as if stored.
Outcome add_pictures(Store& store, Write& write);

/// Makes the given subjects anew from what the store holds, at most 100 of them a write.
Outcome picture_anew(Store& store, HerdId herd, const SubjectsToPicture& subjects);

/// What `entry` touches, added to `subjects`. For openings and corrections of a visit the cows seen
/// in it are looked up in the store.
Outcome add_touched(Store& store, const Entry& entry, SubjectsToPicture& subjects);

}  // namespace evenclaw
