// The options that tell of a cow what a register would: tag, electronic number, breed, calving.
#pragma once

#include "cli/command.hpp"
#include "core/api/cow_register.hpp"
#include "core/base/result.hpp"

namespace evenclaw::cli {

/// What was typed of her. Faults, all of them: "date-unreadable", "usage" for a weight that is no
/// number of kilograms or of a lactation and for anything but heifer or cow.
Result<CowDetails> details_in(const Invocation& invocation);

}  // namespace evenclaw::cli
