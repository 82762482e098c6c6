#include "core/log/cow_identity.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "core/log/cow_passport.hpp"
#include "core/log/task_history.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

bool any_turn_is(const CowStory& story, CowKnown known) {
  return std::any_of(story.turns.begin(), story.turns.end(), [&](const Told<TurnRecorded>& turn) {
    return turn.body.turn.cow.known == known;
  });
}

CowKnown known_as(const CowStory& story) {
  const bool recognised = std::any_of(story.numbers.begin(), story.numbers.end(),
                                      [](const NumberTold& told) { return told.recognised; });
  if (recognised || any_turn_is(story, CowKnown::numbered)) return CowKnown::numbered;
  if (any_turn_is(story, CowKnown::doubtful)) return CowKnown::doubtful;
  return story.turns.empty() && !story.numbers.empty() ? CowKnown::numbered : CowKnown::unnumbered;
}

// As it was first said, leading zeros and all.
std::string said_for(const CowStory& story, const std::string& plain) {
  for (const NumberTold& told : story.numbers) {
    if (plain_number(told.number) == plain) return told.number;
  }
  for (const Told<TurnRecorded>& turn : story.turns) {
    if (plain_number(turn.body.turn.cow.number) == plain) return turn.body.turn.cow.number;
  }
  return {};
}

// "513 or 531", or "513" when it may be another, as she was called last.
std::string numbers_in_doubt(const CowStory& story) {
  std::string words;
  for (const Told<TurnRecorded>& turn : story.turns) {
    const CowSaid& said = turn.body.turn.cow;
    if (said.known != CowKnown::doubtful) continue;
    words = said.number;
    for (const std::string& other : said.alternatives) words += " or " + other;
  }
  return words;
}

// The numbers that begin on a day, in the order they were told, of each cow that was one of her the
// last. Cows that were taken for two on one day were both seen: both numbers are hers.
std::map<Day, std::vector<const NumberTold*>> numbers_by_day(const CowStory& story) {
  std::map<Day, std::vector<const NumberTold*>> days;
  for (const NumberTold& given : story.numbers) {
    std::vector<const NumberTold*>& told = days[given.valid_from];
    const auto of_the_same = [&](const NumberTold* other) { return other->cow == given.cow; };
    told.erase(std::remove_if(told.begin(), told.end(), of_the_same), told.end());
    told.push_back(&given);
  }
  return days;
}

bool has_ended(const CowNumberRow& row, Day day) {
  return row.valid_to && *row.valid_to < day;
}

// Told again without an end, the number is hers still.
std::optional<Day> end_told(const std::vector<const NumberTold*>& told, const std::string& number) {
  std::optional<Day> end;
  for (const NumberTold* given : told) {
    if (plain_number(given->number) == number) end = given->valid_to;
  }
  return end;
}

std::vector<Day> days_seen(const CowStory& story) {
  std::vector<Day> days;
  for (const auto& turn : story.turns) {
    if (was_there(turn)) days.push_back(turn.moment.day);
  }
  if (!days.empty()) return days;
  for (const auto& turn : story.turns) days.push_back(turn.moment.day);
  for (const auto& told : story.news) days.push_back(told.moment.day);
  for (const auto& told : story.left) days.push_back(told.moment.day);
  for (const NumberTold& told : story.numbers) days.push_back(told.valid_from);
  for (const CowRegistered& told : story.registered) days.push_back(told.valid_from);
  for (const LifeStanding& told : story.life) days.push_back(told.told.day);
  for (const PastStanding& told : story.past) days.push_back(told.told.day);
  for (const auto& told : story.moved) days.push_back(day_of(told.entry->envelope.at));
  return days;
}

}  // namespace

std::vector<CowNumberRow> numbers_of(const CowStory& story) {
  std::vector<CowNumberRow> rows;
  for (const auto& [day, told] : numbers_by_day(story)) {
    std::set<std::string> new_ones;
    for (const NumberTold* given : told) new_ones.insert(plain_number(given->number));
    for (CowNumberRow& row : rows) {
      if (has_ended(row, day)) continue;
      const bool is_told_again = new_ones.erase(row.number) > 0;
      row.valid_to = is_told_again ? end_told(told, row.number) : std::optional(day - 1);
    }
    for (const NumberTold* given : told) {
      const std::string number = plain_number(given->number);
      if (new_ones.erase(number) == 0) continue;
      rows.push_back({story.herd, story.cow, number, day, given->valid_to});
    }
  }
  return rows;
}

CowRow cow_row_of(const CowStory& story, const std::vector<CowNumberRow>& numbers) {
  CowRow row;
  row.herd = story.herd;
  row.cow = story.cow;
  row.known = known_as(story);
  for (const Told<TurnRecorded>& turn : story.turns) {
    const CowSaid& said = turn.body.turn.cow;
    if (said.known == CowKnown::numbered) row.number = plain_number(said.number);
    if (!said.looks.empty()) row.looks = said.looks;
  }
  for (const CowNumberRow& number : numbers) {
    if (!number.valid_to) row.number = number.number;
  }
  if (row.number.empty() && row.looks.empty()) row.looks = known_by(story);
  row.number_said = row.number.empty() ? numbers_in_doubt(story) : said_for(story, row.number);
  const std::vector<Day> days = days_seen(story);
  row.first_seen = *std::min_element(days.begin(), days.end());
  row.last_seen = *std::max_element(days.begin(), days.end());
  if (const Told<CowLeft>* left = left_for_good(story)) {
    row.left_on = left->moment.day;
    row.left_words = story.left.back().body.words;
  }
  return row;
}

}  // namespace evenclaw
