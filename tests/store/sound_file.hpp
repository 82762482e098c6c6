// What a check of a whole file found nothing wrong with.
#pragma once

#include "store/sqlite/check_file.hpp"

namespace evenclaw {

inline bool is_sound(const FileReport& report) {
  return report.damaged.empty() && report.flaws.empty();
}

}  // namespace evenclaw
