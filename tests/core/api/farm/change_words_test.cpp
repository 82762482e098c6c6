#include "core/api/farm/change_words.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("what was not told of a change is said to be so") {
  FarmChangeRow row;
  row.driver = ChangeDriver::standing_time;
  row.words = "two groups at milking";
  CHECK(change_words(row) ==
        "standing time: two groups at milking; why was not told; when it was decided was not "
        "told; whether it is finished was not told; for whom was not told");
  row.why = ChangeWhy::other;
  row.why_words = "a new milker";
  row.state = ChangeState::going_on;
  row.reach = ChangeReach::group;
  row.animals = "the heifers";
  CHECK(change_words(row) ==
        "standing time: two groups at milking; because a new milker; when it was decided was not "
        "told; still going on; only the heifers");
}

}  // namespace evenclaw
