#include "core/api/herd_list.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/cow_register.hpp"
#include "core/api/journal.hpp"
#include "core/base/text.hpp"
#include "core/exchange/cow_list.hpp"
#include "core/exchange/csv.hpp"
#include "core/log/bodies.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/identity_rows.hpp"
#include "core/trade/national_tag.hpp"

namespace evenclaw {

namespace {

/// All that is known of a cow and the list may tell otherwise.
struct KnownCow {
  CowRow row;
  std::vector<CowNumberRow> numbers;
  std::vector<CowTagRow> tags;  // the newest last
  std::vector<std::string> names;
  CowFactsRow facts;
};

using KnownCows = std::map<CowId, KnownCow>;

Result<KnownCows> known_cows(Store& store, HerdId herd) {
  KnownCows known;
  const auto cows = select_as<CowRow>(store, herd);
  if (!cows) return cows.faults();
  for (const CowRow& row : *cows) known[row.cow].row = row;
  const auto numbers = select_as<CowNumberRow>(store, herd, {}, {"valid_from"});
  if (!numbers) return numbers.faults();
  for (const CowNumberRow& row : *numbers) known[row.cow].numbers.push_back(row);
  const auto tags = select_as<CowTagRow>(store, herd, {}, {"valid_from"});
  if (!tags) return tags.faults();
  for (const CowTagRow& row : *tags) known[row.cow].tags.push_back(row);
  const auto names = select_as<CowAliasRow>(store, herd);
  if (!names) return names.faults();
  for (const CowAliasRow& row : *names) known[row.cow].names.push_back(fold_case(row.alias));
  const auto facts = select_as<CowFactsRow>(store, herd);
  if (!facts) return facts.faults();
  for (const CowFactsRow& row : *facts) known[row.cow].facts = row;
  return known;
}

bool is_same_tag(const std::string& a, const std::string& b) {
  const auto first = national_tag(a);
  const auto second = national_tag(b);
  return first && second && *first == *second;
}

/// On that day, or from a later one on: a list may be older than her first visit.
bool carries(const KnownCow& cow, const std::string& number, Day day) {
  return std::any_of(cow.numbers.begin(), cow.numbers.end(), [&](const CowNumberRow& row) {
    return row.number == number && (!row.valid_to || day <= *row.valid_to);
  });
}

bool wears(const KnownCow& cow, const CowRegistered& told) {
  return std::any_of(cow.tags.begin(), cow.tags.end(), [&](const CowTagRow& row) {
    const bool same_electronic = told.electronic && row.electronic == *told.electronic;
    return same_electronic || (told.tag && is_same_tag(*told.tag, row.tag));
  });
}

template <class T>
void leave_out_known(std::optional<T>& told, const std::optional<T>& known) {
  if (told == known) told.reset();
}

/// What differs from what is known of her.
CowRegistered only_new(CowRegistered told, const KnownCow& cow) {
  if (!cow.tags.empty()) {
    const CowTagRow& now = cow.tags.back();
    if (told.tag && is_same_tag(*told.tag, now.tag)) told.tag.reset();
    if (told.electronic == now.electronic) told.electronic.reset();
  }
  std::erase_if(told.aliases, [&](const std::string& name) {
    return std::find(cow.names.begin(), cow.names.end(), fold_case(name)) != cow.names.end();
  });
  leave_out_known(told.breed, cow.facts.breed);
  leave_out_known(told.born, cow.facts.born);
  leave_out_known(told.heifer_or_cow, cow.facts.heifer_or_cow);
  leave_out_known(told.calved, cow.facts.calved);
  leave_out_known(told.lactation, cow.facts.lactation);
  leave_out_known(told.dry_off, cow.facts.dry_off);
  leave_out_known(told.due_to_calve, cow.facts.due_to_calve);
  return told;
}

CowDetails details_of(const CowListed& listed) {
  CowDetails details;
  details.tag = listed.tag;
  details.electronic = listed.electronic;
  details.alias = listed.name;
  details.breed = listed.breed;
  details.born = listed.born;
  details.heifer_or_cow = listed.heifer_or_cow;
  details.calved = listed.calved;
  details.lactation = listed.lactation;
  details.dry_off = listed.dry_off;
  details.due_to_calve = listed.due_to_calve;
  return details;
}

class Taking {
 public:
  Taking(HerdId herd, const KnownCows& known, Day from, bool sure)
      : herd_(herd), known_(known), from_(from), sure_(sure) {}

  void take(const CowListed& listed) {
    ++taken.cows;
    line_ = listed.line;
    auto told = told_of_her(details_of(listed), from_);
    if (!told) {
      for (Fault fault : told.faults()) add_fault(std::move(fault));
      return;
    }
    told->number = listed.number;
    if (!sure_) {
      if (auto asked = asked_of_reader(*told)) add_fault(*std::move(asked));
    }
    const std::set<CowId> meant = cows_meant(*told);
    if (meant.size() > 1) return name_two(meant, listed);
    if (meant.empty()) return enter(*std::move(told));
    tell_more(*std::move(told), *meant.begin());
  }

  HerdListTaken taken;
  std::vector<CowRegistered> bodies;
  Faults faults;

 private:
  void add_fault(Fault fault) {
    fault.line = line_;
    faults.push_back(std::move(fault));
  }

  void ask(std::string message, std::string token, std::string remedy) {
    if (sure_) return;
    add_fault({.slug = "answer-needed",
               .message = std::move(message),
               .token = std::move(token),
               .remedy = std::move(remedy)});
  }

  [[nodiscard]] std::set<CowId> cows_meant(const CowRegistered& told) const {
    const std::string number = plain_number(told.number);
    std::set<CowId> meant;
    for (const auto& [id, cow] : known_) {
      const bool by_number = !number.empty() && !cow.row.left_on && carries(cow, number, from_);
      if (wears(cow, told) || by_number) meant.insert(id);
    }
    return meant;
  }

  void name_two(const std::set<CowId>& meant, const CowListed& listed) {
    std::string names;
    for (const CowId id : meant) {
      names += (names.empty() ? "" : " and ") + recorded_as(known_.at(id).row);
    }
    add_fault(list_unreadable(
        0, "the line is of one cow, and its numbers are those of " + names + " on record",
        listed.number, "Mend the line, or say that they are one: evenclaw cow same."));
  }

  void enter(CowRegistered told) {
    const std::string number = plain_number(told.number);
    for (const auto& [id, cow] : known_) {
      if (number.empty() || !cow.row.left_on || !carries(cow, number, from_)) continue;
      ask(number + " was said to be gone. Is this another cow with her number?", number,
          "If she is back say so: evenclaw cow same " + number + " " + number +
              "; if it is another one say that you are sure.");
    }
    told.cow = registered_cow_id(herd_, strongest_identifier(told), from_);
    bodies.push_back(std::move(told));
    ++taken.entered;
  }

  void tell_more(CowRegistered told, CowId id) {
    const KnownCow& cow = known_.at(id);
    const std::string name = recorded_as(cow.row);
    CowRegistered fresh = only_new(std::move(told), cow);
    fresh.cow = id;
    if (fresh.number.empty() || carries(cow, plain_number(fresh.number), from_)) {
      fresh.number.clear();
    }
    if (fresh.number.empty() && !tells_anything(fresh)) {
      ++taken.unchanged;
      return;
    }
    ask_what_differs(fresh, cow, name);
    bodies.push_back(std::move(fresh));
    ++taken.told_more;
  }

  /// What is filled in needs no question; what was known otherwise does.
  void ask_what_differs(const CowRegistered& fresh, const KnownCow& cow, const std::string& name) {
    const bool has_number = !cow.row.number.empty();
    if (!fresh.number.empty() && has_number) {
      ask("she is " + name + " on record, and here " + fresh.number, fresh.number,
          "If her number is another one now say that you are sure.");
    }
    const CowTagRow now = cow.tags.empty() ? CowTagRow{} : cow.tags.back();
    if (fresh.tag && !now.tag.empty()) {
      ask(name + " is known with the tag " + tag_as_printed(now.tag), *fresh.tag,
          "If she has a new one, or the other was wrong, say that you are sure.");
    }
    if (fresh.electronic && !now.electronic.empty()) {
      ask(name + " is known with the electronic number " + now.electronic, *fresh.electronic,
          "If she has a new one, or the other was wrong, say that you are sure.");
    }
    if (fresh.calved && cow.facts.calved && *fresh.calved < *cow.facts.calved) {
      ask(name + " is known to have calved later, on " + to_text(*cow.facts.calved),
          to_text(*fresh.calved), "If the list is not older say that you are sure.");
    }
  }

  HerdId herd_;
  const KnownCows& known_;
  Day from_;
  bool sure_;
  int line_ = 0;
};

}  // namespace

Result<HerdListTaken> take_herd_list(const Ports& ports, HerdId herd,
                                     std::span<const std::string> lines, Day from, bool sure) {
  auto list = cow_list(lines);
  if (!list) return list.faults();
  const auto known = known_cows(ports.store, herd);
  if (!known) return known.faults();
  Taking taking(herd, *known, from, sure);
  for (const CowListed& cow : list->cows) taking.take(cow);
  if (!taking.faults.empty()) return std::move(taking.faults);
  taking.taken.not_read = std::move(list->not_read);
  if (taking.bodies.empty()) return std::move(taking.taken);
  auto journal = Journal::open(ports, herd.value);
  if (!journal) return journal.faults();
  for (const CowRegistered& body : taking.bodies) {
    const Outcome added = journal->add(body, {.id = journal->fresh_id()});
    if (!added) return added.faults();
  }
  const auto kept = journal->write();
  if (!kept) return kept.faults();
  return std::move(taking.taken);
}

}  // namespace evenclaw
