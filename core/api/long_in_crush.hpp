// From how many minutes in the crush on it is noted that a cow stood there for long.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "core/api/ports.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// Our judgement; no time in the crush was found published.
inline constexpr std::int32_t usual_long_minutes = 20;

/// The minutes the business has settled, the usual ones when it has settled none; nothing where it
/// wants none noted.
Result<std::optional<std::int32_t>> long_in_crush(Store& store);

/// "25", or "off". Fault "usage" for anything else.
Result<EntryId> set_long_in_crush(const Ports& ports, std::string_view minutes);

}  // namespace evenclaw
