// What the business has settled once for all its herds, each by name.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/api/ports.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// The value that was settled last; nothing when nobody settled it.
Result<std::optional<std::string>> setting_of(Store& store, std::string_view name);

Result<EntryId> settle_for_business(const Ports& ports, std::string_view name,
                                    std::string_view value);

}  // namespace evenclaw
