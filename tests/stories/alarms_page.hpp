// docs/method/alarms.md: how often each check spoke on the ordinary days.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "tests/stories/ordinary_days.hpp"

namespace evenclaw::test {

/// A planted fault, how loudly a careful colleague would speak up, and the check that does; ""
/// while none does yet.
struct PlantedFault {
  std::string_view name;
  Rank rank = Rank::ask;
  std::string_view rule;
};

/// The whole page, made anew from what was played.
std::string alarms_page(const std::vector<PlayedDay>& days,
                        const std::vector<PlantedFault>& planted);

}  // namespace evenclaw::test
