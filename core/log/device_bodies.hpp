// The bodies of entries about devices and who may write on them.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/id.hpp"

namespace evenclaw {

struct DeviceNamed {
  static constexpr std::string_view kind = "device";
  static constexpr std::int32_t version = 1;
  DeviceId device;
  std::string name;
  std::optional<DeviceId> copied_from;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("device", &DeviceNamed::device, "device");
    visit("name", &DeviceNamed::name, "what people call it");
    visit("copied_from", &DeviceNamed::copied_from, "the device whose file this was a copy of");
  }
};

struct PersonAllowed {
  static constexpr std::string_view kind = "person_allowed";
  static constexpr std::int32_t version = 1;
  PersonId person;
  DeviceId device;
  bool allowed = true;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("person", &PersonAllowed::person, "person, whose name stands in the directory only");
    visit("device", &PersonAllowed::device, "device");
    visit("allowed", &PersonAllowed::allowed, "may write on it");
  }
};

}  // namespace evenclaw
