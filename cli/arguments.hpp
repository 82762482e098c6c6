// From what was typed to a command and its invocation; CLI11 does the parsing.
#pragma once

#include <variant>

#include "cli/command.hpp"

namespace evenclaw::cli {

struct Parsed {
  const Command* command;
  Invocation invocation;
};

/// The command to run, or the code to exit with after help or a complaint was printed.
std::variant<Parsed, Exit> parse_arguments(int argc, char** argv);

/// Where the records lie unless --file or EVENCLAW_FILE says otherwise:
/// $XDG_DATA_HOME/evenclaw/evenclaw.db, by default under ~/.local/share.
std::string usual_file();

}  // namespace evenclaw::cli
