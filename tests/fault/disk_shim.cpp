#include "tests/fault/disk_shim.hpp"

#include <cerrno>
#include <cstring>
#include <new>
#include <string>

#include "tests/fault/watched_disk.hpp"

namespace evenclaw::test {

namespace {

/// SQLite hands out the room for it, with the real file's behind.
struct ShimFile {
  sqlite3_file base;
  WatchedDisk* disk;
  std::string* name;  // empty for a file without a name, which nobody watches
};

ShimFile& shim(sqlite3_file* file) {
  return *reinterpret_cast<ShimFile*>(file);
}

sqlite3_file* real(sqlite3_file* file) {
  return reinterpret_cast<sqlite3_file*>(reinterpret_cast<ShimFile*>(file) + 1);
}

const sqlite3_io_methods& methods(sqlite3_file* file) {
  return *real(file)->pMethods;
}

WatchedDisk& disk_of(sqlite3_vfs* vfs) {
  return *static_cast<WatchedDisk*>(vfs->pAppData);
}

int set_error(DiskError error) {
  errno = error == DiskError::no_room ? ENOSPC : EIO;
  return errno;
}

/// `code`, with the number the system would leave behind; SQLITE_OK when the call may go on.
int refusal(sqlite3_file* file, const char* what, int code) {
  ShimFile& own = shim(file);
  if (own.name->empty()) return SQLITE_OK;
  const auto error = own.disk->refusal_of(what, *own.name);
  if (!error) return SQLITE_OK;
  set_error(*error);
  return code;
}

int close_file(sqlite3_file* file) {
  const int code = methods(file).xClose(real(file));
  delete shim(file).name;
  return code;
}

int read_file(sqlite3_file* file, void* bytes, int count, sqlite3_int64 at) {
  const int refused = refusal(file, "read", SQLITE_IOERR_READ);
  return refused != SQLITE_OK ? refused : methods(file).xRead(real(file), bytes, count, at);
}

int write_watched(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 at) {
  const int code = methods(file).xWrite(real(file), bytes, count, at);
  if (code == SQLITE_OK && !shim(file).name->empty()) {
    shim(file).disk->written(*shim(file).name, at, bytes, static_cast<std::size_t>(count));
  }
  return code;
}

int write_file(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 at) {
  const int refused = refusal(file, "write", SQLITE_IOERR_WRITE);
  if (refused == SQLITE_OK) return write_watched(file, bytes, count, at);
  // A disk that refuses may have taken a part of it.
  const int error = errno;
  write_watched(file, bytes, count / 2, at);
  errno = error;
  return error == ENOSPC ? SQLITE_FULL : refused;
}

int truncate_file(sqlite3_file* file, sqlite3_int64 size) {
  const int refused = refusal(file, "cut", SQLITE_IOERR_TRUNCATE);
  if (refused != SQLITE_OK) return refused;
  const int code = methods(file).xTruncate(real(file), size);
  if (code == SQLITE_OK && !shim(file).name->empty()) {
    shim(file).disk->cut(*shim(file).name, size);
  }
  return code;
}

int sync_file(sqlite3_file* file, int flags) {
  ShimFile& own = shim(file);
  const int refused = refusal(file, "sync", SQLITE_IOERR_FSYNC);
  if (own.name->empty()) return SQLITE_OK;
  const int folders = own.disk->folders_opened();
  const int code = refused == SQLITE_OK && own.disk->is_first_sync(*own.name)
                       ? methods(file).xSync(real(file), flags)
                       : refused;
  own.disk->synced(*own.name, code == SQLITE_OK);
  if (own.disk->folders_opened() > folders) own.disk->folder_synced();
  return code;
}

int size_of_file(sqlite3_file* file, sqlite3_int64* size) {
  return methods(file).xFileSize(real(file), size);
}

int lock_file(sqlite3_file* file, int level) {
  return methods(file).xLock(real(file), level);
}

int unlock_file(sqlite3_file* file, int level) {
  return methods(file).xUnlock(real(file), level);
}

int look_for_lock(sqlite3_file* file, int* held) {
  return methods(file).xCheckReservedLock(real(file), held);
}

int control_file(sqlite3_file* file, int what, void* argument) {
  return methods(file).xFileControl(real(file), what, argument);
}

int sector_size_of(sqlite3_file* file) {
  return methods(file).xSectorSize(real(file));
}

int traits_of_device(sqlite3_file* file) {
  return methods(file).xDeviceCharacteristics(real(file));
}

int map_shared(sqlite3_file* file, int region, int size, int extend, void volatile** memory) {
  const int refused = refusal(file, "map", SQLITE_IOERR_SHMMAP);
  if (refused != SQLITE_OK) return errno == ENOSPC ? SQLITE_IOERR_SHMSIZE : refused;
  return methods(file).xShmMap(real(file), region, size, extend, memory);
}

int lock_shared(sqlite3_file* file, int offset, int count, int flags) {
  return methods(file).xShmLock(real(file), offset, count, flags);
}

void shared_barrier(sqlite3_file* file) {
  methods(file).xShmBarrier(real(file));
}

int unmap_shared(sqlite3_file* file, int and_remove) {
  return methods(file).xShmUnmap(real(file), and_remove);
}

constexpr sqlite3_io_methods shim_methods = {2,
                                             close_file,
                                             read_file,
                                             write_file,
                                             truncate_file,
                                             sync_file,
                                             size_of_file,
                                             lock_file,
                                             unlock_file,
                                             look_for_lock,
                                             control_file,
                                             sector_size_of,
                                             traits_of_device,
                                             map_shared,
                                             lock_shared,
                                             shared_barrier,
                                             unmap_shared,
                                             nullptr,
                                             nullptr};

bool is_kept(int flags) {
  return (flags & (SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_WAL)) != 0;
}

int open_file(sqlite3_vfs* vfs, sqlite3_filename name, sqlite3_file* file, int flags, int* got) {
  WatchedDisk& disk = disk_of(vfs);
  ShimFile& own = shim(file);
  own.base.pMethods = nullptr;
  const bool is_watched = name != nullptr && is_kept(flags);
  if (is_watched) {
    const auto error = disk.refusal_of("open", name);
    if (error) {
      set_error(*error);
      return SQLITE_CANTOPEN;
    }
  }
  int was_there = 0;
  if (is_watched) disk.real().xAccess(&disk.real(), name, SQLITE_ACCESS_EXISTS, &was_there);
  const int code = disk.real().xOpen(&disk.real(), name, real(file), flags, got);
  if (code != SQLITE_OK) return code;
  own.disk = &disk;
  own.name = new std::string(is_watched ? name : "");
  own.base.pMethods = &shim_methods;
  if (is_watched) disk.opened(name, was_there == 0);
  return SQLITE_OK;
}

int remove_file(sqlite3_vfs* vfs, const char* name, int sync_folder) {
  WatchedDisk& disk = disk_of(vfs);
  const auto error = disk.refusal_of("remove", name);
  if (error) {
    set_error(*error);
    return SQLITE_IOERR_DELETE;
  }
  const int folders = disk.folders_opened();
  const int code = disk.real().xDelete(&disk.real(), name, sync_folder);
  if (code == SQLITE_OK) disk.removed(name);
  if (disk.folders_opened() > folders) disk.folder_synced();
  return code;
}

int look_at_file(sqlite3_vfs* vfs, const char* name, int flags, int* answer) {
  return disk_of(vfs).real().xAccess(&disk_of(vfs).real(), name, flags, answer);
}

int full_name(sqlite3_vfs* vfs, const char* name, int room, char* full) {
  return disk_of(vfs).real().xFullPathname(&disk_of(vfs).real(), name, room, full);
}

int draw_random(sqlite3_vfs* vfs, int count, char* bytes) {
  return disk_of(vfs).real().xRandomness(&disk_of(vfs).real(), count, bytes);
}

int sleep_a_while(sqlite3_vfs* vfs, int microseconds) {
  return disk_of(vfs).real().xSleep(&disk_of(vfs).real(), microseconds);
}

int day_now(sqlite3_vfs* vfs, double* day) {
  return disk_of(vfs).real().xCurrentTime(&disk_of(vfs).real(), day);
}

int error_left(sqlite3_vfs* vfs, int room, char* text) {
  return disk_of(vfs).real().xGetLastError(&disk_of(vfs).real(), room, text);
}

int ms_now(sqlite3_vfs* vfs, sqlite3_int64* ms) {
  return disk_of(vfs).real().xCurrentTimeInt64(&disk_of(vfs).real(), ms);
}

}  // namespace

std::unique_ptr<sqlite3_vfs> disk_shim(WatchedDisk& disk) {
  auto vfs = std::make_unique<sqlite3_vfs>();
  vfs->iVersion = 2;
  vfs->szOsFile = static_cast<int>(sizeof(ShimFile)) + disk.real().szOsFile;
  vfs->mxPathname = disk.real().mxPathname;
  vfs->zName = "evenclaw-watched";
  vfs->pAppData = &disk;
  vfs->xOpen = open_file;
  vfs->xDelete = remove_file;
  vfs->xAccess = look_at_file;
  vfs->xFullPathname = full_name;
  vfs->xRandomness = draw_random;
  vfs->xSleep = sleep_a_while;
  vfs->xCurrentTime = day_now;
  vfs->xGetLastError = error_left;
  vfs->xCurrentTimeInt64 = ms_now;
  return vfs;
}

}  // namespace evenclaw::test
