#include "core/log/cow_passport.hpp"

#include <algorithm>
#include <optional>
#include <set>
#include <utility>
#include <vector>

#include "core/log/cow_life.hpp"
#include "core/trade/national_tag.hpp"

namespace evenclaw {

namespace {

/// In the order of their days; the total order decides on one day.
std::vector<const CowRegistered*> by_day(const CowStory& story) {
  std::vector<const CowRegistered*> told;
  told.reserve(story.registered.size());
  for (const CowRegistered& registered : story.registered) told.push_back(&registered);
  std::stable_sort(told.begin(), told.end(), [](const CowRegistered* a, const CowRegistered* b) {
    return a->valid_from < b->valid_from;
  });
  return told;
}

bool is_same_tag(const std::string& a, const std::string& b) {
  const auto first = national_tag(a);
  const auto second = national_tag(b);
  return first && second ? *first == *second : a == b;
}

class Pairs {
 public:
  explicit Pairs(const CowStory& story) : story_(story) {}

  void take(const CowRegistered& told) {
    const std::string tag = told.tag.value_or("");
    const std::string electronic = told.electronic.value_or("");
    if (tag.empty() && electronic.empty()) return;
    if (rows_.empty()) return begin(told.valid_from, tag, electronic);
    CowTagRow& now = rows_.back();
    const bool other_tag = !tag.empty() && !now.tag.empty() && !is_same_tag(tag, now.tag);
    const bool other_electronic =
        !electronic.empty() && !now.electronic.empty() && electronic != now.electronic;
    if (!other_tag && !other_electronic) {
      if (now.tag.empty()) now.tag = tag;
      if (now.electronic.empty()) now.electronic = electronic;
      return;
    }
    const std::string kept = now.tag;
    // Told anew for the same day, the pair was wrong from the beginning.
    if (now.valid_from == told.valid_from) {
      rows_.pop_back();
    } else {
      now.valid_to = told.valid_from - 1;
    }
    begin(told.valid_from, tag.empty() ? kept : tag, electronic);
  }

  std::vector<CowTagRow> rows() && { return std::move(rows_); }

 private:
  void begin(Day from, const std::string& tag, const std::string& electronic) {
    rows_.push_back({story_.herd, story_.cow, from, tag, electronic, std::nullopt});
  }

  const CowStory& story_;
  std::vector<CowTagRow> rows_;
};

std::vector<CowTagRow> tags_of(const CowStory& story) {
  Pairs pairs(story);
  for (const CowRegistered* told : by_day(story)) pairs.take(*told);
  return std::move(pairs).rows();
}

std::vector<CowAliasRow> aliases_of(const CowStory& story) {
  std::set<std::string> each_once;
  for (const CowRegistered& told : story.registered) {
    each_once.insert(told.aliases.begin(), told.aliases.end());
  }
  std::vector<CowAliasRow> rows;
  rows.reserve(each_once.size());
  for (const std::string& alias : each_once) rows.push_back({story.herd, story.cow, alias});
  return rows;
}

template <class T>
void tell(std::optional<T>& known, const std::optional<T>& told) {
  if (told) known = told;
}

CowFactsRow facts_row(const CowStory& story) {
  CowFactsRow row;
  row.herd = story.herd;
  row.cow = story.cow;
  LactationTold lactation;
  for (const CowRegistered* told : by_day(story)) {
    tell(row.breed, told->breed);
    tell(row.born, told->born);
    tell(row.heifer_or_cow, told->heifer_or_cow);
    if (told->heifer_or_cow) row.heifer_or_cow_on = told->valid_from;
    tell(row.weight, told->weight);
    tell(row.calved, told->calved);
    tell(row.lactation, told->lactation);
    if (told->lactation) lactation.lactation_on = told->valid_from;
    tell(row.dry_off, told->dry_off);
    tell(row.due_to_calve, told->due_to_calve);
  }
  add_life(story.life, lactation, row);
  return row;
}

bool says_anything(const CowFactsRow& row) {
  return row.breed || row.born || row.heifer_or_cow || row.weight || row.calved || row.lactation ||
         row.dry_off || row.due_to_calve;
}

}  // namespace

void add_passport(const CowStory& story, Rows& rows) {
  rows.cow_tags = tags_of(story);
  rows.cow_aliases = aliases_of(story);
  rows.cow_life = life_rows_of(story);
  CowFactsRow facts = facts_row(story);
  if (says_anything(facts)) rows.cow_facts.push_back(std::move(facts));
}

std::string known_by(const CowStory& story) {
  const std::vector<CowAliasRow> aliases = aliases_of(story);
  if (!aliases.empty()) return aliases.front().alias;
  const std::vector<CowTagRow> tags = tags_of(story);
  if (tags.empty()) return {};
  return tags.back().electronic.empty() ? tags.back().tag : tags.back().electronic;
}

}  // namespace evenclaw
