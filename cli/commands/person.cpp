#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/people.hpp"
#include "core/api/whom_to_ring.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"ACT", "list or remove"}, {"NAME", "who is removed", false}};
constexpr Example examples[] = {
    {"evenclaw person list", "the people callers and writers are known by"},
    {"evenclaw person remove Ben", "erases the name; records read \"person removed\""}};

struct PersonListed {
  PersonId person;
  std::string name;
  bool removed = false;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("person", &PersonListed::person, "the person");
    visit("name", &PersonListed::name, "the name, or what stands in its place");
    visit("removed", &PersonListed::removed, "the name was erased");
  }
};

struct PersonErased {
  PersonId person;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("person", &PersonErased::person, "whose name was erased");
  }
};

constexpr JsonAnswer answers[] = {{"list", JsonForm::list, field_docs<PersonListed>},
                                  {"remove", JsonForm::document, field_docs<PersonErased>}};

Exit list(Records& records, const Invocation& invocation) {
  auto everybody = records.ports().directory.everybody();
  if (!everybody) return tell_faults(everybody.faults(), invocation);
  const auto ring = ring_person(records.ports());
  if (!ring) return tell_faults(ring.faults(), invocation);
  std::vector<PersonListed> listed;
  for (const Person& person : *everybody) {
    // The words of the setting `ring` lie there too, to be erased: nobody calls or writes by them.
    if (person.id == *ring) continue;
    listed.push_back({person.id, shown_name(*everybody, person.id), person.removed});
  }
  if (invocation.json) {
    print_json(listed);
    return Exit::fine;
  }
  for (const PersonListed& person : listed) std::cout << person.name << '\n';
  if (listed.empty()) std::cout << "Nobody is known by name yet.\n";
  return Exit::fine;
}

Exit remove(Records& records, const Invocation& invocation) {
  auto removed = remove_person(records.ports(), invocation.operands[1]);
  if (!removed) return tell_faults(removed.faults(), invocation);
  tell_done(invocation, "The name is erased.", PersonErased{*removed});
  return Exit::fine;
}

Exit run(const Invocation& invocation) {
  const bool lists = invocation.operands.front() == "list" && invocation.operands.size() == 1;
  const bool removes = invocation.operands.front() == "remove" && invocation.operands.size() == 2;
  if (!lists && !removes) {
    return tell_faults({{"usage", "people are listed, or one is removed", "", 0, 0,
                         "For example: evenclaw person remove Ben"}},
                       invocation);
  }
  auto records = Records::open(invocation, removes ? Opening::existing : Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  return lists ? list(**records, invocation) : remove(**records, invocation);
}

}  // namespace

extern const Command person_command = {
    "person", "the people who call and write", operands, {}, examples, run, answers};

}  // namespace evenclaw::cli
