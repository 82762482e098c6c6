// The options that every command takes.
#pragma once

#include <span>

#include "cli/command.hpp"

namespace evenclaw::cli {

/// --file, --today and --json; described once for the parser, the help and the reference.
std::span<const Option> global_options();

}  // namespace evenclaw::cli
