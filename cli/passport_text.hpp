// Who a cow is besides her number, for the head of what is shown of her.
#pragma once

#include <string>

#include "core/api/show.hpp"
#include "core/base/date.hpp"

namespace evenclaw::cli {

/// Ear tags with the electronic numbers in them, other names, breed, birth, heifer or cow, weight,
/// and what happened to her: a line each for what is known, "" when nothing is.
std::string passport_text(const CowShown& shown, Day today);

}  // namespace evenclaw::cli
