#include "store/sqlite/verified_copy.hpp"

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <string_view>

#include "store/sqlite/file_identity.hpp"
#include "store/sqlite/meta.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view choose_another =
    "Choose another name, or take the file there out of the way.";

/// The copy while it is made: gone again unless it was finished.
class Unfinished {
 public:
  explicit Unfinished(std::string name) : name_(std::move(name)) { clear(); }

  Unfinished(const Unfinished&) = delete;
  Unfinished& operator=(const Unfinished&) = delete;

  ~Unfinished() { clear(); }

  [[nodiscard]] const std::string& name() const { return name_; }

 private:
  void clear() const {
    for (const char* ending : {"", "-journal", "-wal", "-shm"}) {
      ::unlink((name_ + ending).c_str());
    }
  }

  std::string name_;
};

void copy_pages(Connection& from, Connection& to) {
  sqlite3_backup* backup = sqlite3_backup_init(to.raw(), "main", from.raw(), "main");
  if (backup == nullptr) {
    throw SqlFailure{fault_of_sqlite(to.raw(), sqlite3_errcode(to.raw()), to.file())};
  }
  errno = 0;
  // All pages in one step: one state of the source, whoever writes to it meanwhile.
  sqlite3_backup_step(backup, -1);
  const int code = sqlite3_backup_finish(backup);
  if (code != SQLITE_OK) throw SqlFailure{fault_of_sqlite(to.raw(), code, to.file())};
}

std::int64_t entry_count(Connection& connection) {
  return connection.integer_of("SELECT count(*) FROM entry");
}

void verify(Connection& copy, std::int64_t expected_entries) {
  auto check = copy.prepared("PRAGMA integrity_check(1)");
  if (!check->step() || check->text_at(0) != "ok") {
    copy.refuse(fault_of_pages(copy.file(), check->text_at(0)).slug,
                "the copy does not read back whole",
                "Check the file that was copied and the disk of the copy.");
  }
  if (entry_count(copy) < expected_entries) {
    copy.refuse("file-damaged", "the copy lacks entries",
                "Check the file that was copied and the disk of the copy.");
  }
}

void sync_to_disk(const std::string& name, int flags) {
  const int handle = ::open(name.c_str(), flags | O_CLOEXEC);
  const bool synced = handle >= 0 && ::fsync(handle) == 0;
  const int error = errno;
  if (handle >= 0) ::close(handle);
  // Some file systems cannot sync a folder and say so; the file itself must be synced.
  if (synced || (error == EINVAL && (flags & O_DIRECTORY) != 0)) return;
  throw SqlFailure{file_fault(name, "disk-failed", "its disk refused to keep it",
                              "Choose a place on another disk.")};
}

void give_name(const std::string& made, const std::string& wanted) {
  sync_to_disk(made, O_RDONLY);
  if (file_identity(wanted)) {
    throw SqlFailure{file_fault(wanted, "output-exists", "a file of that name is already there",
                                choose_another)};
  }
  if (std::rename(made.c_str(), wanted.c_str()) != 0) {
    throw SqlFailure{file_fault(wanted, "disk-failed", "the copy could not be given its name",
                                "Choose another place.")};
  }
  const std::filesystem::path folder = std::filesystem::path(wanted).parent_path();
  try {
    sync_to_disk(folder.string(), O_RDONLY | O_DIRECTORY);
  } catch (const SqlFailure&) {
    // Not known to be kept under its name, it is no copy.
    ::unlink(wanted.c_str());
    throw;
  }
}

}  // namespace

void copy_verified(Connection& from, const std::string& to, CopyKind kind) {
  if (file_identity(to)) {
    throw SqlFailure{
        file_fault(to, "output-exists", "a file of that name is already there", choose_another)};
  }
  const Unfinished unfinished(to + ".part");
  {
    const std::int64_t entries = entry_count(from);
    Connection copy(unfinished.name(), Access::create);
    copy_pages(from, copy);
    // One file without companions, that can also be read from a medium nobody can write to.
    copy.run("PRAGMA journal_mode = DELETE");
    copy.run("PRAGMA synchronous = FULL");
    if (kind == CopyKind::of_its_own) set_meta(copy, meta_name::made_by_copying, "yes");
    verify(copy, entries);
  }
  give_name(unfinished.name(), to);
}

}  // namespace evenclaw
