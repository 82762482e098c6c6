// Opening a file: told apart from what is not ours, newer, damaged or read-only before anything is
// written, then brought up to date.
#pragma once

#include <string>

#include "store/sqlite/connection.hpp"
#include "store/sqlite/open_mode.hpp"

namespace evenclaw {

// Both throw SqlFailure.

/// Ready for the store: checked, brought up to date, with the settings that make an acknowledged
/// write durable.
Connection opened(const std::string& file, OpenMode mode);

/// For copying or checking a file: ours and not newer, but not brought up to date and not
/// looked over for damage.
Connection opened_as_it_is(const std::string& file);

}  // namespace evenclaw
