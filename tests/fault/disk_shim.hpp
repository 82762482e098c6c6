// The virtual file system that stands between SQLite and the real one, and tells a WatchedDisk.
#pragma once

#include <sqlite3.h>

#include <memory>

namespace evenclaw::test {

class WatchedDisk;

/// Its calls go to `disk.real()`; https://sqlite.org/vfs.html section 2.5 ("shims"). Memory-mapped
/// reading is not offered, so that every read and write passes.
std::unique_ptr<sqlite3_vfs> disk_shim(WatchedDisk& disk);

}  // namespace evenclaw::test
