#include "core/trade/farm_change.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("what was altered, how, for whom and since when make one change") {
  const HerdId herd{uuid_derived("home")};
  const ChangeNamed copper{ChangeDriver::footbath, "Copper", "", Day{20'700}};
  CHECK(change_id(herd, copper) ==
        change_id(herd, {ChangeDriver::footbath, "copper ", "", Day{20'700}}));
  CHECK(change_id(herd, copper) !=
        change_id(herd, {ChangeDriver::footbath, "copper", "dry cows", Day{20'700}}));
  CHECK(change_id(herd, copper) !=
        change_id(herd, {ChangeDriver::footbath, "copper", "", Day{20'701}}));
}

}  // namespace evenclaw
