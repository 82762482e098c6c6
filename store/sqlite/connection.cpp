#include "store/sqlite/connection.hpp"

#include <sqlite3.h>

#include <algorithm>
#include <cassert>
#include <cerrno>
#include <new>
#include <utility>

namespace evenclaw {

namespace {

int flags_of(Access access) {
  // No mutex: a connection belongs to one thread at a time.
  const int always = SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE | SQLITE_OPEN_PRIVATECACHE;
  switch (access) {
    case Access::read:
      return always | SQLITE_OPEN_READONLY;
    case Access::write:
      return always | SQLITE_OPEN_READWRITE;
    case Access::create:
      return always | SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE;
  }
  return always;
}

// In a file: name, '?' starts parameters and '%' an escape.
std::string escaped_name(const std::string& file) {
  std::string escaped;
  for (const char c : file) {
    if (c == '?') {
      escaped += "%3f";
    } else if (c == '#') {
      escaped += "%23";
    } else if (c == '%') {
      escaped += "%25";
    } else {
      escaped += c;
    }
  }
  return escaped;
}

template <class Bytes>
Bytes fixed_bytes(sqlite3_stmt* statement, int column) {
  Bytes value;
  const auto* data = static_cast<const std::uint8_t*>(sqlite3_column_blob(statement, column));
  const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement, column));
  if (size == value.bytes.size()) std::copy_n(data, size, value.bytes.begin());
  return value;
}

}  // namespace

Statement::Statement(sqlite3* db, std::string_view sql, std::string file)
    : db_(db), file_(std::move(file)) {
  errno = 0;
  check(sqlite3_prepare_v2(db_, sql.data(), static_cast<int>(sql.size()), &statement_, nullptr));
}

Statement::Statement(Statement&& other) noexcept
    : db_(other.db_),
      statement_(std::exchange(other.statement_, nullptr)),
      file_(std::move(other.file_)),
      next_(other.next_) {}

Statement& Statement::operator=(Statement&& other) noexcept {
  std::swap(db_, other.db_);
  std::swap(statement_, other.statement_);
  std::swap(file_, other.file_);
  std::swap(next_, other.next_);
  return *this;
}

Statement::~Statement() {
  sqlite3_finalize(statement_);
}

void Statement::check(int code) {
  if (code != SQLITE_OK) throw SqlFailure{fault_of_sqlite(db_, code, file_)};
}

Statement& Statement::integer(std::int64_t value) {
  check(sqlite3_bind_int64(statement_, next_++, value));
  return *this;
}

Statement& Statement::bind_text(std::string_view value, Copied copied) {
  // A null pointer would bind NULL; the empty text is a value of its own.
  const char* data = value.empty() ? "" : value.data();
  check(sqlite3_bind_text64(statement_, next_++, data, value.size(),
                            copied == Copied::yes ? SQLITE_TRANSIENT : SQLITE_STATIC, SQLITE_UTF8));
  return *this;
}

Statement& Statement::bind_bytes(std::span<const std::uint8_t> value, Copied copied) {
  // As for texts: no bytes are a value of their own.
  const void* data = value.empty() ? "" : static_cast<const void*>(value.data());
  check(sqlite3_bind_blob64(statement_, next_++, data, value.size(),
                            copied == Copied::yes ? SQLITE_TRANSIENT : SQLITE_STATIC));
  return *this;
}

Statement& Statement::text(std::string_view value) {
  return bind_text(value, Copied::yes);
}

Statement& Statement::bytes(std::span<const std::uint8_t> value) {
  return bind_bytes(value, Copied::yes);
}

Statement& Statement::lasting_text(std::string_view value) {
  return bind_text(value, Copied::no);
}

Statement& Statement::lasting_bytes(std::span<const std::uint8_t> value) {
  return bind_bytes(value, Copied::no);
}

Statement& Statement::lasting_cell(const Cell& value) {
  const auto* words = std::get_if<std::string>(&value);
  return words != nullptr ? lasting_text(*words) : cell(value);
}

Statement& Statement::nothing() {
  check(sqlite3_bind_null(statement_, next_++));
  return *this;
}

Statement& Statement::cell(const Cell& value) {
  if (const auto* number = std::get_if<std::int64_t>(&value)) return integer(*number);
  if (const auto* words = std::get_if<std::string>(&value)) return text(*words);
  return nothing();
}

bool Statement::step() {
  errno = 0;
  const int code = sqlite3_step(statement_);
  if (code == SQLITE_ROW) return true;
  if (code != SQLITE_DONE) {
    Fault fault = fault_of_sqlite(db_, code, file_);
    reset();
    throw SqlFailure{std::move(fault)};
  }
  return false;
}

void Statement::run() {
  while (step()) {
  }
  reset();
}

void Statement::reset() {
  // What it answers is the failure of the last step, which was told already.
  sqlite3_reset(statement_);
  sqlite3_clear_bindings(statement_);
  next_ = 1;
}

bool Statement::is_empty(int column) const {
  return sqlite3_column_type(statement_, column) == SQLITE_NULL;
}

std::int64_t Statement::integer_at(int column) const {
  return sqlite3_column_int64(statement_, column);
}

std::string_view Statement::text_at(int column) const {
  const auto* data = reinterpret_cast<const char*>(sqlite3_column_text(statement_, column));
  if (data == nullptr) return {};
  return {data, static_cast<std::size_t>(sqlite3_column_bytes(statement_, column))};
}

Cell Statement::cell_at(int column) const {
  switch (sqlite3_column_type(statement_, column)) {
    case SQLITE_NULL:
      return {};
    case SQLITE_INTEGER:
      return integer_at(column);
    default:
      return std::string(text_at(column));
  }
}

Uuid Statement::id_at(int column) const {
  return fixed_bytes<Uuid>(statement_, column);
}

Digest Statement::digest_at(int column) const {
  return fixed_bytes<Digest>(statement_, column);
}

int Statement::column_count() const {
  return sqlite3_column_count(statement_);
}

Connection::Connection(const std::string& name, int flags, const std::string& file) : file_(file) {
  errno = 0;
  const int code = sqlite3_open_v2(name.c_str(), &db_, flags, nullptr);
  if (code != SQLITE_OK) {
    const Fault fault = fault_of_sqlite(db_, code, file_);
    sqlite3_close_v2(db_);
    throw SqlFailure{fault};
  }
  sqlite3_busy_timeout(db_, busy_wait_ms);
}

Connection::Connection(const std::string& file, Access access)
    : Connection(file, flags_of(access), file) {}

Connection Connection::of_unchanging(const std::string& file) {
  return {"file:" + escaped_name(file) + "?immutable=1", flags_of(Access::read) | SQLITE_OPEN_URI,
          file};
}

Connection::Connection(Connection&& other) noexcept
    : file_(std::move(other.file_)),
      db_(std::exchange(other.db_, nullptr)),
      idle_(std::move(other.idle_)) {}

Connection::~Connection() {
  idle_.clear();
  assert((db_ == nullptr || sqlite3_next_stmt(db_, nullptr) == nullptr) &&
         "a statement outlived its connection");
  // Should one do so all the same, the file is let go with it, and not kept open for good.
  sqlite3_close_v2(db_);
}

Connection::Lent::Lent(Connection& lender, std::string_view sql)
    : idle_(lender.idle_of(sql)), statement_(lender.taken(idle_, sql)) {}

Connection::Lent::~Lent() {
  statement_.reset();
  try {
    idle_.push_back(std::move(statement_));
  } catch (const std::bad_alloc&) {
    return;  // with no memory to keep it, it is closed and prepared anew when it is asked for again
  }
}

Connection::Idle& Connection::idle_of(std::string_view sql) {
  const auto known = idle_.find(sql);
  return known != idle_.end() ? known->second : idle_[std::string(sql)];
}

Statement Connection::taken(Idle& idle, std::string_view sql) {
  if (idle.empty()) return {db_, sql, file_};
  Statement statement = std::move(idle.back());
  idle.pop_back();
  return statement;
}

void Connection::run(const std::string& sql) {
  errno = 0;
  const int code = sqlite3_exec(db_, sql.c_str(), nullptr, nullptr, nullptr);
  if (code != SQLITE_OK) throw SqlFailure{fault_of_sqlite(db_, code, file_)};
}

std::int64_t Connection::integer_of(std::string_view sql) {
  Statement statement(db_, sql, file_);
  return statement.step() ? statement.integer_at(0) : 0;
}

bool Connection::is_read_only() const {
  return sqlite3_db_readonly(db_, "main") == 1;
}

std::int64_t Connection::changed() const {
  return sqlite3_changes64(db_);
}

bool Connection::is_in_transaction() const {
  return sqlite3_get_autocommit(db_) == 0;
}

void Connection::refuse(std::string slug, std::string_view what, std::string_view remedy) const {
  throw SqlFailure{file_fault(file_, std::move(slug), what, remedy)};
}

Transaction::Transaction(Connection& connection) : connection_(connection) {
  connection_.prepared("BEGIN IMMEDIATE")->run();
}

Transaction::~Transaction() {
  // After a full disk SQLite may have rolled back by itself; what remains to be told was thrown.
  if (connection_.is_in_transaction()) {
    sqlite3_exec(connection_.raw(), "ROLLBACK", nullptr, nullptr, nullptr);
  }
}

void Transaction::commit() {
  connection_.prepared("COMMIT")->run();
}

}  // namespace evenclaw
