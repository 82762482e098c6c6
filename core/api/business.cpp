#include "core/api/business.hpp"

#include <string>

#include "core/api/journal.hpp"
#include "core/log/bodies.hpp"

namespace evenclaw {

namespace {

Outcome write_device(const Ports& ports, const Business& business, std::string_view device_name) {
  DeviceNamed body;
  body.device = business.device;
  body.name = device_name;
  body.copied_from = business.copied_from;
  const auto written = write_one(ports, business.business.value, body, {});
  if (!written) return written.faults();
  return Done{};
}

}  // namespace

Result<Business> ready_business(const Ports& ports, std::string_view device_name,
                                std::optional<BusinessId> joins) {
  auto identity = ports.store.identity();
  if (!identity) return identity.faults();
  Business business;
  business.business = identity->business;
  business.device = identity->device;
  business.new_store = identity->business.is_nil();
  if (!business.new_store && !identity->copied) return business;
  if (identity->copied) business.copied_from = identity->device;
  if (business.new_store) business.business = joins ? *joins : BusinessId{ports.ids.next()};
  business.device = DeviceId{ports.ids.next()};
  const Outcome set = ports.store.set_identity(business.business, business.device);
  if (!set) return set.faults();
  const Outcome written = write_device(ports, business, device_name);
  if (!written) return written.faults();
  return business;
}

}  // namespace evenclaw
