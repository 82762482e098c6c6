// A change of the farm in one line of words.
#pragma once

#include <string>

#include "core/base/date.hpp"
#include "core/trade/farm_change.hpp"

namespace evenclaw {

/// "footbath: copper".
std::string change_name(const FarmChangeRow& row);

/// "footbath: copper; after a bad visit; decided 2026-10-01; finished 2026-10-20; whole herd", with
/// what was not told said so.
std::string change_words(const FarmChangeRow& row);

}  // namespace evenclaw
