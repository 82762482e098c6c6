// rename() and fsync() of this program, which the linker leads here (--wrap in
// tests/CMakeLists.txt): copies are given their names past SQLite.
#include <fcntl.h>
#include <limits.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <string>

#include "tests/fault/watched_disk.hpp"

namespace {

using evenclaw::test::DiskError;
using evenclaw::test::WatchedDisk;

std::string name_of(int handle) {
  char name[PATH_MAX];
  const std::string link = "/proc/self/fd/" + std::to_string(handle);
  const ssize_t length = ::readlink(link.c_str(), name, sizeof name);
  return {name, length < 0 ? 0 : static_cast<std::size_t>(length)};
}

bool is_folder(int handle) {
  struct stat status = {};
  return ::fstat(handle, &status) == 0 && S_ISDIR(status.st_mode);
}

bool is_refused(WatchedDisk& disk, const char* what, const std::string& file) {
  const auto error = disk.refusal_of(what, file);
  if (error) errno = *error == DiskError::no_room ? ENOSPC : EIO;
  return error.has_value();
}

}  // namespace

extern "C" {

// The names the linker gives them.
// NOLINTBEGIN(bugprone-reserved-identifier,readability-identifier-naming)
int __real_rename(const char* from, const char* to);
int __real_fsync(int handle);

int __wrap_rename(const char* from, const char* to) {
  WatchedDisk* disk = WatchedDisk::now();
  if (disk == nullptr) return __real_rename(from, to);
  if (is_refused(*disk, "rename", from)) return -1;
  const int code = __real_rename(from, to);
  if (code == 0) disk->renamed(from, to);
  return code;
}

int __wrap_fsync(int handle) {
  WatchedDisk* disk = WatchedDisk::now();
  if (disk == nullptr) return __real_fsync(handle);
  const std::string name = name_of(handle);
  const bool of_folder = is_folder(handle);
  const bool refused = is_refused(*disk, "sync", of_folder ? "folder" : name);
  if (!of_folder) disk->synced(name, !refused);
  if (of_folder && !refused) disk->folder_synced();
  return refused ? -1 : 0;
}

// NOLINTEND(bugprone-reserved-identifier,readability-identifier-naming)
}
