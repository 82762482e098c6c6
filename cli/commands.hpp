// Every subcommand by name; each is defined in commands/<verb>.cpp.
#pragma once

#include "cli/command.hpp"

namespace evenclaw::cli {

extern const Command start_command;
extern const Command record_command;
extern const Command end_command;
extern const Command right_day_command;
extern const Command due_command;
extern const Command told_command;
extern const Command score_command;
extern const Command walk_command;
extern const Command change_command;
extern const Command show_command;
extern const Command sheet_command;
extern const Command task_command;
extern const Command cow_command;
extern const Command import_command;
extern const Command export_command;
extern const Command calendar_command;
extern const Command herds_command;
extern const Command person_command;
extern const Command product_command;
extern const Command allowed_command;
extern const Command language_command;
extern const Command setting_command;
extern const Command redact_command;
extern const Command log_command;
extern const Command take_in_command;
extern const Command rebuild_command;
extern const Command backup_command;
extern const Command restore_command;
extern const Command check_command;
extern const Command example_command;
extern const Command demo_command;
extern const Command help_command;

}  // namespace evenclaw::cli
