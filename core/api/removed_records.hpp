// Records that were taken away: whose they were as far as anything still says, when and why.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"

namespace evenclaw {

struct RemovedRecord {
  EntryId turn;
  VisitId visit;
  Day day;                        // of the visit
  std::optional<CowId> cow;       // none when several cows may be meant
  std::string cow_said;           // "" when nothing on record says who she was
  std::optional<Day> removed_on;  // none when that is not known here
  std::optional<PersonId> removed_by;
  std::string why;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("turn", &RemovedRecord::turn, "the entry whose contents were taken away");
    visit("visit", &RemovedRecord::visit, "visit");
    visit("day", &RemovedRecord::day, "day of the visit");
    visit("cow", &RemovedRecord::cow, "the cow it was of, when it names one only");
    visit("cow_said", &RemovedRecord::cow_said, "her number, where another record tells it");
    visit("removed_on", &RemovedRecord::removed_on, "day on which it was taken away");
    visit("removed_by", &RemovedRecord::removed_by, "who took it away, where recorded");
    visit("why", &RemovedRecord::why, "the reason that was given");
  }
};

/// The turns that touch one of these subjects (a visit, the cows of a group), that lost their
/// contents and that no correction stands for; by day. Of a cow that was united with others under
/// the id of the united one.
Result<std::vector<RemovedRecord>> removed_records(Store& store, HerdId herd,
                                                   const std::vector<Uuid>& subjects);

/// The same of animals counted together at a visit: no cow is named, `turn` is the entry of the
/// count.
Result<std::vector<RemovedRecord>> removed_counts(Store& store, HerdId herd, VisitId visit);

}  // namespace evenclaw
