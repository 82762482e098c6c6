#include "core/api/call_language.hpp"

#include <string>

#include "core/api/journal.hpp"
#include "core/base/text.hpp"
#include "core/log/bodies.hpp"

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
  const auto identity = store.identity();
  if (!identity) return identity.faults();
  const CallLanguage* settled = &call_languages().front();
  const Outcome read =
      store.read_entries({identity->business.value, std::nullopt, {std::string(Setting::kind)}},
                         [&](const Entry& entry) {
                           const auto setting = body_as<Setting>(entry);
                           if (!setting || setting->name != setting_name) return true;
                           const CallLanguage* known = call_language(setting->value);
                           settled = known == nullptr ? &call_languages().front() : known;
                           return true;
                         });
  if (!read) return read.faults();
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
  if (!draft->empty()) {
    return Fault{.slug = "call-impossible",
                 .message = "A cow is in the crush, called in the language of now.",
                 .remedy = "Let her out first: say \"done\" in evenclaw record, in that language."};
  }
  const auto identity = ports.store.identity();
  if (!identity) return identity.faults();
  return write_one(ports, identity->business.value,
                   Setting{std::string(setting_name), std::string(meant->code)}, {});
}

}  // namespace evenclaw
