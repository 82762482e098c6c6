#include "core/api/importing/known_herd.hpp"

#include <algorithm>
#include <cassert>
#include <utility>

#include "core/base/text.hpp"
#include "core/trade/after_leaving.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/national_tag.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

namespace {

bool is_same_cow_once(const std::vector<CowId>& cows, CowId cow) {
  return std::find(cows.begin(), cows.end(), cow) != cows.end();
}

void add_once(std::vector<CowId>& cows, CowId cow) {
  if (!is_same_cow_once(cows, cow)) cows.push_back(cow);
}

/// She neither arrived nor stood in the crush after that day.
bool holds_till_now(const KnownCow& cow, Day left) {
  if (cow.last_in_crush && *cow.last_in_crush >= left) return false;
  return std::none_of(cow.life.begin(), cow.life.end(), [&](const LifeEventTold& event) {
    return event.event == LifeEvent::arrived && event.day > left;
  });
}

template <class Row, class F>
Outcome for_each_row(Store& store, HerdId herd, F&& each, std::vector<Filter> where = {}) {
  const auto rows = select_as<Row>(store, herd, std::move(where));
  if (!rows) return rows.faults();
  for (const Row& row : *rows) each(row);
  return Done{};
}

}  // namespace

std::string tag_key(std::string_view tag) {
  if (tag.empty()) return {};
  const auto read = national_tag(tag);
  return read ? read->country + plain_number(read->digits) : std::string();
}

std::optional<Day> left_on(const KnownCow& cow) {
  std::optional<Day> first;
  const auto consider = [&](Day day) {
    if (holds_till_now(cow, day) && (!first || day < *first)) first = day;
  };
  for (const LifeEventTold& event : cow.life) {
    if (event.event == LifeEvent::left) consider(event.day);
  }
  // Told in words it stands in her row, and that she came back is known to it already.
  if (cow.row.left_on) {
    const bool arrived_since =
        std::any_of(cow.life.begin(), cow.life.end(), [&](const LifeEventTold& event) {
          return event.event == LifeEvent::arrived && event.day > *cow.row.left_on;
        });
    const bool is_earlier = !first || *cow.row.left_on < *first;
    if (!arrived_since && is_earlier) first = cow.row.left_on;
  }
  return first;
}

const LifeEventTold* event_of_key(const KnownCow& cow, const LifeEventTold& event) {
  for (const LifeEventTold& known : cow.life) {
    if (is_same_event(known, event)) return &known;
  }
  return nullptr;
}

const LifeEventTold* last_calving_of(const KnownCow& cow) {
  const LifeEventTold* last = nullptr;
  for (const LifeEventTold& event : cow.life) {
    if (event.event == LifeEvent::calved) last = &event;
  }
  return last;
}

std::optional<Day> last_calved_of(const KnownCow& cow) {
  const LifeEventTold* calving = last_calving_of(cow);
  if (calving == nullptr) return cow.facts.calved;
  return std::max(calving->day, cow.facts.calved.value_or(calving->day));
}

Result<KnownHerd> KnownHerd::read(Store& store, HerdId herd) {
  KnownHerd known(herd);
  auto& cows = known.cows_;
  Outcome read =
      for_each_row<CowRow>(store, herd, [&](const CowRow& row) { cows[row.cow].row = row; });
  if (read) {
    read = for_each_row<CowNumberRow>(store, herd, [&](const CowNumberRow& row) {
      cows[row.cow].numbers.push_back(row);
      add_once(known.by_number_[row.number], row.cow);
    });
  }
  if (read) {
    read = for_each_row<CowTagRow>(store, herd, [&](const CowTagRow& row) {
      cows[row.cow].tags.push_back(row);
      if (!row.tag.empty()) add_once(known.by_tag_[tag_key(row.tag)], row.cow);
      if (!row.electronic.empty()) add_once(known.by_tag_[row.electronic], row.cow);
    });
  }
  if (read) {
    read = for_each_row<CowAliasRow>(
        store, herd, [&](const CowAliasRow& row) { cows[row.cow].names.push_back(row.alias); });
  }
  if (read) {
    read = for_each_row<CowFactsRow>(store, herd,
                                     [&](const CowFactsRow& row) { cows[row.cow].facts = row; });
  }
  if (read) {
    read = for_each_row<CowLifeRow>(
        store, herd, [&](const CowLifeRow& row) { cows[row.cow].life.push_back(event_of(row)); });
  }
  if (read) {
    read = for_each_row<PastFindingRow>(store, herd, [&](const PastFindingRow& row) {
      cows[row.cow].findings.push_back({finding_of(row), row.source.value_or("")});
    });
  }
  if (read) {
    read = for_each_row<TurnRow>(store, herd, [&](const TurnRow& row) {
      std::optional<Day>& last = cows[row.cow].last_in_crush;
      if (row.end != TurnEnd::not_done && (!last || *last < row.day)) last = row.day;
    });
  }
  if (read) {
    read = for_each_row<TaskRow>(store, herd,
                                 [&](const TaskRow& row) {
                                   if (ends_when_she_leaves(row))
                                     cows[row.cow].open_tasks.push_back(row.task);
                                 },
                                 {{"open", Compare::equal, Cell(std::int64_t{1})}});
  }
  if (!read) return read.faults();
  return known;
}

const KnownCow* KnownHerd::find(CowId cow) const {
  const auto at = cows_.find(cow);
  return at == cows_.end() ? nullptr : &at->second;
}

KnownCow& KnownHerd::cow(CowId cow) {
  const auto at = cows_.find(cow);
  assert(at != cows_.end() && "a cow that is not on record");
  return at->second;
}

KnownCow& KnownHerd::enter(CowId cow, Day first_day) {
  KnownCow& entered = cows_[cow];
  entered.row.herd = herd_;
  entered.row.cow = cow;
  entered.row.first_seen = first_day;
  return entered;
}

void KnownHerd::give_number(CowId id, const std::string& plain, Day from) {
  KnownCow& given = cow(id);
  for (CowNumberRow& row : given.numbers) {
    if (!row.valid_to) row.valid_to = from - 1;
  }
  given.numbers.push_back({herd_, id, plain, from, std::nullopt});
  given.row.number = plain;
  add_once(by_number_[plain], id);
}

void KnownHerd::give_tag(CowId id, const std::string& tag, const std::string& electronic,
                         Day from) {
  KnownCow& tagged = cow(id);
  CowTagRow row = tagged.tags.empty() ? CowTagRow{} : tagged.tags.back();
  row.herd = herd_;
  row.cow = id;
  row.valid_from = from;
  if (!tag.empty()) row.tag = tag;
  if (!electronic.empty()) row.electronic = electronic;
  tagged.tags.push_back(row);
  if (!tag.empty()) add_once(by_tag_[tag_key(tag)], id);
  if (!electronic.empty()) add_once(by_tag_[electronic], id);
}

std::vector<CowId> KnownHerd::wearing(const std::string& key) const {
  const auto at = by_tag_.find(key);
  return at == by_tag_.end() ? std::vector<CowId>() : at->second;
}

std::vector<Carrying> KnownHerd::carrying(const std::string& plain) const {
  std::vector<Carrying> all;
  const auto at = by_number_.find(plain);
  if (at == by_number_.end()) return all;
  for (const CowId id : at->second) {
    const KnownCow& known = cows_.at(id);
    const std::optional<Day> left = left_on(known);
    for (const CowNumberRow& row : known.numbers) {
      if (row.number != plain) continue;
      std::optional<Day> to = row.valid_to;
      if (left && (!to || *left < *to)) to = left;
      all.push_back({id, row.valid_from, to});
    }
  }
  std::sort(all.begin(), all.end(), [](const Carrying& a, const Carrying& b) {
    return std::pair(a.from, a.cow) < std::pair(b.from, b.cow);
  });
  return all;
}

}  // namespace evenclaw
