#include "core/log/cow_life.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <utility>

namespace evenclaw {

namespace {

constexpr int shortest_pregnancy_days = 200;
constexpr int same_drying_off_within_days = 60;

using EventKey = std::pair<Day, LifeEvent>;

void tell_again(LifeEventTold& known, const LifeEventTold& told) {
  if (told.lactation) known.lactation = told.lactation;
  if (told.way != LeavingWay::not_told) known.way = told.way;
  if (told.reason != LeavingReason::not_told) known.reason = told.reason;
  if (!told.words.empty()) known.words = told.words;
}

void take(const Told<LifeTold>& entry, const LifeEventTold& event,
          std::map<EventKey, LifeStanding>& standing) {
  const auto [at, is_new] = standing.try_emplace({event.day, event.event});
  if (!is_new) return tell_again(at->second.told, event);
  at->second = {entry.entry, event, entry.body.source, {}, entry.moment.nth, entry.body.cow};
  if (event.event == LifeEvent::left) at->second.closes = entry.body.closes;
}

std::string why_gone(const LifeEventTold& event) {
  if (!event.words.empty()) return event.words;
  return event.way == LeavingWay::not_told ? "left" : std::string(word_of(event.way));
}

const LifeStanding* last_of(std::span<const LifeStanding> life, LifeEvent event) {
  const LifeStanding* last = nullptr;
  for (const LifeStanding& standing : life) {
    if (standing.told.event == event) last = &standing;
  }
  return last;
}

}  // namespace

std::vector<LifeStanding> standing_events(std::span<const Told<LifeTold>> told) {
  std::map<EventKey, LifeStanding> standing;
  for (const Told<LifeTold>& entry : told) {
    for (const LifeEventNot& wrong : entry.body.not_so) standing.erase({wrong.day, wrong.event});
    for (const LifeEventTold& event : entry.body.events) take(entry, event, standing);
  }
  std::vector<LifeStanding> events;
  events.reserve(standing.size());
  for (auto& [key, event] : standing) events.push_back(std::move(event));
  return events;
}

std::vector<Told<CowLeft>> leavings_among(std::span<const LifeStanding> life) {
  std::vector<Told<CowLeft>> leavings;
  for (const LifeStanding& event : life) {
    if (event.told.event != LifeEvent::left) continue;
    leavings.push_back({event.entry,
                        {event.cow, event.told.day, why_gone(event.told), event.closes},
                        {event.told.day, event.nth}});
  }
  return leavings;
}

bool arrived_after(std::span<const LifeStanding> life, Day day) {
  return std::any_of(life.begin(), life.end(), [&](const LifeStanding& event) {
    return event.told.event == LifeEvent::arrived && event.told.day > day;
  });
}

std::vector<CowLifeRow> life_rows_of(const CowStory& story) {
  std::vector<CowLifeRow> rows;
  rows.reserve(story.life.size());
  for (const LifeStanding& event : story.life) {
    const LifeEventTold& told = event.told;
    CowLifeRow row{story.herd, story.cow,   told.day,   told.event, told.lactation,
                   told.way,   told.reason, told.words, {}};
    if (event.source) row.source = to_text(*event.source);
    rows.push_back(std::move(row));
  }
  return rows;
}

void add_life(std::span<const LifeStanding> life, const LactationTold& told, CowFactsRow& facts) {
  const LifeStanding* calving = last_of(life, LifeEvent::calved);
  const bool is_last = calving != nullptr && (!facts.calved || calving->told.day >= *facts.calved);
  if (is_last) {
    const Day day = calving->told.day;
    const bool is_told_since = told.lactation_on && *told.lactation_on >= day;
    if (!is_told_since) facts.lactation = calving->told.lactation;
    if (!facts.lactation) facts.lactation = calving->told.lactation;
    facts.calved = day;
    if (facts.dry_off && *facts.dry_off < day) facts.dry_off.reset();
    if (facts.due_to_calve && *facts.due_to_calve < day + shortest_pregnancy_days) {
      facts.due_to_calve.reset();
    }
  }
  const LifeStanding* dry = last_of(life, LifeEvent::dried_off);
  const bool is_since = dry != nullptr && (!facts.calved || dry->told.day >= *facts.calved);
  if (!is_since) return;
  const bool is_planned_later =
      facts.dry_off && *facts.dry_off >= dry->told.day + same_drying_off_within_days;
  if (!is_planned_later) facts.dry_off = dry->told.day;
}

}  // namespace evenclaw
