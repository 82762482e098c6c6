#include "core/api/importing/cow_meant.hpp"

#include <algorithm>
#include <set>
#include <utility>
#include <vector>

#include "core/api/cow_names.hpp"
#include "core/api/importing/findings_told.hpp"
#include "core/base/text.hpp"
#include "core/exchange/csv.hpp"
#include "core/trade/electronic_number.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

bool covers(const Carrying& carrying, Day day) {
  return carrying.from <= day && (!carrying.to || day <= *carrying.to);
}

/// Who gives the number back first stands first; of two who keep it the one who got it last.
bool gives_back_before(const Carrying& a, const Carrying& b) {
  if (a.to != b.to) return a.to && (!b.to || *a.to < *b.to);
  return a.from > b.from;
}

const Carrying* carrier_on(const std::vector<Carrying>& carrying, Day day) {
  const Carrying* found = nullptr;
  for (const Carrying& one : carrying) {
    if (covers(one, day) && (found == nullptr || gives_back_before(one, *found))) found = &one;
  }
  return found;
}

const Carrying* carrier_after(const std::vector<Carrying>& carrying, Day day) {
  const auto at = std::find_if(carrying.begin(), carrying.end(), [&](const Carrying& one) {
    return one.from > day && (!one.to || *one.to >= one.from);
  });
  return at == carrying.end() ? nullptr : &*at;
}

bool tells_leaving(const HerdRecord& record) {
  return std::any_of(record.events.begin(), record.events.end(),
                     [](const LifeEventTold& event) { return event.event == LifeEvent::left; });
}

/// All that it tells to have happened on a day; never when it tells of no day.
bool has_all_events(const KnownCow& cow, const HerdRecord& record) {
  if (record.finding && !has_finding(cow, *record.finding)) return false;
  return (record.finding || !record.events.empty()) &&
         std::all_of(record.events.begin(), record.events.end(), [&](const LifeEventTold& event) {
           return event_of_key(cow, event) != nullptr;
         });
}

template <class T>
bool is_known(const std::optional<T>& told, const std::optional<T>& known) {
  return !told || told == known;
}

bool is_event_known(const KnownCow& cow, const LifeEventTold& told) {
  const LifeEventTold* known = event_of_key(cow, told);
  if (known == nullptr) return false;
  return is_known(told.lactation, known->lactation) &&
         (told.way == LeavingWay::not_told || told.way == known->way) &&
         (told.reason == LeavingReason::not_told || told.reason == known->reason) &&
         (told.words.empty() || told.words == known->words);
}

bool has_name(const KnownCow& cow, const std::string& name) {
  return std::any_of(cow.names.begin(), cow.names.end(),
                     [&](const std::string& known) { return fold_case(known) == fold_case(name); });
}

std::optional<CowId> by_number(const KnownHerd& herd, const RecordAsked& asked) {
  std::vector<Carrying> carrying = herd.carrying(asked.number);
  const HerdRecord& record = *asked.record;
  std::vector<Carrying> with_events;
  std::vector<Carrying> unchanged;
  for (const Carrying& one : carrying) {
    const KnownCow& cow = *herd.find(one.cow);
    if (!has_all_events(cow, record)) continue;
    with_events.push_back(one);
    if (tells_nothing_new(cow, asked)) unchanged.push_back(one);
  }
  for (const std::vector<Carrying>* of_these : {&unchanged, &with_events}) {
    if (of_these->empty()) continue;
    const Carrying* on_the_day = carrier_on(*of_these, asked.on);
    return on_the_day != nullptr ? on_the_day->cow : of_these->front().cow;
  }
  const Carrying* found = carrier_on(carrying, asked.on);
  if (found == nullptr && !tells_leaving(record)) found = carrier_after(carrying, asked.on);
  return found == nullptr ? std::nullopt : std::optional(found->cow);
}

Fault names_two(const KnownHerd& herd, const std::set<CowId>& meant, const HerdRecord& record) {
  std::string names;
  for (const CowId cow : meant) {
    names += (names.empty() ? "" : " and ") + recorded_as(herd.find(cow)->row);
  }
  return list_unreadable(
      record.line, "the line is of one cow, and its numbers are those of " + names + " on record",
      record.number, "Mend the line, or say that they are one: evenclaw cow same.");
}

}  // namespace

RecordAsked asked_of(const HerdRecord& record, Day on) {
  RecordAsked asked{&record, plain_number(record.number), tag_key(record.tag), {}, on};
  if (record.electronic.empty()) return asked;
  if (const auto number = electronic_number(record.electronic)) {
    asked.electronic = to_text(*number);
  }
  return asked;
}

Result<std::optional<CowId>> cow_meant(const KnownHerd& herd, const RecordAsked& asked) {
  std::set<CowId> meant;
  for (const std::string* key : {&asked.tag, &asked.electronic}) {
    if (key->empty()) continue;
    const std::vector<CowId> wearing = herd.wearing(*key);
    if (!wearing.empty()) meant.insert(wearing.back());
  }
  const bool is_tagged = !meant.empty();
  if (!asked.number.empty() && !is_tagged) {
    if (const auto cow = by_number(herd, asked)) meant.insert(*cow);
  }
  // What happened long ago may stand beside the number of today.
  if (!asked.number.empty() && is_tagged && !asked.record->is_one_event) {
    const std::vector<Carrying> carrying = herd.carrying(asked.number);
    const bool is_hers = std::any_of(carrying.begin(), carrying.end(), [&](const Carrying& one) {
      return meant.count(one.cow) > 0 && covers(one, asked.on);
    });
    const Carrying* carrier = carrier_on(carrying, asked.on);
    if (!is_hers && carrier != nullptr) meant.insert(carrier->cow);
  }
  if (meant.size() > 1) return names_two(herd, meant, *asked.record);
  return meant.empty() ? std::optional<CowId>() : std::optional(*meant.begin());
}

bool tells_nothing_new(const KnownCow& cow, const RecordAsked& asked) {
  const HerdRecord& record = *asked.record;
  const std::optional<std::string> breed =
      record.breed.empty() ? std::nullopt : std::optional(record.breed);
  const bool is_named = record.name.empty() || has_name(cow, record.name);
  const bool is_finding_known = !record.finding || is_told_of_her(cow, *record.finding);
  return is_named && is_finding_known && is_known(breed, cow.facts.breed) &&
         is_known(record.born, cow.facts.born) &&
         is_known(record.heifer_or_cow, cow.facts.heifer_or_cow) &&
         is_known(record.weight, cow.facts.weight) &&
         is_known(record.lactation, cow.facts.lactation) &&
         is_known(record.dry_off, cow.facts.dry_off) &&
         is_known(record.due_to_calve, cow.facts.due_to_calve) &&
         std::all_of(record.events.begin(), record.events.end(),
                     [&](const LifeEventTold& event) { return is_event_known(cow, event); });
}

}  // namespace evenclaw
