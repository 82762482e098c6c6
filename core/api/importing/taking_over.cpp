#include "core/api/importing/taking_over.hpp"

#include <algorithm>
#include <tuple>

#include "core/api/cow_names.hpp"
#include "core/api/importing/against_record.hpp"
#include "core/base/text.hpp"
#include "core/exchange/csv.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/national_tag.hpp"

namespace evenclaw {

namespace {

/// A planned drying off within so many days after one that happened is the same (our judgement).
constexpr int same_drying_off_days = 60;

std::string key_of(const HerdRecord& record) {
  const RecordAsked asked = asked_of(record, {});
  if (!asked.tag.empty()) return asked.tag;
  return asked.electronic.empty() ? record.animal : asked.electronic;
}

std::optional<Day> leaving_day(const HerdRecord& record) {
  for (const LifeEventTold& event : record.events) {
    if (event.event == LifeEvent::left) return event.day;
  }
  return std::nullopt;
}

std::optional<Day> first_event_day(const HerdRecord& record) {
  if (!record.events.empty()) return record.events.front().day;
  if (record.finding) return record.finding->day;
  return record.passed_over_on;
}

void keep_earlier(std::optional<Day>& kept, std::optional<Day> day) {
  if (day && (!kept || *day < *kept)) kept = day;
}

void keep_later(std::optional<Day>& kept, std::optional<Day> day) {
  if (day && (!kept || *day > *kept)) kept = day;
}

/// All lines of one cow who is known by a tag, or of one animal of the file.
struct OfOneTag {
  std::optional<Day> first;
  std::optional<Day> left;
};

/// A record, the day on which its number is hers, and the first day told of her.
struct Placed {
  const HerdRecord* record;
  Day on;
  Day first;
  Day happened;
  int line;

  [[nodiscard]] auto key() const { return std::tuple(on, happened, line); }
};

Placed placed_one(const HerdRecord& record, const OfOneTag* tagged, Day from) {
  const std::optional<Day> first = first_event_day(record);
  Day on = record.is_one_event ? first.value_or(from) : leaving_day(record).value_or(from);
  if (tagged != nullptr) on = tagged->left.value_or(from);
  const std::optional<Day> first_told = tagged != nullptr ? tagged->first : first;
  return {&record, on, std::min(first_told.value_or(on), on), first.value_or(on), record.line};
}

std::vector<Placed> all_placed(const std::vector<HerdRecord>& records, Day from) {
  std::unordered_map<std::string, OfOneTag> tags;
  std::vector<std::string> keys;
  keys.reserve(records.size());
  for (const HerdRecord& record : records) {
    const std::string& key = keys.emplace_back(key_of(record));
    if (key.empty() || record.passed_over_on) continue;
    OfOneTag& tag = tags[key];
    keep_earlier(tag.first, first_event_day(record));
    keep_later(tag.left, leaving_day(record));
  }
  std::vector<Placed> placed;
  placed.reserve(records.size());
  for (std::size_t at = 0; at < records.size(); ++at) {
    const auto tag = tags.find(keys[at]);
    placed.push_back(placed_one(records[at], tag == tags.end() ? nullptr : &tag->second, from));
  }
  std::stable_sort(placed.begin(), placed.end(),
                   [](const Placed& a, const Placed& b) { return a.key() < b.key(); });
  return placed;
}

/// A number is another cow's only after the one who had it left.
Day first_day_of_number(const KnownHerd& herd, const RecordAsked& asked, Day first) {
  if (asked.number.empty()) return first;
  for (const Carrying& one : herd.carrying(asked.number)) {
    if (one.to && *one.to < asked.on && *one.to >= first) first = *one.to + 1;
  }
  return first;
}

void add_event(KnownCow& cow, const LifeEventTold& told) {
  for (LifeEventTold& known : cow.life) {
    if (!is_same_event(known, told)) continue;
    if (told.lactation) known.lactation = told.lactation;
    if (told.way != LeavingWay::not_told) known.way = told.way;
    if (told.reason != LeavingReason::not_told) known.reason = told.reason;
    if (!told.words.empty()) known.words = told.words;
    return;
  }
  const LifeEventTold* wrong = nullptr;
  if (told.event == LifeEvent::calved) wrong = calving_near(cow, told);
  if (told.event == LifeEvent::left) wrong = other_leaving(cow, told);
  while (wrong != nullptr) {
    const LifeEventTold out = *wrong;
    std::erase(cow.life, out);
    wrong = told.event == LifeEvent::calved ? calving_near(cow, told) : nullptr;
  }
  const auto behind =
      std::find_if(cow.life.begin(), cow.life.end(), [&](const LifeEventTold& known) {
        return std::pair(told.day, told.event) < std::pair(known.day, known.event);
      });
  cow.life.insert(behind, told);
}

/// What stands in the list longer than it holds is not told again.
bool is_plan_over(const KnownCow& cow, Day dry_off) {
  const std::optional<Day> calved = last_calved_of(cow);
  return std::any_of(cow.life.begin(), cow.life.end(), [&](const LifeEventTold& event) {
    return event.event == LifeEvent::dried_off && (!calved || event.day >= *calved) &&
           dry_off < event.day + same_drying_off_days;
  });
}

template <class T>
void take_over(std::optional<T>& known, const std::optional<T>& told) {
  if (told) known = told;
}

void tell_facts(KnownCow& cow, const HerdRecord& record, Day from) {
  const bool has_name = std::any_of(cow.names.begin(), cow.names.end(), [&](const auto& name) {
    return fold_case(name) == fold_case(record.name);
  });
  if (!record.name.empty() && !has_name) cow.names.push_back(record.name);
  if (!record.breed.empty()) cow.facts.breed = record.breed;
  take_over(cow.facts.born, record.born);
  take_over(cow.facts.heifer_or_cow, record.heifer_or_cow);
  take_over(cow.facts.weight, record.weight);
  for (const LifeEventTold& event : record.events) add_event(cow, event);
  const std::optional<Day> calved = last_calved_of(cow);
  if (!calved || *calved <= from) take_over(cow.facts.lactation, record.lactation);
  if (record.dry_off && !is_plan_over(cow, *record.dry_off)) cow.facts.dry_off = record.dry_off;
  const bool is_due_over = calved && record.due_to_calve &&
                           *record.due_to_calve < *calved + shortest_between_calvings_days;
  if (!is_due_over) take_over(cow.facts.due_to_calve, record.due_to_calve);
}

/// What of the facts is new; `is_otherwise` when something of it was known and is told otherwise.
struct FactsDiffer {
  CowRegistered body;
  bool is_any = false;
  bool is_otherwise = false;

  template <class T>
  void compare(std::optional<T>& into, const std::optional<T>& now,
               const std::optional<T>& before) {
    if (now == before) return;
    into = now;
    is_any = true;
    is_otherwise = is_otherwise || before.has_value();
  }
};

FactsDiffer facts_differ(const KnownCow& now, const KnownCow& before) {
  FactsDiffer differ;
  CowRegistered& body = differ.body;
  differ.compare(body.breed, now.facts.breed, before.facts.breed);
  differ.compare(body.born, now.facts.born, before.facts.born);
  differ.compare(body.heifer_or_cow, now.facts.heifer_or_cow, before.facts.heifer_or_cow);
  differ.compare(body.weight, now.facts.weight, before.facts.weight);
  differ.compare(body.lactation, now.facts.lactation, before.facts.lactation);
  differ.compare(body.dry_off, now.facts.dry_off, before.facts.dry_off);
  differ.compare(body.due_to_calve, now.facts.due_to_calve, before.facts.due_to_calve);
  return differ;
}

std::string stored_tag(const std::string& written) {
  const auto tag = national_tag(written);
  return tag ? to_text(*tag) : std::string();
}

/// A tag and electronic number as far as they differ from the pair before them.
void put_tag(const CowTagRow& is, const CowTagRow& was, CowRegistered& body) {
  if (!is.tag.empty() && is.tag != was.tag) body.tag = is.tag;
  if (!is.electronic.empty() && is.electronic != was.electronic) body.electronic = is.electronic;
}

/// Numbers, tags and names that were not known: the first of each in one body, whatever came after
/// it in its own.
std::vector<CowRegistered> identities_told(const KnownCow& now, const KnownCow& before, Day from) {
  const CowRegistered empty{now.row.cow, "", from};
  std::vector<CowRegistered> bodies = {empty};
  bool is_any = false;
  const auto body_for = [&](bool is_first, Day valid_from) -> CowRegistered& {
    is_any = true;
    if (is_first) return bodies.front();
    bodies.push_back(empty);
    bodies.back().valid_from = valid_from;
    return bodies.back();
  };
  for (std::size_t at = before.numbers.size(); at < now.numbers.size(); ++at) {
    const CowNumberRow& row = now.numbers[at];
    const bool is_last = at + 1 == now.numbers.size();
    body_for(at == before.numbers.size(), row.valid_from).number =
        is_last ? now.row.number_said : row.number;
  }
  for (std::size_t at = before.tags.size(); at < now.tags.size(); ++at) {
    const CowTagRow was = at == 0 ? CowTagRow{} : now.tags[at - 1];
    const CowTagRow& is = now.tags[at];
    put_tag(is, was, body_for(at == before.tags.size(), is.valid_from));
  }
  for (std::size_t at = before.names.size(); at < now.names.size(); ++at) {
    body_for(true, from).aliases.push_back(now.names[at]);
  }
  return is_any ? bodies : std::vector<CowRegistered>();
}

void put_facts(const CowRegistered& facts, CowRegistered& into) {
  into.breed = facts.breed;
  into.born = facts.born;
  into.heifer_or_cow = facts.heifer_or_cow;
  into.weight = facts.weight;
  into.lactation = facts.lactation;
  into.dry_off = facts.dry_off;
  into.due_to_calve = facts.due_to_calve;
}

std::vector<CowRegistered> registered_of(const KnownCow& now, const std::optional<KnownCow>& known,
                                         const TakingOverDays& days) {
  const KnownCow before = known.value_or(KnownCow{});
  const Day from = known ? days.from : now.row.first_seen;
  std::vector<CowRegistered> bodies = identities_told(now, before, from);
  const FactsDiffer facts = facts_differ(now, before);
  if (!facts.is_any) return bodies;
  // Told otherwise than it was known, it holds from the day somebody says so.
  const Day since = facts.is_otherwise ? std::max(days.from, days.today) : days.from;
  if (bodies.empty() || since != from) bodies.push_back({now.row.cow, "", since});
  put_facts(facts.body, since == from ? bodies.front() : bodies.back());
  return bodies;
}

std::string why_gone_now(const KnownCow& cow) {
  std::string words = "left";
  for (const LifeEventTold& event : cow.life) {
    if (event.event == LifeEvent::left && !event.words.empty()) words = event.words;
  }
  return words;
}

std::optional<LifeTold> life_of(const KnownCow& now, const std::optional<KnownCow>& known,
                                const Digest& source) {
  const KnownCow before = known.value_or(KnownCow{});
  LifeTold body;
  body.cow = now.row.cow;
  body.source = source;
  for (const LifeEventTold& event : now.life) {
    const LifeEventTold* was = event_of_key(before, event);
    if (was == nullptr || !(*was == event)) body.events.push_back(event);
  }
  for (const LifeEventTold& event : before.life) {
    if (event_of_key(now, event) == nullptr) body.not_so.push_back({event.event, event.day});
  }
  if (body.events.empty() && body.not_so.empty()) return std::nullopt;
  if (left_on(now) && !left_on(before)) {
    for (const TaskId task : now.open_tasks) body.closes.push_back({task, why_gone_now(now)});
  }
  return body;
}

}  // namespace

void TakingOver::take(const std::vector<HerdRecord>& records) {
  std::vector<Placed> waiting = all_placed(records, days_.from);
  // A line that could not be taken over may be of a cow whom a later line enters: read again it
  // would be, so it is now.
  for (std::size_t before = waiting.size() + 1; waiting.size() < before;) {
    before = waiting.size();
    left_out_.clear();
    std::erase_if(waiting, [&](const Placed& placed) {
      return take_one(*placed.record, placed.on, placed.first);
    });
  }
}

void TakingOver::touch(CowId id) {
  if (before_.try_emplace(id, *known_.find(id)).second) touched_.push_back(id);
}

bool TakingOver::take_one(const HerdRecord& record, Day on, Day first) {
  const RecordAsked asked = asked_of(record, on);
  const auto meant = cow_meant(known_, asked);
  if (record.passed_over_on) {
    if (!meant || !*meant) return true;
    touch(**meant);
    (void)found_here_[**meant][*record.passed_over_on];
    return true;
  }
  Faults faults;
  if (!meant) {
    faults = meant.faults();
  } else if (*meant) {
    faults = against_record(known_, **meant, asked, is_sure_);
    const Faults here = against_this_list(**meant, asked);
    faults.insert(faults.end(), here.begin(), here.end());
  } else {
    faults = against_entering(known_, asked, is_sure_);
  }
  if (!faults.empty()) {
    Faults& told = left_out_[record.line];
    told.insert(told.end(), faults.begin(), faults.end());
    return false;
  }
  if (*meant) {
    tell(**meant, asked);
  } else {
    enter(asked, first);
  }
  return true;
}

/// The record holds one pair of tags a day: of two in one list each would drive the other out,
/// whenever the list is read.
Faults TakingOver::against_this_list(CowId id, const RecordAsked& asked) const {
  const auto named = named_here_.find(id);
  if (named == named_here_.end()) return {};
  const KnownCow& cow = *known_.find(id);
  Faults faults;
  const auto compare = [&](const std::string& first, const std::string& told, bool is_new) {
    if (!is_new || first.empty() || first == told) return;
    faults.push_back(list_unreadable(
        asked.record->line, recorded_as(cow.row) + " has another tag in another line of this list",
        told, "Leave the line out; if she got a new tag take it over from a list of its own."));
  };
  compare(named->second.tag, asked.tag, is_tag_new(cow, asked));
  compare(named->second.electronic, asked.electronic, is_electronic_new(cow, asked));
  return faults;
}

void TakingOver::enter(const RecordAsked& asked, Day first) {
  const Day first_day = first_day_of_number(known_, asked, first);
  const std::string strongest = !asked.tag.empty()         ? asked.tag
                                : asked.electronic.empty() ? asked.number
                                                           : asked.electronic;
  const CowId id = registered_cow_id(known_.herd(), strongest, first_day);
  if (known_.find(id) == nullptr) {
    known_.enter(id, first_day);
    before_[id] = std::nullopt;
    touched_.push_back(id);
    if (!asked.number.empty()) known_.give_number(id, asked.number, first_day);
    known_.cow(id).row.number_said = asked.record->number;
    if (!asked.tag.empty() || !asked.electronic.empty()) {
      known_.give_tag(id, stored_tag(asked.record->tag), asked.electronic, first_day);
    }
  }
  tell(id, asked);
}

void TakingOver::tell(CowId id, const RecordAsked& asked) {
  touch(id);
  KnownCow& cow = known_.cow(id);
  if (is_number_new(known_, id, asked)) {
    known_.give_number(id, asked.number, days_.from);
    cow.row.number_said = asked.record->number;
  }
  const bool has_new_tag = is_tag_new(cow, asked);
  const bool has_new_electronic = is_electronic_new(cow, asked);
  if (has_new_tag || has_new_electronic) {
    known_.give_tag(id, has_new_tag ? stored_tag(asked.record->tag) : std::string(),
                    has_new_electronic ? asked.electronic : std::string(), days_.from);
  }
  Tags& named = named_here_[id];
  if (named.tag.empty()) named.tag = asked.tag;
  if (named.electronic.empty()) named.electronic = asked.electronic;
  tell_facts(cow, *asked.record, days_.from);
  if (const std::optional<PastFinding>& finding = asked.record->finding) {
    add_finding(cow, *finding);
    found_here_[id][finding->day].push_back(*finding);
  }
}

Faults TakingOver::left_out() const {
  Faults all;
  for (const auto& [line, faults] : left_out_) all.insert(all.end(), faults.begin(), faults.end());
  return all;
}

void TakingOver::count(const CowBodies& bodies, const std::optional<KnownCow>& before) {
  if (bodies.life) counts_.events += static_cast<int>(bodies.life->events.size());
  if (bodies.findings) {
    counts_.taken_back += static_cast<int>(bodies.findings->not_so.size());
    for (const PastFinding& told : bodies.findings->findings) {
      const bool is_known = before && has_finding(*before, told);
      if (!is_known) ++counts_.findings;
    }
  }
  const bool is_any = !bodies.registered.empty() || bodies.life || bodies.findings;
  if (!before) {
    ++counts_.entered;
  } else {
    ++(is_any ? counts_.told_more : counts_.unchanged);
  }
}

std::vector<CowBodies> TakingOver::bodies(const Digest& source, LesionScheme scheme) {
  std::vector<CowBodies> all;
  counts_ = {};
  for (const CowId id : touched_) {
    KnownCow& now = known_.cow(id);
    const std::optional<KnownCow>& before = before_.at(id);
    take_back_untold(now, found_here_[id], source);
    CowBodies bodies{registered_of(now, before, days_), life_of(now, before, source),
                     findings_told_of(now, before, source, scheme)};
    count(bodies, before);
    const bool is_any = !bodies.registered.empty() || bodies.life || bodies.findings;
    if (is_any) all.push_back(std::move(bodies));
  }
  return all;
}

}  // namespace evenclaw
