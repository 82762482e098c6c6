// Whose store this is and which device writes into it.
#pragma once

#include <optional>
#include <string_view>

#include "core/api/ports.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

struct Business {
  BusinessId business;
  DeviceId device;
  bool new_store = false;               // it was given its business and device just now
  std::optional<DeviceId> copied_from;  // the file was copied: it became a device of its own now

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("business", &Business::business, "the trimming business");
    visit("device", &Business::device, "this device");
    visit("new_store", &Business::new_store, "the store was empty before");
    visit("copied_from", &Business::copied_from, "the device whose file was copied");
  }
};

/// Call it before anything else writes. A new store gets a business, a device and the entry that
/// names the device; a copied or restored one takes a new device id before its first entry and
/// writes the entry with `copied_from`; any other store is left as it is. A new store belongs to
/// the business it `joins`, else to one of its own.
Result<Business> ready_business(const Ports& ports, std::string_view device_name,
                                std::optional<BusinessId> joins = std::nullopt);

}  // namespace evenclaw
