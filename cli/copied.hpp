// What is told of a copy of the records that was just made.
#pragma once

#include <string>

#include "cli/command.hpp"

namespace evenclaw::cli {

/// Reads the copy back, entry by entry. Says `done` when it is whole; what is damaged in it
/// otherwise, for a copy of damaged records is still worth having, but not to be trusted unseen.
Exit tell_copied(const Invocation& invocation, const std::string& copy, const std::string& done);

}  // namespace evenclaw::cli
