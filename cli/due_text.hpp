// Open tasks as text for a terminal.
#pragma once

#include <string>

#include "core/api/due.hpp"

namespace evenclaw::cli {

/// Late, due and coming, in this order; within each by day, then owner, with the herd's name when
/// the list holds more than one herd.
std::string due_text(const DueList& list);

/// One task: "by 2026-11-26  farmer  412  wrap off left hind".
std::string task_text(const DueTask& task);

}  // namespace evenclaw::cli
