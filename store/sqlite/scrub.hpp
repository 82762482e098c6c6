// What was taken away must not stay readable in the companions of the file.
#pragma once

namespace evenclaw {

class Connection;

/// Moves everything from the write-ahead log into the file and empties the log. When another
/// program is reading at this moment it is left for the next closing; never fails.
void scrub(Connection& connection) noexcept;

}  // namespace evenclaw
