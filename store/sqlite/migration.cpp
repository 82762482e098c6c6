#include "store/sqlite/migration.hpp"

#include <algorithm>
#include <charconv>

#include "embedded/schema_files.hpp"
#include "store/sqlite/file_identity.hpp"
#include "store/sqlite/verified_copy.hpp"

namespace evenclaw {

namespace {

std::int64_t version_of(Connection& connection) {
  return connection.integer_of("PRAGMA user_version");
}

std::int64_t newest_of(std::span<const Migration> migrations) {
  return migrations.empty() ? 0 : migrations.back().version;
}

std::string free_name(const std::string& wanted) {
  std::string name = wanted;
  for (int number = 2; file_identity(name); ++number) name = wanted + "-" + std::to_string(number);
  return name;
}

void apply(Connection& connection, std::span<const Migration> migrations) {
  Transaction transaction(connection);
  // Asked again inside: another program may have done it since.
  const std::int64_t version = version_of(connection);
  for (const Migration& migration : migrations) {
    if (migration.version <= version) continue;
    connection.run(std::string(migration.sql));
    connection.run("PRAGMA user_version = " + std::to_string(migration.version));
  }
  connection.run("PRAGMA application_id = " + std::to_string(application_id));
  transaction.commit();
}

}  // namespace

std::vector<Migration> all_migrations() {
  std::vector<Migration> migrations;
  for (const EmbeddedFile& file : schema_files()) {
    std::int64_t version = 0;
    std::from_chars(file.name.data(), file.name.data() + file.name.size(), version);
    migrations.push_back({version, file.text});
  }
  std::sort(migrations.begin(), migrations.end(),
            [](const Migration& a, const Migration& b) { return a.version < b.version; });
  return migrations;
}

bool is_blank(Connection& connection) {
  return connection.integer_of("PRAGMA application_id") == 0 &&
         connection.integer_of("PRAGMA user_version") == 0 &&
         connection.integer_of("SELECT count(*) FROM sqlite_schema") == 0;
}

void refuse_unless_ours(Connection& connection, std::span<const Migration> migrations) {
  const std::int64_t newest = newest_of(migrations);
  if (connection.integer_of("PRAGMA application_id") != application_id) {
    connection.refuse("not-our-file", "it was written by another program",
                      "Check the name; to start a new file, name one that does not exist yet.");
  }
  const std::int64_t version = version_of(connection);
  if (version > newest) {
    connection.refuse("file-newer",
                      "it has version " + std::to_string(version) + ", this program knows " +
                          std::to_string(newest),
                      "Update this program and open the file again.");
  }
}

void migrate(Connection& connection, std::span<const Migration> migrations) {
  const std::int64_t newest = newest_of(migrations);
  const bool blank = is_blank(connection);
  if (!blank) refuse_unless_ours(connection, migrations);
  if (version_of(connection) == newest) return;
  if (!blank) {
    copy_verified(connection, free_name(connection.file() + ".before-" + std::to_string(newest)),
                  CopyKind::exact);
  }
  apply(connection, migrations);
}

}  // namespace evenclaw
