// Making the pictures of touched cows and visits anew, so that rows always fit the log.
#pragma once

#include <set>
#include <span>

#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"

namespace evenclaw {

/// The cows and visits of one herd that have to be pictured anew.
struct SubjectsToPicture {
  std::set<CowId> cows;
  std::set<VisitId> visits;
};

/// Adds to a write of new entries the rows they change. The entries count as if stored.
Outcome add_pictures(Store& store, Write& write);

/// Makes the given subjects anew from what the store holds, at most 100 of them a write.
Outcome picture_anew(Store& store, HerdId herd, const SubjectsToPicture& subjects);

/// Adds whose pictures may have changed by entries of the herd that the store has taken in.
Outcome add_touched(Store& store, HerdId herd, std::span<const Entry> arrived,
                    SubjectsToPicture& subjects);

}  // namespace evenclaw
