#include "store/sqlite/scrub.hpp"

#include <sqlite3.h>

#include "store/sqlite/connection.hpp"

namespace evenclaw {

void scrub(Connection& connection) noexcept {
  sqlite3_wal_checkpoint_v2(connection.raw(), "main", SQLITE_CHECKPOINT_TRUNCATE, nullptr, nullptr);
}

}  // namespace evenclaw
