// Tasks as a calendar file that telephones and office programs take: iCalendar (RFC 5545).
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// A task and the name of its cow in the herd.
struct CalendarTask {
  TaskRow task;
  std::string cow;        // "412", "brown heifer"
  std::string told = {};  // in place of task_words(), where it is no plain order; else ""
};

struct CalendarOf {
  std::string herd;  // the name of the herd whose tasks these are
  /// Grows with everything that is recorded of the herd, so that what was moved, done or opened
  /// again is newer than it was in any earlier file.
  std::int64_t sequence = 0;
  Instant made_at;
};

/// The whole file, CR LF at its line ends, no line longer than 75 octets (RFC 5545, 3.1). Each task
/// is an event of a whole day, so that it stands on its day in any time zone (a date has none:
/// 3.3.4). Its UID is made of the task's id and never changes: one that was moved comes again with
/// its new day, one that is closed as cancelled. It says the cow, what is to be done, who does it
/// and from when it is late, in the words of task_words() or as told; no lesion, no medicine and
/// nothing of any other herd stands in it, for a calendar is shown to whoever looks at the
/// telephone. A task whose own days are out of order is due on the last of them. It has no METHOD:
/// a file is no invitation, which would need an organizer (RFC 5546, 3.2.1).
std::string calendar_file(const CalendarOf& of, const std::vector<CalendarTask>& tasks);

/// A content line folded as the standard demands: CR LF and a blank after at most 75 octets, never
/// within a character.
std::string folded_line(std::string_view line);

/// Text as a value: backslash, semicolon, comma and line ends escaped (3.3.11).
std::string calendar_text(std::string_view text);

}  // namespace evenclaw
