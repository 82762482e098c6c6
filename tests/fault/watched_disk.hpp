// A disk under SQLite and under us that writes down what is done to its files and can refuse one
// call.
#pragma once

#include <sqlite3.h>

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "tests/fault/disk_record.hpp"

namespace evenclaw::test {

/// What a disk says when it refuses.
enum class DiskError {
  no_room,  // ENOSPC
  broken    // EIO
};

/// While it lives, every connection SQLite opens by default goes through here, and so do rename()
/// and fsync() of this program. Nothing is told to the disk to be synced but the first sync of a
/// new file, where it shows whether SQLite syncs its folder too: whether a sync was asked for is
/// what counts, and no power is cut. One at a time.
class WatchedDisk {
 public:
  WatchedDisk();
  WatchedDisk(const WatchedDisk&) = delete;
  WatchedDisk& operator=(const WatchedDisk&) = delete;
  ~WatchedDisk();

  /// The one that lives, if one does.
  static WatchedDisk* now();

  [[nodiscard]] const DiskRecord& record() const { return record_; }

  /// What was done so far has been told somebody as durable.
  void acknowledge() { record_.acknowledged_after.push_back(record_.acts.size()); }

  /// Calls so far that could have been refused, as "write records-wal": open, read, write, cut,
  /// sync, map (shared memory), remove, rename.
  [[nodiscard]] const std::vector<std::string>& calls() const { return calls_; }

  /// The call of this number, from 0, is refused, once.
  void refuse(std::size_t call, DiskError error) { refused_ = {call, error}; }

  /// The connection that was opened last, which must be open still.
  [[nodiscard]] sqlite3* newest_connection() const { return newest_; }

  // The rest is for those who stand between SQLite and the disk.

  /// The error when this call is the one to refuse.
  std::optional<DiskError> refusal_of(const char* what, const std::string& file);
  /// The file of that name; written down with its contents when it was not known before.
  void opened(const std::string& file, bool is_new);
  void written(const std::string& file, std::int64_t at, const void* bytes, std::size_t count);
  void cut(const std::string& file, std::int64_t size);
  void synced(const std::string& file, bool worked);
  void removed(const std::string& file);
  void renamed(const std::string& from, const std::string& to);
  void folder_synced();

  [[nodiscard]] sqlite3_vfs& real() const { return *real_; }

  /// True once for a file that was made here: its first sync is the disk's own.
  bool is_first_sync(const std::string& file);
  /// How often SQLite opened a folder, which it does to sync it.
  [[nodiscard]] int folders_opened() const;

  void connected(sqlite3* connection) { newest_ = connection; }

 private:
  struct Known {
    int number = 0;
    bool never_synced = false;
  };

  Known& known(const std::string& file);

  sqlite3_vfs* real_;
  std::unique_ptr<sqlite3_vfs> shim_;
  DiskRecord record_;
  std::map<std::string, Known> files_;
  sqlite3* newest_ = nullptr;
  std::optional<std::pair<std::size_t, DiskError>> refused_;
  std::vector<std::string> calls_;
  int files_seen_ = 0;
};

}  // namespace evenclaw::test
