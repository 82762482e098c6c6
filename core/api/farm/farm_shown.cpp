#include "core/api/farm/farm_shown.hpp"

#include <algorithm>

#include "core/api/herd_log.hpp"

namespace evenclaw {

Result<std::vector<MobilityScoringRow>> scorings_of(Store& store, HerdId herd) {
  auto rows = select_as<MobilityScoringRow>(store, herd, {}, {"day"});
  if (!rows) return rows.faults();
  std::reverse(rows->begin(), rows->end());
  return *std::move(rows);
}

Result<std::vector<MobilityScoreRow>> scores_of(Store& store, HerdId herd, CowId cow) {
  HerdLog log(store, herd);
  const auto groups = log.groups();
  if (!groups) return groups.faults();
  std::vector<MobilityScoreRow> scores;
  for (const CowId each : groups->group_of(cow)) {
    const auto rows =
        select_as<MobilityScoreRow>(store, herd, {{"cow", Compare::equal, Cell(to_text(each))}});
    if (!rows) return rows.faults();
    scores.insert(scores.end(), rows->begin(), rows->end());
  }
  std::stable_sort(
      scores.begin(), scores.end(),
      [](const MobilityScoreRow& a, const MobilityScoreRow& b) { return a.day > b.day; });
  return scores;
}

Result<std::vector<FarmWalkRow>> walks_of(Store& store, HerdId herd) {
  auto rows = select_as<FarmWalkRow>(store, herd, {}, {"place", "walk", "position"});
  if (!rows) return rows.faults();
  std::stable_sort(rows->begin(), rows->end(),
                   [](const FarmWalkRow& a, const FarmWalkRow& b) { return a.day > b.day; });
  return *std::move(rows);
}

Result<std::vector<FarmChangeRow>> changes_of(Store& store, HerdId herd) {
  auto rows = select_as<FarmChangeRow>(store, herd, {}, {"day"});
  if (!rows) return rows.faults();
  std::reverse(rows->begin(), rows->end());
  return *std::move(rows);
}

}  // namespace evenclaw
