// A folder whose disk has only so much room, on any machine and with any rights.
#pragma once

#include <doctest/doctest.h>
#include <limits.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

namespace evenclaw {

/// While it lives, whatever SQLite writes into the folder beyond its room is refused as a full disk
/// refuses it (ENOSPC): the system calls SQLite writes with go through here. One at a time.
class SmallDisk {
 public:
  SmallDisk(const std::string& folder, std::uintmax_t room) : room_(room) {
    std::filesystem::create_directory(folder);
    folder_ = std::filesystem::canonical(folder).string();
    REQUIRE(of_this_process == nullptr);
    of_this_process = this;
    set("pwrite", reinterpret_cast<sqlite3_syscall_ptr>(&written_at));
    set("pwrite64", reinterpret_cast<sqlite3_syscall_ptr>(&written_at));
    set("write", reinterpret_cast<sqlite3_syscall_ptr>(&written));
  }

  SmallDisk(const SmallDisk&) = delete;
  SmallDisk& operator=(const SmallDisk&) = delete;

  ~SmallDisk() {
    for (const char* call : {"pwrite", "pwrite64", "write"}) set(call, nullptr);
    of_this_process = nullptr;
  }

  [[nodiscard]] std::string file(const std::string& name) const { return folder_ + "/" + name; }

  /// How often it had no room.
  [[nodiscard]] int refusals() const { return refusals_; }

 private:
  static void set(const char* call, sqlite3_syscall_ptr to) {
    sqlite3_vfs* vfs = sqlite3_vfs_find(nullptr);
    vfs->xSetSystemCall(vfs, call, to);
  }

  static ssize_t written_at(int file, const void* bytes, std::size_t count, off_t at) {
    if (of_this_process->has_room(file, static_cast<std::uintmax_t>(at) + count)) {
      return ::pwrite(file, bytes, count, at);
    }
    errno = ENOSPC;
    return -1;
  }

  static ssize_t written(int file, const void* bytes, std::size_t count) {
    const off_t at = ::lseek(file, 0, SEEK_CUR);
    const auto end = static_cast<std::uintmax_t>(at < 0 ? 0 : at) + count;
    if (of_this_process->has_room(file, end)) return ::write(file, bytes, count);
    errno = ENOSPC;
    return -1;
  }

  bool has_room(int file, std::uintmax_t end) {
    char name[PATH_MAX];
    const std::string link = "/proc/self/fd/" + std::to_string(file);
    const ssize_t length = ::readlink(link.c_str(), name, sizeof name);
    const std::string_view path(name, length < 0 ? 0 : static_cast<std::size_t>(length));

    struct stat now {};

    if (path.rfind(folder_ + "/", 0) != 0 || ::fstat(file, &now) != 0) return true;
    const auto size = static_cast<std::uintmax_t>(now.st_size);
    if (end <= size || used() + (end - size) <= room_) return true;
    ++refusals_;
    return false;
  }

  [[nodiscard]] std::uintmax_t used() const {
    std::uintmax_t bytes = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder_)) {
      bytes += entry.file_size();
    }
    return bytes;
  }

  static inline SmallDisk* of_this_process = nullptr;

  std::string folder_;
  std::uintmax_t room_;
  int refusals_ = 0;
};

}  // namespace evenclaw
