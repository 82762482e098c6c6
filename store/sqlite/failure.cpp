#include "store/sqlite/failure.hpp"

#include <sqlite3.h>

#include <cerrno>
#include <charconv>
#include <string_view>

namespace evenclaw {

namespace {

struct Telling {
  std::string_view slug;
  std::string_view what;
  std::string_view remedy;
};

constexpr Telling disk_full{
    "disk-full", "there is no room left on its disk",
    "Free some room and try again; all that was reported as saved is safe."};
constexpr Telling disk_failed{"disk-failed", "its disk refused to read or write",
                              "Copy the file to another disk, then check it."};
constexpr Telling damaged{"file-damaged", "part of it cannot be read any more",
                          "Keep a copy of it, then restore the latest backup."};
constexpr Telling read_only{"file-read-only", "it may be read but not written",
                            "Allow writing to the file and to the folder it lies in."};
constexpr Telling file_unreadable{"file-unreadable", "it cannot be opened",
                                  "Check who may read it and whether its disk is connected."};
constexpr Telling busy{"store-busy", "another program is writing to it",
                       "Wait until the other one has finished and try again."};
constexpr Telling not_ours{"not-our-file",
                           "it was not written by this program, or its beginning is destroyed",
                           "Check the name; if it is the right file, restore the latest backup."};
constexpr Telling too_large{"file-too-large", "a single value is larger than it can hold",
                            "Check what was to be written into it."};

// SQLite remembers the error number of some of its calls only; for the others what the last failed
// call of this thread left behind is still there.
struct SystemErrors {
  int remembered = 0;
  int left_behind = 0;

  [[nodiscard]] bool hold(int error) const { return remembered == error || left_behind == error; }

  [[nodiscard]] bool say_no_room() const { return hold(ENOSPC) || hold(EFBIG) || hold(EDQUOT); }
};

Telling telling_of(int code, const SystemErrors& errors) {
  // It says more than the family it belongs to.
  if (code == SQLITE_IOERR_SHMSIZE) return disk_full;
  switch (code & 0xff) {
    case SQLITE_FULL:
      return disk_full;
    case SQLITE_IOERR:
      return errors.say_no_room() ? disk_full : disk_failed;
    case SQLITE_READONLY:
      return read_only;
    case SQLITE_CANTOPEN:
      if (errors.say_no_room()) return disk_full;
      return errors.hold(EROFS) ? read_only : file_unreadable;
    case SQLITE_PERM:
    case SQLITE_AUTH:
      return file_unreadable;
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
    case SQLITE_PROTOCOL:
      return busy;
    case SQLITE_NOTADB:
      return not_ours;
    case SQLITE_TOOBIG:
      return too_large;
    default:
      // Our statements are fixed: one that does not fit the file means that the file is not as
      // this program left it.
      return damaged;
  }
}

// "Page 26: unable to get the page. error code=266"; a read that ends too early is a file that was
// cut short.
bool is_refused_read(std::string_view said) {
  constexpr std::string_view before = "error code=";
  const std::size_t at = said.find(before);
  if (at == std::string_view::npos) return false;
  int code = 0;
  const char* digits = said.data() + at + before.size();
  std::from_chars(digits, said.data() + said.size(), code);
  return (code & 0xff) == SQLITE_IOERR && code != SQLITE_IOERR_SHORT_READ;
}

}  // namespace

Fault file_fault(const std::string& file, std::string slug, std::string_view what,
                 std::string_view remedy) {
  return Fault{.slug = std::move(slug),
               .message = file + ": " + std::string(what) + ".",
               .token = file,
               .remedy = std::string(remedy)};
}

Fault fault_of_sqlite(sqlite3* db, int code, const std::string& file) {
  const int left_behind = errno;
  const Telling telling =
      telling_of(code, {db == nullptr ? 0 : sqlite3_system_errno(db), left_behind});
  const char* said = db == nullptr ? sqlite3_errstr(code) : sqlite3_errmsg(db);
  return file_fault(file, std::string(telling.slug), std::string(telling.what) + " (" + said + ")",
                    telling.remedy);
}

Fault fault_of_pages(const std::string& file, std::string_view said) {
  const Telling telling = is_refused_read(said) ? disk_failed : damaged;
  return file_fault(file, std::string(telling.slug),
                    std::string(telling.what) + " (" + std::string(said) + ")", telling.remedy);
}

}  // namespace evenclaw
