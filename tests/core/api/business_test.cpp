#include "core/api/business.hpp"

#include <doctest/doctest.h>

#include "core/log/body.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

std::vector<DeviceNamed> devices_in(Store& store) {
  std::vector<DeviceNamed> devices;
  (void)store.read_entries({{}, {}, {std::string(DeviceNamed::kind)}}, [&](const Entry& entry) {
    if (auto body = body_as<DeviceNamed>(entry)) devices.push_back(*std::move(body));
    return true;
  });
  return devices;
}

}  // namespace

TEST_CASE("a new store gets a business and a device that is named once") {
  Workplace place;
  CHECK(place.business.new_store);
  CHECK_FALSE(place.business.copied_from);
  const Business again = ready_business(place.ports(), "another name").value();
  CHECK_FALSE(again.new_store);
  CHECK(again.business == place.business.business);
  CHECK(again.device == place.business.device);
  const auto devices = devices_in(place.store);
  REQUIRE(devices.size() == 1);
  CHECK(devices.front().name == "tablet");
}

}  // namespace evenclaw::test
