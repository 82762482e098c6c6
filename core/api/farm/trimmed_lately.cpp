#include "core/api/farm/trimmed_lately.hpp"

#include <algorithm>

#include "core/trade/cow_rows.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/mobility_scoring.hpp"

namespace evenclaw {

Result<TrimmedLately> TrimmedLately::open(Store& store, HerdId herd, Day day) {
  const Cell first(to_text(day - days_a_trim_shows));
  const Cell last(to_text(day));
  const auto turns = select_as<TurnRow>(
      store, herd, {{"day", Compare::at_least, first}, {"day", Compare::at_most, last}});
  if (!turns) return turns.faults();
  TrimmedLately trimmed(day);
  for (const TurnRow& turn : *turns) {
    if (turn.lifted.empty()) continue;
    const auto [at, is_new] = trimmed.last_.try_emplace(turn.cow, turn.day);
    if (!is_new) at->second = std::max(at->second, turn.day);
  }
  return trimmed;
}

std::optional<std::int32_t> TrimmedLately::days_before(CowId cow) const {
  const auto at = last_.find(cow);
  return at == last_.end() ? std::nullopt : std::optional<std::int32_t>(day_ - at->second);
}

}  // namespace evenclaw
