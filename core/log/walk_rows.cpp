#include "core/log/walk_rows.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

#include "core/log/body.hpp"
#include "core/log/visit_facts.hpp"

namespace evenclaw {

namespace {

using WalkRows = std::vector<FarmWalkRow>;

bool tells_the_same(const FarmWalkRow& a, const FarmWalkRow& b) {
  return a.value == b.value && a.words == b.words && a.fitting == b.fitting &&
         a.looked_at == b.looked_at && a.not_looked_at == b.not_looked_at;
}

void add_measured(const WalkMeasured& measured, FarmWalkRow row, WalkRows& rows) {
  row.measure = measured.measure;
  row.unit = facts_of(measured.measure).unit;
  row.value = measured.value;
  row.words = measured.words;
  row.fitting = measured.fitting;
  row.looked_at = measured.looked_at;
  row.not_looked_at = measured.not_looked_at;
  const bool ends_all = measured.mends || measured.scrapped;
  const auto gives_way = [&](const FarmWalkRow& other) {
    return other.measure == row.measure && (ends_all || other.not_looked_at);
  };
  rows.erase(std::remove_if(rows.begin(), rows.end(), gives_way), rows.end());
  const bool is_there = std::any_of(rows.begin(), rows.end(), [&](const FarmWalkRow& other) {
    return other.measure == row.measure && (row.not_looked_at || tells_the_same(other, row));
  });
  if (!measured.scrapped && !is_there) rows.push_back(std::move(row));
}

}  // namespace

void add_walk_rows(HerdId herd, VisitId walk, std::span<const Entry* const> counting, Rows& rows) {
  WalkRows measured;
  for (const Entry* entry : counting) {
    if (!names_subject(*entry, walk.value)) continue;
    const auto body = body_as<FarmWalk>(*entry);
    if (!body || body->walk != walk) continue;
    FarmWalkRow row;
    row.herd = herd;
    row.walk = walk;
    row.day = body->day;
    row.place = body->place;
    row.entry = entry->envelope.id;
    row.walker = entry->envelope.caller.value_or(PersonId{});
    row.writer = entry->envelope.writer.value_or(PersonId{});
    for (const WalkMeasured& one : body->measured) add_measured(one, row, measured);
  }
  for (std::size_t at = 0; at < measured.size(); ++at) {
    FarmWalkRow& row = measured[at];
    row.position = static_cast<std::int32_t>(at + 1);
    row.twice = std::count_if(measured.begin(), measured.end(), [&](const FarmWalkRow& other) {
                  return other.measure == row.measure;
                }) > 1;
  }
  rows.farm_walks.insert(rows.farm_walks.end(), measured.begin(), measured.end());
}

}  // namespace evenclaw
