#include "core/api/whom_to_ring.hpp"

#include <cstddef>
#include <optional>

#include "core/api/settings.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view ring_setting = "ring";
constexpr std::string_view ring_nobody = "off";
constexpr std::size_t most_ring_characters = 80;

Outcome erase_before(const Ports& ports) {
  const auto before = ring_person(ports);
  if (!before) return before.faults();
  return *before ? ports.directory.remove(**before) : Outcome(Done{});
}

std::optional<Fault> fault_of(const std::string& said) {
  if (said.empty()) {
    return Fault{.slug = "usage",
                 .message = "Nothing was said that could stand on the sheet.",
                 .remedy = "Say name and telephone in quotes, or off."};
  }
  if (character_count(said) > most_ring_characters || !is_one_plain_line(said)) {
    return Fault{
        .slug = "usage",
        .message = "\"" + shortened(said, most_ring_characters) + "\" is no single short line",
        .remedy = "Say name and telephone in at most 80 characters, or off."};
  }
  return std::nullopt;
}

}  // namespace

Result<std::optional<PersonId>> ring_person(const Ports& ports) {
  const auto settled = setting_of(ports.store, ring_setting);
  if (!settled) return settled.faults();
  if (!*settled) return std::optional<PersonId>();
  const std::optional<Uuid> id = uuid_from_text(**settled);
  return id ? std::optional(PersonId{*id}) : std::nullopt;
}

Result<std::string> whom_to_ring(const Ports& ports) {
  const auto settled = ring_person(ports);
  if (!settled) return settled.faults();
  if (!*settled) return std::string();
  const auto everybody = ports.directory.everybody();
  if (!everybody) return everybody.faults();
  for (const Person& person : *everybody) {
    if (person.id == **settled && !person.removed) return person.name;
  }
  return std::string();
}

Result<EntryId> set_whom_to_ring(const Ports& ports, std::string_view said) {
  const std::string words(trimmed(said));
  if (const auto fault = fault_of(words)) return *fault;
  const Outcome erased = erase_before(ports);
  if (!erased) return erased.faults();
  if (fold_case(words) == ring_nobody) return settle_for_business(ports, ring_setting, ring_nobody);
  Person person;
  person.id = PersonId{ports.ids.next()};
  person.name = words;
  const Outcome added = ports.directory.add(person);
  if (!added) return added.faults();
  return settle_for_business(ports, ring_setting, to_text(person.id));
}

}  // namespace evenclaw
