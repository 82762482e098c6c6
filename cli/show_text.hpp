// A cow and a herd as text for a terminal.
#pragma once

#include <string>

#include "core/api/show.hpp"

namespace evenclaw::cli {

std::string cow_text(const CowShown& shown, Day today);

/// Cows, visits and every count that is not empty, visits by their day.
std::string herd_text(const HerdShown& shown, Day today);

}  // namespace evenclaw::cli
