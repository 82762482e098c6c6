#include "core/api/recording/near_cows.hpp"

#include <algorithm>
#include <utility>

#include "core/log/visit_facts.hpp"
#include "core/ports/store.hpp"
#include "core/trade/foot_rows.hpp"

namespace evenclaw {

namespace {

/// As long as the checks compare with a case of before.
constexpr int days_a_case_is_looked_after = 120;

/// What is on a cow's feet and which cases she has.
struct OnRecord {
  std::vector<OnFootRow> on_feet;
  std::vector<CaseRow> cases;
};

/// Of a cow who was not called at this visit. Her rows say it, unless something told of her waits
/// to be written: with three digits a dozen numbers are a slip away, and her whole history for each
/// of them would be most of the work for a cow.
Result<OnRecord> on_record(const VisitBook& book, CowId cow) {
  const auto unwritten = book.journal.unwritten();
  const bool is_told_of = std::any_of(unwritten.begin(), unwritten.end(), [&](const Entry& entry) {
    return names_subject(entry, cow.value);
  });
  if (is_told_of) {
    auto past = past_of(book, cow);
    if (!past) return past.faults();
    return OnRecord{std::move(past->rows.on_feet), std::move(past->rows.cases)};
  }
  const std::vector<Filter> hers = {{"cow", Compare::equal, Cell(to_text(cow))}};
  auto on_feet = select_as<OnFootRow>(book.ports.store, book.visit.herd, hers);
  if (!on_feet) return on_feet.faults();
  auto cases = select_as<CaseRow>(book.ports.store, book.visit.herd, hers);
  if (!cases) return cases.faults();
  return OnRecord{*std::move(on_feet), *std::move(cases)};
}

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
    const auto known = on_record(book, other);
    if (!known) return known.faults();
    NearCow found;
    found.number = number;
    for (const OnFootRow& row : known->on_feet) {
      const bool is_from_before = row.ended == FixtureEnd::still_on && row.since < book.visit.day;
      if (is_from_before) found.on_her.push_back(row);
    }
    found.has_open_case =
        std::any_of(known->cases.begin(), known->cases.end(), [&](const CaseRow& row) {
          const bool is_recent = row.last_day + days_a_case_is_looked_after >= book.visit.day;
          return !row.not_found_on && row.first_day < book.visit.day && is_recent;
        });
    near.push_back(std::move(found));
  }
  return near;
}

}  // namespace evenclaw
