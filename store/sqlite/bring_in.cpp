#include "store/sqlite/bring_in.hpp"

#include <sqlite3.h>

#include <cstdint>

#include "store/sqlite/connection.hpp"

namespace evenclaw {

namespace {

/// The write is committed already: whatever becomes of this costs it nothing.
int bring_in(void* from_pages, sqlite3* connection, const char* name, int pages) {
  if (pages < static_cast<int>(reinterpret_cast<std::intptr_t>(from_pages))) return SQLITE_OK;
  // Nobody waits at the crush for one who reads.
  sqlite3_busy_timeout(connection, 0);
  sqlite3_wal_checkpoint_v2(connection, name, SQLITE_CHECKPOINT_TRUNCATE, nullptr, nullptr);
  sqlite3_busy_timeout(connection, busy_wait_ms);
  return SQLITE_OK;
}

}  // namespace

void bring_in_from(sqlite3* connection, int pages) {
  // A number in place of an address, as SQLite's own hook has it: nothing has to outlive anything.
  // NOLINTNEXTLINE(performance-no-int-to-ptr)
  sqlite3_wal_hook(connection, bring_in, reinterpret_cast<void*>(std::intptr_t{pages}));
}

}  // namespace evenclaw
