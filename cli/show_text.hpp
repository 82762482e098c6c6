// A cow and a herd as text for a terminal.
#pragma once

#include <string>

#include "core/api/show.hpp"

namespace evenclaw::cli {

std::string cow_text(const CowShown& shown);
std::string herd_text(const HerdShown& shown);

}  // namespace evenclaw::cli
