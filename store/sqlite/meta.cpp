#include "store/sqlite/meta.hpp"

#include "store/sqlite/file_identity.hpp"

namespace evenclaw {

std::optional<std::string> meta_value(Connection& connection, std::string_view name) {
  auto select = connection.prepared("SELECT value FROM meta WHERE name = ?");
  if (!select->text(name).step()) return std::nullopt;
  return std::string(select->text_at(0));
}

void set_meta(Connection& connection, std::string_view name, std::string_view value) {
  connection.prepared("UPDATE meta SET value = ? WHERE name = ?")->text(value).text(name).run();
  if (connection.changed() > 0) return;
  connection.prepared("INSERT INTO meta (name, value) VALUES (?, ?) ON CONFLICT DO NOTHING")
      ->text(name)
      .text(value)
      .run();
}

void forget_meta(Connection& connection, std::string_view name) {
  connection.prepared("DELETE FROM meta WHERE name = ?")->text(name).run();
}

void remember_file(Connection& connection) {
  const auto here = file_identity(connection.file());
  if (!here) return;
  set_meta(connection, meta_name::file_device, std::to_string(here->device));
  set_meta(connection, meta_name::file_inode, std::to_string(here->inode));
  set_meta(connection, meta_name::file_path, here->path);
  set_meta(connection, meta_name::file_born, here->born);
  forget_meta(connection, meta_name::made_by_copying);
}

bool is_copy(Connection& connection) {
  if (meta_value(connection, meta_name::made_by_copying)) return true;
  const auto here = file_identity(connection.file());
  if (!here) return false;
  // Not every file system tells it, and older files do not remember it.
  const std::string born = meta_value(connection, meta_name::file_born).value_or("");
  if (!born.empty() && !here->born.empty() && born != here->born) return true;
  return meta_value(connection, meta_name::file_device) != std::to_string(here->device) ||
         meta_value(connection, meta_name::file_inode) != std::to_string(here->inode) ||
         meta_value(connection, meta_name::file_path) != here->path;
}

}  // namespace evenclaw
