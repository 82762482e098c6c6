// Where something is recorded of a farm, on which day, who judged and who typed.
#pragma once

#include "core/api/herds.hpp"
#include "core/api/journal.hpp"
#include "core/base/date.hpp"

namespace evenclaw {

struct AtFarm {
  Herd herd;
  Day day;
  SaidBy by;
};

}  // namespace evenclaw
