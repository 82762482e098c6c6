#include "cli/passport_text.hpp"

#include <string>
#include <vector>

#include "cli/columns.hpp"
#include "core/api/cow_register.hpp"
#include "core/api/said_day.hpp"

namespace evenclaw::cli {
namespace {

std::string tag_line(const CowTagRow& row, Day today) {
  std::vector<std::string> parts;
  if (!row.tag.empty()) parts.push_back("ear tag " + tag_as_printed(row.tag));
  if (!row.electronic.empty()) parts.push_back("electronic number " + row.electronic);
  std::string line = "  " + joined(parts, ", ");
  if (row.valid_to) line += ", until " + said_day(*row.valid_to, today);
  return line + "\n";
}

std::string_view words_of(WeightClass weight) {
  switch (weight) {
    case WeightClass::under_400_kg:
      return "under 400 kg";
    case WeightClass::from_400_kg:
      return "400 kg or more";
  }
  return "";
}

std::string facts_line(const CowFactsRow& row, Day today) {
  std::vector<std::string> parts;
  if (row.breed) parts.push_back(*row.breed);
  if (row.heifer_or_cow && *row.heifer_or_cow == HeiferOrCow::heifer) {
    // A heifer calves: the day it was told is part of it.
    parts.push_back("heifer" + (row.heifer_or_cow_on
                                    ? " on " + said_day(*row.heifer_or_cow_on, today)
                                    : std::string()));
  }
  if (row.born) parts.push_back("born " + to_text(*row.born));
  if (row.weight) parts.emplace_back(words_of(*row.weight));
  if (row.calved) parts.push_back("calved " + to_text(*row.calved));
  if (row.lactation) parts.push_back("lactation " + std::to_string(*row.lactation));
  if (row.dry_off) parts.push_back("drying off " + to_text(*row.dry_off));
  if (row.due_to_calve) parts.push_back("due to calve " + to_text(*row.due_to_calve));
  return parts.empty() ? std::string() : "  " + joined(parts, ", ") + "\n";
}

std::string event_words(const CowLifeRow& row) {
  const std::string day = to_text(row.day);
  switch (row.event) {
    case LifeEvent::arrived:
      return "arrived " + day;
    case LifeEvent::calved:
      return "calved " + day +
             (row.lactation ? " (lactation " + std::to_string(*row.lactation) + ")" : "");
    case LifeEvent::dried_off:
      return "dried off " + day;
    case LifeEvent::left:
      return "left " + day + (row.words.empty() ? "" : " (" + row.words + ")");
  }
  return {};
}

std::string life_line(const std::vector<CowLifeRow>& life) {
  if (life.empty()) return {};
  std::vector<std::string> events;
  events.reserve(life.size());
  for (const CowLifeRow& row : life) events.push_back(event_words(row));
  return wrapped_behind("  her life: ", joined(events, ", ")) + "\n";
}

}  // namespace

std::string passport_text(const CowShown& shown, Day today) {
  std::string text;
  for (const CowTagRow& row : shown.tags) text += tag_line(row, today);
  for (const CowAliasRow& row : shown.aliases) text += "  goes by " + row.alias + "\n";
  for (const CowFactsRow& row : shown.facts) text += facts_line(row, today);
  return text + life_line(shown.life);
}

}  // namespace evenclaw::cli
