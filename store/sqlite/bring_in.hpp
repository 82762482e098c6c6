// When the write-ahead log is brought into the file, and what is left of it then: nothing.
#pragma once

struct sqlite3;

namespace evenclaw {

/// As many pages as SQLite lets gather by itself (https://sqlite.org/wal.html section 2.3).
inline constexpr int pages_brought_in_at = 1000;

/// From now on a write that leaves at least so many pages in the write-ahead log brings all of them
/// into the file, syncs it and empties the log. SQLite by itself would leave the old log to be
/// written over: should that be cut short, or be put back from a copy, its beginning would be read
/// over the newer file. Emptied, whatever part of a log is left is an earlier moment, whole. While
/// another program reads, the log is left to grow; the next write tries again.
void bring_in_from(sqlite3* connection, int pages);

}  // namespace evenclaw
