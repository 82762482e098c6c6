// A day in the tests of lists.
#pragma once

#include <string_view>

#include "core/base/date.hpp"

namespace evenclaw::test {

/// "2026-11-24"; the text must be a day.
inline Day day(std::string_view text) {
  return day_from_text(text).value();
}

}  // namespace evenclaw::test
