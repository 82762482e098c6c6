// Bodies of older versions, turned into the form of this version when they are read.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "core/wire/json.hpp"

namespace evenclaw {

/// One step of one kind: the body of version `from` as version `from + 1` would have written it.
/// Pure; it may fill in what the newer version knows, never take away what was said.
struct UpCaster {
  std::string_view kind;
  std::int32_t from;
  Json (*cast)(Json body);
};

/// The steps of this version of the program.
std::span<const UpCaster> all_up_casters();

/// What the envelope says of a body.
struct BodyForm {
  std::string_view kind;
  std::int32_t version;
};

/// The body at version `to`, by the steps of `casters`; nothing when a step is missing or the body
/// is newer than `to`. The bytes of the entry stay as they are: only what is read is turned.
std::optional<Json> up_cast(Json body, BodyForm form, std::int32_t to,
                            std::span<const UpCaster> casters);

}  // namespace evenclaw
