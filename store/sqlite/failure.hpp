// How a failure of SQLite becomes a fault a person can act on; it travels as an exception inside
// this folder only and is caught at each public function.
#pragma once

#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

#include "core/base/result.hpp"

struct sqlite3;

namespace evenclaw {

/// Thrown inside store/sqlite, never out of it.
struct SqlFailure {
  Fault fault;
};

/// A fault about a file: its slug, what happened (the file's name is put in front), what to do.
Fault file_fault(const std::string& file, std::string slug, std::string_view what,
                 std::string_view remedy);

/// The fault for what SQLite answered last on this connection. `db` may be null (no memory). Set
/// errno to 0 before asking SQLite: it says whether the disk was full or failed.
Fault fault_of_sqlite(sqlite3* db, int code, const std::string& file);

/// The fault for what a check of the pages said (PRAGMA integrity_check, quick_check): mostly
/// "file-damaged"; "disk-failed" when the disk refused to read a page, which damages nothing.
Fault fault_of_pages(const std::string& file, std::string_view said);

/// Runs `act` and hands back its value, or the fault of the failure it threw.
template <class Act>
auto caught(Act&& act) {
  using Value = std::invoke_result_t<Act>;
  if constexpr (std::is_void_v<Value>) {
    try {
      act();
      return Outcome(Done{});
    } catch (SqlFailure& failure) {
      return Outcome(std::move(failure.fault));
    }
  } else {
    try {
      return Result<Value>(act());
    } catch (SqlFailure& failure) {
      return Result<Value>(std::move(failure.fault));
    }
  }
}

}  // namespace evenclaw
