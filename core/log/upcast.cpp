#include "core/log/upcast.hpp"

#include <algorithm>
#include <utility>

namespace evenclaw {

std::span<const UpCaster> all_up_casters() {
  // Every kind is at its first version, so no step exists yet.
  return {};
}

std::optional<Json> up_cast(Json body, BodyForm form, std::int32_t to,
                            std::span<const UpCaster> casters) {
  if (form.version > to) return std::nullopt;
  for (std::int32_t at = form.version; at < to; ++at) {
    const auto step = std::find_if(casters.begin(), casters.end(), [&](const UpCaster& caster) {
      return caster.kind == form.kind && caster.from == at;
    });
    if (step == casters.end()) return std::nullopt;
    body = step->cast(std::move(body));
  }
  return body;
}

}  // namespace evenclaw
