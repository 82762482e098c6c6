#include "core/api/call_language.hpp"

#include <string>

#include "core/api/recording/kept_draft.hpp"
#include "core/api/settings.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view setting_name = "call-language";

const CallLanguage* meant_by(std::string_view said) {
  const std::string folded = fold_case(trimmed(said));
  for (const CallLanguage& each : call_languages()) {
    if (folded == each.code || folded == fold_case(each.name)) return &each;
  }
  return nullptr;
}

std::string codes() {
  std::string all;
  for (const CallLanguage& each : call_languages()) {
    if (!all.empty()) all += ", ";
    all += std::string(each.code) + " (" + std::string(each.name) + ")";
  }
  return all;
}

}  // namespace

Result<const CallLanguage*> call_language_of(Store& store) {
  const auto code = setting_of(store, setting_name);
  if (!code) return code.faults();
  const CallLanguage* settled = *code ? call_language(**code) : nullptr;
  if (settled == nullptr) settled = &call_languages().front();
  return settled;
}

Result<EntryId> set_call_language(const Ports& ports, std::string_view language) {
  const CallLanguage* meant = meant_by(language);
  if (meant == nullptr) {
    return Fault{.slug = "usage",
                 .message = "there are no words of \"" + std::string(trimmed(language)) + "\"",
                 .token = std::string(trimmed(language)),
                 .remedy = "There are: " + codes() + "."};
  }
  const auto draft = ports.store.draft();
  if (!draft) return draft.faults();
  const auto kept = kept_draft(*draft);
  if (!draft->empty() && !(kept && kept->nobody)) {
    return Fault{.slug = "call-impossible",
                 .message = "A cow is in the crush, called in the language of now.",
                 .remedy = "Let her out first: say \"done\" in evenclaw record, in that language."};
  }
  return settle_for_business(ports, setting_name, meant->code);
}

}  // namespace evenclaw
