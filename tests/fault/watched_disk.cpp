#include "tests/fault/watched_disk.hpp"

#include <cassert>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <utility>

#include "tests/fault/disk_shim.hpp"

namespace evenclaw::test {

namespace {

using Kind = DiskAct::Kind;

WatchedDisk* living = nullptr;
int opened_folders = 0;
sqlite3_syscall_ptr real_open_directory = nullptr;

int counting_open_directory(const char* file, int* handle) {
  ++opened_folders;
  return reinterpret_cast<int (*)(const char*, int*)>(real_open_directory)(file, handle);
}

/// SQLite calls it for each connection it has opened
/// (https://sqlite.org/c3ref/auto_extension.html).
int hear_of_connection(sqlite3* connection, const char** /*message*/,
                       const sqlite3_api_routines* /*routines*/) {
  if (living != nullptr) living->connected(connection);
  return SQLITE_OK;
}

void (*entry_point())() {
  return reinterpret_cast<void (*)()>(&hear_of_connection);
}

std::string contents_of(const std::string& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

}  // namespace

WatchedDisk::WatchedDisk() : real_(sqlite3_vfs_find(nullptr)) {
  assert(living == nullptr);
  living = this;
  real_open_directory = real_->xGetSystemCall(real_, "openDirectory");
  real_->xSetSystemCall(real_, "openDirectory",
                        reinterpret_cast<sqlite3_syscall_ptr>(&counting_open_directory));
  shim_ = disk_shim(*this);
  sqlite3_vfs_register(shim_.get(), 1);
  sqlite3_auto_extension(entry_point());
}

WatchedDisk::~WatchedDisk() {
  sqlite3_cancel_auto_extension(entry_point());
  sqlite3_vfs_unregister(shim_.get());
  sqlite3_vfs_register(real_, 1);
  real_->xSetSystemCall(real_, "openDirectory", nullptr);
  living = nullptr;
}

WatchedDisk* WatchedDisk::now() {
  return living;
}

std::optional<DiskError> WatchedDisk::refusal_of(const char* what, const std::string& file) {
  calls_.push_back(std::string(what) + " " + std::filesystem::path(file).filename().string());
  if (!refused_ || refused_->first != calls_.size() - 1) return std::nullopt;
  return refused_->second;
}

int WatchedDisk::folders_opened() const {
  return opened_folders;
}

WatchedDisk::Known& WatchedDisk::known(const std::string& file) {
  const auto at = files_.find(file);
  if (at != files_.end()) return at->second;
  Known& fresh = files_[file];
  fresh.number = ++files_seen_;
  record_.acts.push_back({Kind::found, fresh.number, 0, contents_of(file), file});
  return fresh;
}

void WatchedDisk::opened(const std::string& file, bool is_new) {
  if (!is_new) {
    known(file);
    return;
  }
  files_[file] = {++files_seen_, true};
  record_.acts.push_back({Kind::created, files_seen_, 0, "", file});
}

void WatchedDisk::written(const std::string& file, std::int64_t at, const void* bytes,
                          std::size_t count) {
  record_.acts.push_back(
      {Kind::written, known(file).number, at, {static_cast<const char*>(bytes), count}});
}

void WatchedDisk::cut(const std::string& file, std::int64_t size) {
  record_.acts.push_back({Kind::cut_to, known(file).number, size});
}

void WatchedDisk::synced(const std::string& file, bool worked) {
  record_.acts.push_back({worked ? Kind::synced : Kind::sync_failed, known(file).number});
}

bool WatchedDisk::is_first_sync(const std::string& file) {
  return std::exchange(known(file).never_synced, false);
}

void WatchedDisk::removed(const std::string& file) {
  record_.acts.push_back({Kind::removed, known(file).number});
  files_.erase(file);
}

void WatchedDisk::renamed(const std::string& from, const std::string& to) {
  const Known moved = known(from);
  record_.acts.push_back({Kind::renamed, moved.number, 0, "", to});
  files_.erase(from);
  files_[to] = moved;
}

void WatchedDisk::folder_synced() {
  record_.acts.push_back({Kind::folder_synced});
}

}  // namespace evenclaw::test
