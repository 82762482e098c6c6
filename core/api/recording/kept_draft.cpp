#include "core/api/recording/kept_draft.hpp"

#include "core/wire/json.hpp"
#include "core/wire/value_json.hpp"

namespace evenclaw {

std::string kept_text(const KeptDraft& draft) {
  return canonical_json(to_json(draft));
}

Result<KeptDraft> kept_draft(std::string_view text) {
  const auto json = json_from_text(text);
  if (!json) return json.faults();
  return from_json<KeptDraft>(*json);
}

}  // namespace evenclaw
