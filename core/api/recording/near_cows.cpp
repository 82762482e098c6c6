#include "core/api/recording/near_cows.hpp"

#include <algorithm>
#include <utility>

namespace evenclaw {

namespace {

/// As long as the checks compare with a case of before.
constexpr int days_a_case_is_looked_after = 120;

}  // namespace

Result<std::vector<NearCow>> near_cows(const VisitBook& book, const CowSaid& cow,
                                       const CowPast& past) {
  std::vector<NearCow> near;
  const bool is_new = past.rows.turns.size() == past.same_visit.size();
  if (cow.known == CowKnown::unnumbered && is_new) {
    for (const std::string& number : book.finder.called_before(cow.looks)) {
      near.push_back({number, {}, false, true});
    }
  }
  if (cow.known != CowKnown::numbered || !is_new) return near;
  for (const auto& [other, number] : book.finder.slips_of(cow.number)) {
    // Who was called at this visit already is not the one who stands there now.
    if (book.before.turns_of(other) > 0) continue;
    const auto known = past_of(book, other);
    if (!known) return known.faults();
    NearCow found;
    found.number = number;
    for (const OnFootRow& row : known->rows.on_feet) {
      const bool is_from_before = row.ended == FixtureEnd::still_on && row.since < book.visit.day;
      if (is_from_before) found.on_her.push_back(row);
    }
    found.has_open_case =
        std::any_of(known->rows.cases.begin(), known->rows.cases.end(), [&](const CaseRow& row) {
          const bool is_recent = row.last_day + days_a_case_is_looked_after >= book.visit.day;
          return !row.not_found_on && row.first_day < book.visit.day && is_recent;
        });
    near.push_back(std::move(found));
  }
  return near;
}

}  // namespace evenclaw
