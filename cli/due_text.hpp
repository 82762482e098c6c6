// Open tasks as text for a terminal.
#pragma once

#include <string>

#include "core/api/due.hpp"

namespace evenclaw::cli {

/// Late, due and coming, in this order; within each by day, then owner, with the herd's name when
/// the list holds more than one herd.
std::string due_text(const DueList& list);

/// One task of a list: "by Thu 26 Nov  farmer   412    wrap off left hind".
std::string task_text(const DueTask& task, Day today);

/// The same where the cow is known: "by Thu 26 Nov  farmer   wrap off left hind".
std::string task_of_her(const DueTask& task, Day today);

}  // namespace evenclaw::cli
