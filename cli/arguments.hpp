// From what was typed to a command and its invocation, by the table of commands alone.
#pragma once

#include <span>
#include <string>
#include <variant>
#include <vector>

#include "cli/command.hpp"
#include "core/base/result.hpp"

namespace evenclaw::cli {

struct Parsed {
  const Command* command;
  Invocation invocation;
};

/// Options may stand before or after the verb, as "--name value" or "--name=value"; "--" ends them,
/// "-" is an operand. All faults have the slug "usage" and say what would be right: an unknown
/// verb or option with the nearest one, a value that is missing or too many, a missing operand, a
/// word too many. Where the records lie is not settled here.
Result<Parsed> parse(std::span<const std::string> words);

/// The command to run, with its file from --file, EVENCLAW_FILE or the usual place; or the code to
/// exit with after help, the version or a complaint was printed.
std::variant<Parsed, Exit> parse_arguments(int argc, char** argv);

/// The complaint about a verb that is none, with the nearest one as remedy.
Fault no_such_command(std::string_view typed);

/// Where the records lie unless --file or EVENCLAW_FILE says otherwise:
/// $XDG_DATA_HOME/evenclaw/evenclaw.db, by default under ~/.local/share; "" when
/// neither is set.
std::string usual_file();

}  // namespace evenclaw::cli
