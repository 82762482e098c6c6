#include "core/api/settings.hpp"

#include "core/api/journal.hpp"
#include "core/log/bodies.hpp"

namespace evenclaw {

Result<std::optional<std::string>> setting_of(Store& store, std::string_view name) {
  const auto identity = store.identity();
  if (!identity) return identity.faults();
  std::optional<std::string> value;
  const Outcome read =
      store.read_entries({identity->business.value, std::nullopt, {std::string(Setting::kind)}},
                         [&](const Entry& entry) {
                           const auto setting = body_as<Setting>(entry);
                           if (setting && setting->name == name) value = setting->value;
                           return true;
                         });
  if (!read) return read.faults();
  return value;
}

Result<EntryId> settle_for_business(const Ports& ports, std::string_view name,
                                    std::string_view value) {
  const auto identity = ports.store.identity();
  if (!identity) return identity.faults();
  return write_one(ports, identity->business.value, Setting{std::string(name), std::string(value)},
                   {});
}

}  // namespace evenclaw
