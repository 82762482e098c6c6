#include "cli/commands.hpp"

namespace evenclaw::cli {
namespace {

constexpr const Command* table[] = {
    &start_command,    &record_command,  &end_command,     &right_day_command, &due_command,
    &told_command,     &score_command,   &walk_command,    &change_command,    &show_command,
    &sheet_command,    &task_command,    &cow_command,     &import_command,    &export_command,
    &calendar_command, &herds_command,   &person_command,  &product_command,   &allowed_command,
    &language_command, &setting_command, &redact_command,  &log_command,       &take_in_command,
    &rebuild_command,  &backup_command,  &restore_command, &check_command,     &example_command,
    &demo_command,     &help_command};

}  // namespace

std::span<const Command* const> all_commands() {
  return table;
}

const Command* find_command(std::string_view verb) {
  for (const Command* command : table) {
    if (command->verb == verb) return command;
  }
  return nullptr;
}

}  // namespace evenclaw::cli
