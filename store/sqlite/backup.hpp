// Whole copies of a file: backups, and files restored from them; none counts before it was read
// back and compared.
#pragma once

#include <string>

#include "core/base/result.hpp"

namespace evenclaw {

/// Copies the records in `file` to the new file `to`, also while another program writes to it. The
/// copy is on the disk, was checked as a whole and holds as many entries as were copied when this
/// returns. It knows that it is a copy: opened by itself it asks for a device id of its own.
/// Faults: "file-not-found", "output-exists" and those of opening and of the disk; after a fault
/// nothing of that name is left.
Outcome back_up(const std::string& file, const std::string& to);

/// Makes the new file `to` from a backup. The backup is only read. Promises and faults as
/// back_up().
Outcome restore(const std::string& backup, const std::string& to);

}  // namespace evenclaw
