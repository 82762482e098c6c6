// Whether fewer cows had something than last time, said only where two days can be compared.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// A day longer ago is not compared with (our judgement).
inline constexpr int longest_ago_days = 400;

/// The latest visit before this one that can be set beside it (docs/method/proportion.md): the same
/// feet, cows that came for routine work, enough of them, not too long ago. Nothing when there is
/// none, or when the visit itself is not of that kind. `turns` of all these visits.
std::optional<VisitId> last_comparable(const VisitRow& visit, std::span<const VisitRow> visits,
                                       std::span<const TurnRow> turns);

struct AgainstLastTime {
  std::string sentence;  // "" when the days are not compared
  std::string note;      // how it was compared
};

/// Cows with something found of cows with feet lifted, on both days. "Fewer" and "more" only where
/// the interval of the difference leaves out nought.
AgainstLastTime against_last_time(const VisitView& view);

}  // namespace evenclaw
