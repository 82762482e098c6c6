// A connection to one SQLite file and the statements run on it; both close themselves.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/base/digest.hpp"
#include "core/base/id.hpp"
#include "core/wire/cells.hpp"
#include "store/sqlite/failure.hpp"

struct sqlite3;
struct sqlite3_stmt;

namespace evenclaw {

// Everything in this header throws SqlFailure when SQLite refuses; nothing else.

/// A prepared statement. Parameters and columns are taken in order.
class Statement {
 public:
  Statement(sqlite3* db, std::string_view sql, std::string file);
  Statement(Statement&& other) noexcept;
  Statement& operator=(Statement&& other) noexcept;
  Statement(const Statement&) = delete;
  Statement& operator=(const Statement&) = delete;
  ~Statement();

  /// Each binds the next parameter.
  Statement& integer(std::int64_t value);
  Statement& text(std::string_view value);
  Statement& bytes(std::span<const std::uint8_t> value);
  Statement& nothing();
  Statement& cell(const Cell& value);

  /// The same without a copy: the value must stay where it is until the statement was run or reset.
  Statement& lasting_text(std::string_view value);
  Statement& lasting_bytes(std::span<const std::uint8_t> value);
  Statement& lasting_cell(const Cell& value);

  Statement& id(const Uuid& value) { return bytes(value.bytes); }

  Statement& digest(const Digest& value) { return bytes(value.bytes); }

  /// Moves to the next row; false when there is none.
  bool step();
  /// Steps to the end.
  void run();
  /// Ready for new parameters.
  void reset();

  [[nodiscard]] bool is_empty(int column) const;
  [[nodiscard]] std::int64_t integer_at(int column) const;
  /// Valid until the next step.
  [[nodiscard]] std::string_view text_at(int column) const;
  [[nodiscard]] Cell cell_at(int column) const;
  /// A column of another length than an id or digest has gives the nil id or digest.
  [[nodiscard]] Uuid id_at(int column) const;
  [[nodiscard]] Digest digest_at(int column) const;
  [[nodiscard]] int column_count() const;

 private:
  enum class Copied { yes, no };

  void check(int code);
  Statement& bind_text(std::string_view value, Copied copied);
  Statement& bind_bytes(std::span<const std::uint8_t> value, Copied copied);

  sqlite3* db_;
  sqlite3_stmt* statement_ = nullptr;
  std::string file_;
  int next_ = 1;
};

enum class Access { read, write, create };

/// How long one who writes waits for another.
inline constexpr int busy_wait_ms = 5000;

/// One thread at a time.
class Connection {
  using Idle = std::vector<Statement>;  // of one text

 public:
  Connection(const std::string& file, Access access);
  /// For a file on a medium nobody can write to, where the write-ahead log cannot be shared.
  static Connection of_unchanging(const std::string& file);
  Connection(Connection&& other) noexcept;
  Connection& operator=(Connection&&) = delete;
  Connection(const Connection&) = delete;
  Connection& operator=(const Connection&) = delete;
  ~Connection();

  /// A prepared statement that goes back to be used again. A statement lent twice at once is
  /// prepared twice, so that a reader's callback may ask the same question.
  class Lent {
   public:
    Lent(Connection& lender, std::string_view sql);
    Lent(const Lent&) = delete;
    Lent& operator=(const Lent&) = delete;
    ~Lent();

    Statement* operator->() { return &statement_; }

    Statement& operator*() { return statement_; }

   private:
    Idle& idle_;
    Statement statement_;
  };

  Lent prepared(std::string_view sql) { return {*this, sql}; }

  /// Runs one or several statements without parameters or results.
  void run(const std::string& sql);
  /// The single integer a query gives; 0 when it gives nothing.
  std::int64_t integer_of(std::string_view sql);

  [[nodiscard]] const std::string& file() const { return file_; }

  [[nodiscard]] sqlite3* raw() const { return db_; }

  [[nodiscard]] bool is_read_only() const;
  /// Rows changed by the statement run last.
  [[nodiscard]] std::int64_t changed() const;
  [[nodiscard]] bool is_in_transaction() const;

  /// Faults this file with a slug of its own.
  [[noreturn]] void refuse(std::string slug, std::string_view what, std::string_view remedy) const;

 private:
  Connection(const std::string& name, int flags, const std::string& file);
  [[nodiscard]] Idle& idle_of(std::string_view sql);
  [[nodiscard]] Statement taken(Idle& idle, std::string_view sql);

  /// So that a text is looked up without a copy of it.
  struct HashOfText {
    using is_transparent = void;

    std::size_t operator()(std::string_view text) const {
      return std::hash<std::string_view>{}(text);
    }
  };

  std::string file_;
  sqlite3* db_ = nullptr;
  std::unordered_map<std::string, Idle, HashOfText, std::equal_to<>> idle_;
};

/// All or nothing: undone when it goes out of scope without commit().
class Transaction {
 public:
  explicit Transaction(Connection& connection);
  Transaction(const Transaction&) = delete;
  Transaction& operator=(const Transaction&) = delete;
  ~Transaction();
  void commit();

 private:
  Connection& connection_;
};

}  // namespace evenclaw
