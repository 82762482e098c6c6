#include "core/exchange/ade.hpp"

#include <algorithm>
#include <cstddef>

#include "core/base/ascii.hpp"

namespace evenclaw {

namespace {

struct ResourceType {
  AdeResource resource;
  std::string_view type;
};

constexpr ResourceType resource_types[] = {
    {AdeResource::animal, "icarAnimalCoreResource"},
    {AdeResource::arrival, "icarMovementArrivalEventResource"},
    {AdeResource::parturition, "icarReproParturitionEventResource"},
    {AdeResource::dry_off, "icarMilkingDryOffEventResource"},
    {AdeResource::departure, "icarMovementDepartureEventResource"},
    {AdeResource::death, "icarMovementDeathEventResource"},
    {AdeResource::diagnosis, "icarDiagnosisEventResource"},
    {AdeResource::treatment, "icarTreatmentEventResource"}};

struct AdeReason {
  std::string_view word;
  LeavingReason reason;
};

// Verbatim words of both enumerations; Slaughter, Sale, Culled and Consumption say how she left and
// no reason.
constexpr AdeReason ade_reasons[] = {{"Age", LeavingReason::age},
                                     {"Superfluous", LeavingReason::surplus},
                                     {"Slaughter", LeavingReason::not_told},
                                     {"Sale", LeavingReason::not_told},
                                     {"Newborn", LeavingReason::other},
                                     {"LegOrClaw", LeavingReason::feet_and_legs},
                                     {"Nutrition", LeavingReason::nutrition},
                                     {"Parturition", LeavingReason::calving},
                                     {"Mastitis", LeavingReason::udder},
                                     {"Fertility", LeavingReason::fertility},
                                     {"Health", LeavingReason::health},
                                     {"Disease", LeavingReason::health},
                                     {"Production", LeavingReason::production},
                                     {"MilkingAbility", LeavingReason::milking},
                                     {"BadType", LeavingReason::conformation},
                                     {"Behaviour", LeavingReason::behaviour},
                                     {"Accident", LeavingReason::accident},
                                     {"Missing", LeavingReason::missing},
                                     {"Consumption", LeavingReason::not_told},
                                     {"Culled", LeavingReason::not_told},
                                     {"Other", LeavingReason::other},
                                     {"Unknown", LeavingReason::not_told}};

bool belongs_to_number(char c) {
  return is_digit(c) || c == '-' || c == '+' || c == '.' || c == 'e' || c == 'E';
}

std::size_t behind_number(std::string_view json, std::size_t at) {
  while (at < json.size() && belongs_to_number(json[at])) ++at;
  return at;
}

/// Behind the quote that ends the string, or behind the text when none does.
std::size_t behind_string(std::string_view json, std::size_t at) {
  for (++at; at < json.size() && json[at] != '"'; ++at) {
    if (json[at] == '\\') ++at;
  }
  return std::min(at + 1, json.size());
}

}  // namespace

std::string_view type_of(AdeResource resource) {
  for (const ResourceType& known : resource_types) {
    if (known.resource == resource) return known.type;
  }
  return {};
}

std::optional<AdeResource> resource_of(std::string_view type) {
  for (const ResourceType& known : resource_types) {
    if (known.type == type) return known.resource;
  }
  return std::nullopt;
}

LeavingReason leaving_reason_of(std::string_view ade_reason) {
  if (ade_reason.empty()) return LeavingReason::not_told;
  for (const AdeReason& known : ade_reasons) {
    if (known.word == ade_reason) return known.reason;
  }
  return LeavingReason::other;
}

std::string_view ade_departure_reason(LeavingReason reason) {
  switch (reason) {
    case LeavingReason::not_told:
      return "Unknown";
    case LeavingReason::age:
      return "Age";
    case LeavingReason::surplus:
      return "Superfluous";
    case LeavingReason::feet_and_legs:
      return "LegOrClaw";
    case LeavingReason::nutrition:
      return "Nutrition";
    case LeavingReason::calving:
      return "Parturition";
    case LeavingReason::udder:
      return "Mastitis";
    case LeavingReason::fertility:
      return "Fertility";
    case LeavingReason::health:
      return "Health";
    case LeavingReason::production:
      return "Production";
    case LeavingReason::milking:
      return "MilkingAbility";
    case LeavingReason::conformation:
      return "BadType";
    case LeavingReason::behaviour:
      return "Behaviour";
    case LeavingReason::accident:
    case LeavingReason::missing:
    case LeavingReason::other:
      return "Other";
  }
  return {};
}

std::string_view ade_death_reason(LeavingReason reason) {
  switch (reason) {
    case LeavingReason::health:
      return "Disease";
    case LeavingReason::accident:
      return "Accident";
    case LeavingReason::missing:
      return "Missing";
    case LeavingReason::surplus:
    case LeavingReason::conformation:
    case LeavingReason::behaviour:
      return "Other";
    case LeavingReason::not_told:
    case LeavingReason::age:
    case LeavingReason::feet_and_legs:
    case LeavingReason::nutrition:
    case LeavingReason::calving:
    case LeavingReason::udder:
    case LeavingReason::fertility:
    case LeavingReason::production:
    case LeavingReason::milking:
    case LeavingReason::other:
      return ade_departure_reason(reason);
  }
  return {};
}

std::string fractions_as_text(std::string_view json) {
  std::string out;
  out.reserve(json.size());
  for (std::size_t at = 0; at < json.size();) {
    const char c = json[at];
    const bool is_number = is_digit(c) || c == '-';
    const std::size_t end = c == '"'    ? behind_string(json, at)
                            : is_number ? behind_number(json, at)
                                        : at + 1;
    const std::string_view token = json.substr(at, end - at);
    const bool is_fraction = is_number && token.find_first_of(".eE") != std::string_view::npos;
    if (is_fraction) out += '"';
    out += token;
    if (is_fraction) out += '"';
    at = end;
  }
  return out;
}

const std::string* text_at(const Json& object, std::initializer_list<std::string_view> path) {
  const Json* at = &object;
  for (const std::string_view name : path) {
    at = at->member(name);
    if (at == nullptr) return nullptr;
  }
  return at->as_string();
}

}  // namespace evenclaw
