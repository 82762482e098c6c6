// Bringing a file up to the schema of this program, one numbered text after another.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "store/sqlite/connection.hpp"

namespace evenclaw {

struct Migration {
  std::int64_t version;  // from the file's name: 0001_log.sql is 1
  std::string_view sql;
};

/// The migrations this program was built with, by version. 1, 2, 3 ... without a gap.
std::vector<Migration> all_migrations();

/// Marks a file as ours in its header ("Evcl" as a number).
inline constexpr std::int64_t application_id = 0x4576636c;

/// Brings the file up to date in one transaction. A file with entries is first copied to
/// `<file>.before-<version>`, with a further number when that is taken. Throws SqlFailure; then
/// the file is as it was: "not-our-file" when the mark is another's, "file-newer" when its version
/// is beyond the last of `migrations`.
void migrate(Connection& connection, std::span<const Migration> migrations);

/// Throws SqlFailure: "not-our-file" when the mark is another's, "file-newer" when the file is of a
/// version beyond the last of `migrations`.
void refuse_unless_ours(Connection& connection, std::span<const Migration> migrations);

/// True for a file nothing was ever written into: no tables, no mark, no version.
bool is_blank(Connection& connection);

}  // namespace evenclaw
