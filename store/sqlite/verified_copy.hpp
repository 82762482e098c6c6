// A whole copy of a file, which counts only after it was read back.
#pragma once

#include <string>

#include "store/sqlite/connection.hpp"

namespace evenclaw {

enum class CopyKind {
  exact,      // to be put back in place of the file itself
  of_its_own  // knows that it is a copy
};

/// Copies the records behind `from` to the new file `to` (an absolute name). When it returns, the
/// copy is on the disk under its name, reads back whole and holds every entry. Throws SqlFailure
/// ("output-exists", the disk's faults); then nothing of that name is left.
void copy_verified(Connection& from, const std::string& to, CopyKind kind);

}  // namespace evenclaw
