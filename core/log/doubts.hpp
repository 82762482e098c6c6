// What has to be asked of a person, or is flagged, in the turns of a cow.
#pragma once

#include <set>
#include <utility>
#include <vector>

#include "core/log/cow_story.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// Feet called by more than one turn of a visit, with the turns that did, in their order. Only feet
/// that were lifted count: to say that a foot stayed down does not call it. What
/// two devices call fine alike, with nothing done to it, is one call heard by both.
struct CalledTwice {
  VisitId visit;
  Foot foot;
  std::vector<EntryId> turns;
};

std::vector<CalledTwice> called_twice(const CowStory& story);

/// Doubts of each turn, numbered from 1 in the order of DoubtKind, then of the feet as called. A
/// doubt about who she is goes once she is known by a number. A place is asked for unless the
/// lesion sits at one place only; a claw where the lesion is kept on one; a stage for digital
/// dermatitis and a degree for the others; nothing of a lesion that words alone name. What is asked
/// alike of one lesion on several feet is asked once.
std::vector<DoubtRow> doubts_of(const CowStory& story, const CowRow& cow);

/// Settled by calling her again with what is missing. Who she is, and whether two calls hold, is
/// not.
bool is_answered_by_calling(DoubtKind kind);

}  // namespace evenclaw
