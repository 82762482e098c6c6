#include "core/api/people.hpp"

#include <algorithm>

#include "core/base/edit_distance.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t long_name = 6;

Fault name_missing() {
  return {.slug = "usage", .message = "A person needs a name.", .remedy = "Say the name."};
}

Fault name_cannot_be_shown() {
  return {.slug = "usage",
          .message = "The name holds a character that cannot be shown.",
          .remedy = "Write it in letters, on one line."};
}

Fault two_names(const std::string& said) {
  return {.slug = "usage",
          .message = said + " are two names; one person calls, and one writes, at a time.",
          .token = said,
          .remedy = "Say one name, and the other one when that person takes over."};
}

bool joins(const Language& language, const std::vector<Token>& tokens, std::size_t at) {
  const Phrase* phrase = language.longest_match(tokens, at).phrase;
  return phrase != nullptr && phrase->kind == TermKind::conjunction;
}

/// The person whose name is nearest to what was said, when it is near enough for a slip of the pen.
Person near_person(const std::vector<Person>& everybody, std::string_view said) {
  const std::string folded = fold_case(said);
  std::size_t nearest = character_count(said) >= long_name ? 2 : 1;
  Person near;
  for (const Person& person : everybody) {
    if (person.removed || person.name.empty()) continue;
    const std::size_t distance = edit_distance(folded, fold_case(person.name));
    if (distance > nearest || (distance == nearest && !near.name.empty())) continue;
    nearest = distance;
    near = person;
  }
  return near;
}

}  // namespace

bool names_two_people(std::string_view name) {
  const std::string_view said = trimmed(name);
  if (said.find_first_of("&+/,;") != std::string_view::npos) return true;
  const std::vector<Token> tokens = tokens_of(said);
  for (std::size_t at = 1; at + 1 < tokens.size(); ++at) {
    if (joins(english(), tokens, at) || joins(german(), tokens, at)) return true;
  }
  return false;
}

namespace {

Fault are_they_one(const std::string& said, const std::string& nearest) {
  return {.slug = "answer-needed",
          .message = "Is " + said + " the same as " + nearest + "?",
          .token = said,
          .remedy = "Write " + nearest + ", or say that " + said + " is somebody else."};
}

}  // namespace

Result<std::variant<PersonId, NameInDoubt>> person_named(const Ports& ports, std::string_view name,
                                                         bool sure) {
  using Answer = std::variant<PersonId, NameInDoubt>;
  const std::string said(trimmed(name));
  if (said.empty()) return name_missing();
  if (!is_one_plain_line(said)) return name_cannot_be_shown();
  auto known = ports.directory.find(said);
  if (!known) return known.faults();
  if (*known) return Answer((*known)->id);
  if (names_two_people(said)) return two_names(said);
  if (!sure) {
    const auto everybody = ports.directory.everybody();
    if (!everybody) return everybody.faults();
    Person near = near_person(*everybody, said);
    if (!near.name.empty()) return Answer(NameInDoubt{said, std::move(near.name), near.id});
  }
  Person person;
  person.id = PersonId{ports.ids.next()};
  person.name = said;
  const Outcome added = ports.directory.add(person);
  if (!added) return added.faults();
  return Answer(person.id);
}

Result<PersonId> certain_person(const Ports& ports, std::string_view name, bool sure) {
  auto answer = person_named(ports, name, sure);
  if (!answer) return answer.faults();
  if (const auto* doubt = std::get_if<NameInDoubt>(&*answer)) {
    return are_they_one(doubt->said, doubt->nearest);
  }
  return std::get<PersonId>(*answer);
}

Outcome check_people(const Ports& ports, const std::vector<std::string>& names, bool sure) {
  auto everybody = ports.directory.everybody();
  if (!everybody) return everybody.faults();
  for (const std::string& name : names) {
    const std::string said(trimmed(name));
    if (said.empty()) continue;
    if (!is_one_plain_line(said)) return name_cannot_be_shown();
    const std::string folded = fold_case(said);
    const bool is_known = std::any_of(
        everybody->begin(), everybody->end(),
        [&](const Person& person) { return !person.removed && fold_case(person.name) == folded; });
    if (is_known) continue;
    if (names_two_people(said)) return two_names(said);
    const Person near = sure ? Person{} : near_person(*everybody, said);
    if (!near.name.empty()) return are_they_one(said, near.name);
    Person entered;
    entered.name = said;
    everybody->push_back(std::move(entered));
  }
  return Done{};
}

Result<PersonId> remove_person(const Ports& ports, std::string_view name) {
  const std::string said(trimmed(name));
  auto known = ports.directory.find(said);
  if (!known) return known.faults();
  if (!*known) {
    const auto everybody = ports.directory.everybody();
    if (!everybody) return everybody.faults();
    Fault fault{
        .slug = "person-not-found", .message = "Nobody is called " + said + ".", .token = said};
    const std::string nearest = near_person(*everybody, said).name;
    if (!nearest.empty()) fault.remedy = "Did you mean " + nearest + "?";
    return fault;
  }
  const PersonId id = (*known)->id;
  const Outcome removed = ports.directory.remove(id);
  if (!removed) return removed.faults();
  return id;
}

std::string name_of(const std::vector<Person>& everybody, PersonId person) {
  return person.is_nil() ? std::string() : shown_name(everybody, person);
}

}  // namespace evenclaw
