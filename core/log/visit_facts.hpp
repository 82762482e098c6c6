// What the entries that count say of visits: when they were, and whether they were closed.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <span>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/log/bodies.hpp"
#include "core/log/entry.hpp"

namespace evenclaw {

struct VisitFacts {
  const Entry* opening = nullptr;  // the first in the total order; none when it never came
  VisitOpened opened;
  bool opened_twice = false;  // on more than one device
  std::optional<Day> corrected_day;
  std::optional<FootSet> corrected_feet;
  bool closed = false;

  /// The day it counts for; nothing when neither an opening nor a corrected day is known.
  [[nodiscard]] std::optional<Day> day() const;
};

/// Of the wanted visits those of which anything is known. `counting` are entries that count, in the
/// total order; each must name the visit among its subjects.
std::map<VisitId, VisitFacts> facts_of_visits(std::span<const Entry* const> counting,
                                              const std::set<VisitId>& wanted);

bool names_subject(const Entry& entry, const Uuid& subject);

}  // namespace evenclaw
