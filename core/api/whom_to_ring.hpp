// Whom the farm rings about a cow after a visit: name and telephone, as they stand on the sheet.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/api/ports.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// "" where the business has settled nobody, and where the words were erased or are not known here.
Result<std::string> whom_to_ring(const Ports& ports);

/// Under whom these words are kept among the names of people; nothing where nobody is settled.
Result<std::optional<PersonId>> ring_person(const Ports& ports);

/// "Anna, 01234 567890"; "off" for nobody. The words stand in the directory, where they can be
/// erased, and the log holds an id; what stood there before is erased. Fault "usage" for no words,
/// for more than 80 characters, and for more than one plain line.
Result<EntryId> set_whom_to_ring(const Ports& ports, std::string_view said);

}  // namespace evenclaw
