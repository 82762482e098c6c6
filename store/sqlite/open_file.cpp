#include "store/sqlite/open_file.hpp"

#include <unistd.h>

#include <filesystem>
#include <system_error>

#include "store/sqlite/bring_in.hpp"
#include "store/sqlite/file_identity.hpp"
#include "store/sqlite/meta.hpp"
#include "store/sqlite/migration.hpp"
#include "store/sqlite/picture_tables.hpp"

namespace evenclaw {

namespace {

namespace fs = std::filesystem;

// Checking every page at every opening costs about a millisecond per megabyte; larger files are
// checked when a person asks.
constexpr std::int64_t checked_at_opening_bytes = 4'000'000;

[[noreturn]] void refuse(const std::string& file, std::string slug, std::string_view what,
                         std::string_view remedy) {
  throw SqlFailure{file_fault(file, std::move(slug), what, remedy)};
}

void refuse_missing(const std::string& file, OpenMode mode) {
  std::error_code failed;
  const fs::file_status status = fs::status(file, failed);
  if (status.type() == fs::file_type::directory) {
    refuse(file, "file-unreadable", "it is a folder", "Name a file in it.");
  }
  if (status.type() == fs::file_type::regular || status.type() == fs::file_type::unknown) return;
  if (status.type() != fs::file_type::not_found) {
    refuse(file, "file-unreadable", "it is no plain file", "Name a plain file.");
  }
  if (mode != OpenMode::create) {
    refuse(file, "file-not-found", "there is no file of that name",
           "Check the name and the folder.");
  }
  if (!fs::is_directory(fs::path(file).parent_path(), failed)) {
    refuse(file, "file-not-found", "the folder it would lie in does not exist",
           "Make the folder first, or name another.");
  }
}

bool may_write_beside(const std::string& file) {
  return ::access(fs::path(file).parent_path().c_str(), W_OK) == 0;
}

// The write-ahead log needs its two companions beside the file. Where they cannot be made and are
// not there, nobody can be writing either.
Connection connection_for_reading(const std::string& file) {
  if (!may_write_beside(file) && ::access((file + "-wal").c_str(), F_OK) != 0) {
    return Connection::of_unchanging(file);
  }
  // With the right to write the last reader also clears the companions away again; where that
  // right is missing SQLite goes on without it.
  Connection connection(file, Access::write);
  connection.run("PRAGMA query_only = ON");
  return connection;
}

// SQLite takes a file of a single byte for an empty one.
void refuse_blank(Connection& connection) {
  if (!is_blank(connection)) return;
  connection.refuse("not-our-file", "there are no records in it", "Check the name.");
}

void refuse_bytes_without_pages(Connection& connection) {
  std::error_code failed;
  const auto size = fs::file_size(connection.file(), failed);
  if (!failed && size > 0 && connection.integer_of("PRAGMA page_count") == 0) {
    refuse_blank(connection);
  }
}

void refuse_unless_writable(Connection& connection) {
  if (!connection.is_read_only() && may_write_beside(connection.file())) return;
  connection.refuse("file-read-only", "the file or its folder may be read but not written",
                    "Allow writing to the file and to its folder, or use a file elsewhere.");
}

void set_up_reading(Connection& connection) {
  connection.run("PRAGMA trusted_schema = OFF");
  connection.run("PRAGMA cell_size_check = ON");
}

void set_up_writing(Connection& connection) {
  connection.run("PRAGMA synchronous = FULL");
  // A list of thousands of cows is one transaction: the pages it comes back to stay at hand.
  connection.run("PRAGMA cache_size = -65536");
  // What was redacted must not be read out of freed pages.
  connection.run("PRAGMA secure_delete = ON");
  bring_in_from(connection.raw(), pages_brought_in_at);
}

void check_quickly(Connection& connection) {
  std::error_code failed;
  const auto size = fs::file_size(connection.file(), failed);
  if (failed || size > checked_at_opening_bytes) return;
  auto check = connection.prepared("PRAGMA quick_check(1)");
  if (!check->step() || check->text_at(0) == "ok") return;
  throw SqlFailure{fault_of_pages(connection.file(), check->text_at(0))};
}

void take_possession(Connection& connection, bool new_file) {
  connection.run("PRAGMA journal_mode = WAL");
  if (!new_file && has_own_shape(connection)) return;
  Transaction transaction(connection);
  make_picture_tables(connection);
  if (new_file) remember_file(connection);
  transaction.commit();
}

Connection opened_for_writing(const std::string& file, OpenMode mode) {
  Connection connection(file, mode == OpenMode::create ? Access::create : Access::write);
  set_up_reading(connection);
  const bool new_file = is_blank(connection);
  if (mode != OpenMode::create) refuse_blank(connection);
  refuse_bytes_without_pages(connection);
  if (!new_file) refuse_unless_ours(connection, all_migrations());
  refuse_unless_writable(connection);
  if (!new_file) check_quickly(connection);
  set_up_writing(connection);
  migrate(connection, all_migrations());
  take_possession(connection, new_file);
  return connection;
}

// What would have to be made anew first cannot be when nothing may be written.
void refuse_unless_ready(Connection& connection) {
  const bool is_up_to_date =
      connection.integer_of("PRAGMA user_version") == all_migrations().back().version;
  if (is_up_to_date && has_own_shape(connection) && !is_picture_stale(connection)) return;
  connection.refuse("rows-out-of-date",
                    "its rows have to be made anew before they can be shown, which needs writing",
                    "Allow writing to the file and its folder, or make a copy of it elsewhere.");
}

Connection opened_for_reading(const std::string& file) {
  Connection connection = opened_as_it_is(file);
  check_quickly(connection);
  refuse_unless_ready(connection);
  return connection;
}

}  // namespace

Connection opened(const std::string& file, OpenMode mode) {
  const std::string name = absolute_name(file);
  refuse_missing(name, mode);
  switch (mode) {
    case OpenMode::salvage:
      return opened_as_it_is(name);
    case OpenMode::read_only:
      return opened_for_reading(name);
    case OpenMode::create:
    case OpenMode::existing:
      break;
  }
  return opened_for_writing(name, mode);
}

Connection opened_as_it_is(const std::string& file) {
  const std::string name = absolute_name(file);
  refuse_missing(name, OpenMode::read_only);
  Connection connection = connection_for_reading(name);
  set_up_reading(connection);
  refuse_blank(connection);
  refuse_unless_ours(connection, all_migrations());
  return connection;
}

}  // namespace evenclaw
