// Words of ICAR ADE, the JSON in which programs for herds exchange animals and events, as far as we
// read and write them (github adewg/ICAR, branches ADE-1 of 1 June 2023 and Develop of 8 February
// 2024).
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

#include "core/trade/life.hpp"
#include "core/wire/json.hpp"

namespace evenclaw {

/// The resources we know by name, and what they tell.
enum class AdeResource {
  animal,
  arrival,
  parturition,
  dry_off,
  departure,
  death,
  diagnosis,
  treatment
};

std::string_view type_of(AdeResource resource);
std::optional<AdeResource> resource_of(std::string_view type);

/// Reasons of icarDepartureReasonType and icarDeathReasonType; `other` for a word that is none of
/// theirs, `not_told` for Unknown.
LeavingReason leaving_reason_of(std::string_view ade_reason);

/// The other way: a word of icarDepartureReasonType, or of icarDeathReasonType for a death. "Other"
/// where the enumeration has none for it, "Unknown" when no reason was told.
std::string_view ade_departure_reason(LeavingReason reason);
std::string_view ade_death_reason(LeavingReason reason);

/// The text of JSON that may hold fractions, which our reader refuses: each becomes a string, and
/// everything else stays at its place.
std::string fractions_as_text(std::string_view json);

/// The string at a path such as {"meta", "source"}; null when there is none.
const std::string* text_at(const Json& object, std::initializer_list<std::string_view> path);

}  // namespace evenclaw
