// What was not called about a finding: a mark on the line, never an alarm.
#pragma once

#include <string>
#include <vector>

#include "core/trade/turn.hpp"

namespace evenclaw {

struct Mark {
  Foot foot = Foot::lf;
  Lesion lesion = Lesion::other;
  std::string missing;  // "place, degree"

  friend bool operator==(const Mark&, const Mark&) = default;
};

/// One per finding that lacks something.
std::vector<Mark> marks_of(const Turn& turn);

/// "place, degree not called (left hind white line abscess)"; the same of several feet is told
/// once.
std::vector<std::string> told_of(const std::vector<Mark>& marks);

}  // namespace evenclaw
