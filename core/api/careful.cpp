#include "core/api/careful.hpp"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/herds.hpp"
#include "core/api/said_day.hpp"
#include "core/trade/cow_rows.hpp"

namespace evenclaw {

namespace {

std::optional<Day> last_said_in(const std::vector<HandlingRow>& rows) {
  std::optional<Day> last;
  for (const HandlingRow& row : rows) {
    if (!row.over_on && (!last || *last < row.last_said)) last = row.last_said;
  }
  return last;
}

}  // namespace

std::string told_of_handling(const std::vector<HandlingRow>& rows, Day today) {
  const std::optional<Day> last = last_said_in(rows);
  if (!last) return {};
  return spoken(standing_in(rows)) + " (" + said_day(*last, today) + ")";
}

Result<std::vector<CarefulWith>> careful_with(Store& store, std::optional<HerdId> herd) {
  const auto rows = select_as<HandlingRow>(store, herd);
  if (!rows) return rows.faults();
  if (rows->empty()) return std::vector<CarefulWith>();
  const auto cows = select_as<CowRow>(store, herd);
  if (!cows) return cows.faults();
  const auto herds = all_herds(store);
  if (!herds) return herds.faults();
  std::map<HerdId, std::string> names;
  for (const Herd& known : *herds) names[known.herd] = known.name;
  std::map<std::pair<HerdId, CowId>, std::vector<HandlingRow>> of_cow;
  for (const HandlingRow& row : *rows) of_cow[{row.herd, row.cow}].push_back(row);
  std::vector<CarefulWith> all;
  for (const CowRow& cow : *cows) {
    const auto hers = of_cow.find({cow.herd, cow.cow});
    if (hers == of_cow.end() || cow.left_on) continue;
    const std::optional<Day> last = last_said_in(hers->second);
    if (!last) continue;
    all.push_back({cow.herd, names[cow.herd], cow.cow, recorded_as(cow),
                   spoken(standing_in(hers->second)), *last});
  }
  std::sort(all.begin(), all.end(), [](const CarefulWith& a, const CarefulWith& b) {
    return std::tuple(a.herd_name, a.herd, a.cow_said.size(), a.cow_said, a.cow) <
           std::tuple(b.herd_name, b.herd, b.cow_said.size(), b.cow_said, b.cow);
  });
  return all;
}

}  // namespace evenclaw
