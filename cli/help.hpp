// Help by example, made from the table of commands.
#pragma once

#include <string>

#include "cli/command.hpp"

namespace evenclaw::cli {

/// The whole list, a line a command, with the day it serves.
std::string help_of_all();

/// One command: what it does, how it is typed, examples.
std::string help_of(const Command& command);

/// docs/user/commands.md, whole.
std::string command_reference();

/// docs/format/answers.md, whole: what each command answers with --json.
std::string answer_reference();

}  // namespace evenclaw::cli
