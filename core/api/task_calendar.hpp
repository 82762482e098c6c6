// The tasks of a herd as a calendar file.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/api/herds.hpp"
#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

struct TaskCalendar {
  std::string file;            // iCalendar, core/exchange/calendar.hpp
  std::int32_t open = 0;       // tasks that stand in it
  std::int32_t cancelled = 0;  // closed ones, so that they vanish where they were taken over
};

/// Closed tasks stay in the file as cancelled until so long after they were due (our judgement: a
/// calendar that takes none of a season's files has been given up).
inline constexpr int cancelled_told_days = 180;

/// The open tasks of one herd, of one owner when one is given, and those closed lately as
/// cancelled. Routine trims that nobody wrote down are left out: they move with every calving. A
/// task of a cow who left is cancelled. What is no plain order is told so (tasks_as_told.hpp). A
/// task that a correction took away altogether is not in the file any more: a calendar that reads
/// the file anew drops it, one that took it over once keeps it.
Result<TaskCalendar> task_calendar(const Ports& ports, const Herd& herd, std::optional<Owner> owner,
                                   Day today);

}  // namespace evenclaw
