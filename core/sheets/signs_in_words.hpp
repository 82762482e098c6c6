// The signs a vet has to know of that are named in words nobody has read as calls.
#pragma once

#include <string_view>
#include <vector>

#include "core/sheets/signs_for_vet.hpp"

namespace evenclaw {

/// Lines that were refused, kept as the reason why her turn was not finished.
bool is_not_understood(std::string_view end_reason);

/// What the words may tell of in any language, each row of the table once: why a cow was let out
/// ("went down"), or a line nobody understood. Of what was understood only what is called of a cow,
/// not what is found on a foot. That something is denied is not heard: then it is only asked about.
std::vector<const SignForVet*> signs_in_words(std::string_view words);

}  // namespace evenclaw
