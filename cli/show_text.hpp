// A cow, a visit and a herd as text for a terminal.
#pragma once

#include <string>

#include "core/api/show.hpp"

namespace evenclaw::cli {

/// All that is on record of her: who she is, what is on her and open, then day by day what was said
/// of all of her and foot by foot.
std::string cow_text(const CowShown& shown, Day today);

/// What is still to be asked of a visit, and how to answer it.
std::string visit_text(const VisitShown& shown, Day today);

/// Cows, visits and every count that is not empty, visits by their day.
std::string herd_text(const HerdShown& shown, Day today);

}  // namespace evenclaw::cli
