// Closing and moving tasks by hand, outside a called line.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/api/due.hpp"
#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// The open tasks of a cow by the number or words she is known by; no routine trim, which nobody
/// can close or move by hand. Fault "cow-not-found".
Result<std::vector<DueTask>> open_tasks_of(Store& store, HerdId herd, std::string_view cow,
                                           Day today);

/// What the words of a person who closes such a task most nearly are, for the news an entry holds;
/// the task is named in any case.
News nearest_news(TaskKind kind);

/// Closes one task with the words of the person who closes it; a task that is closed already, or
/// is not there, gives "usage". `words` must not be empty ("usage"). `day` is the clock's at its
/// own offset when not given.
Result<EntryId> close_task(const Ports& ports, HerdId herd, TaskId task, std::string_view words,
                           std::optional<Day> day = {});

/// Moves an open task to another day; it is late as many days after it as before. Not into the past
/// of the day it was made ("usage").
Result<EntryId> move_task(const Ports& ports, HerdId herd, TaskId task, Day due,
                          std::string_view words);

}  // namespace evenclaw
