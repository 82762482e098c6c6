#include "core/api/as_it_stood.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "core/trade/lesion.hpp"

namespace evenclaw {

namespace {

using FindingsByCase = std::map<CaseId, std::vector<const FindingRow*>>;

/// Each in the order found.
FindingsByCase found_by(Day day, const std::vector<FindingRow>& findings) {
  FindingsByCase by_case;
  for (const FindingRow& row : findings) {
    if (row.day <= day) by_case[row.case_id].push_back(&row);
  }
  for (auto& [id, rows] : by_case) {
    std::sort(rows.begin(), rows.end(), [](const FindingRow* a, const FindingRow* b) {
      return std::tie(a->day, a->turn, a->position) < std::tie(b->day, b->turn, b->position);
    });
  }
  return by_case;
}

/// As link_cases() tells it of these findings.
void tell_again(CaseRow& row, const std::vector<const FindingRow*>& found) {
  std::set<VisitId> visits;
  row.worst = found.front()->lesion;
  row.grew_worse = false;
  row.degree = Degree::not_called;
  for (const FindingRow* finding : found) {
    visits.insert(finding->visit);
    const bool is_worse = is_worse_form(finding->lesion, row.worst);
    row.grew_worse = row.grew_worse || is_worse;
    if (is_worse || is_kind_of(finding->lesion, row.worst)) row.worst = finding->lesion;
    if (finding->degree != Degree::not_called) row.degree = finding->degree;
  }
  row.lesion = found.back()->lesion;
  row.last_day = found.back()->day;
  row.times_found = static_cast<std::int32_t>(visits.size());
}

void keep_cases(std::vector<CaseRow>& cases, Day day, const std::vector<FindingRow>& findings) {
  std::erase_if(cases, [day](const CaseRow& row) { return row.first_day > day; });
  const FindingsByCase by_case = found_by(day, findings);
  for (CaseRow& row : cases) {
    const bool is_gone_later = row.not_found_on && *row.not_found_on > day;
    if (is_gone_later) row.not_found_on.reset();
    const auto found = by_case.find(row.case_id);
    if (row.last_day > day && found != by_case.end()) tell_again(row, found->second);
  }
}

}  // namespace

void keep_as_it_stood(Rows& rows, Day day, Day today, const std::vector<FindingRow>& findings) {
  std::erase_if(rows.tasks, [day](const TaskRow& row) {
    return row.made_on > day || (row.closed_on && *row.closed_on <= day);
  });
  for (TaskRow& row : rows.tasks) {
    if (row.closed_on && *row.closed_on > today) row.open = true;
  }
  for (CowRow& row : rows.cows) {
    const bool left_later = row.left_on && *row.left_on > day;
    if (left_later) row.left_on.reset();
  }
  std::erase_if(rows.on_feet, [day](const OnFootRow& row) { return row.since > day; });
  for (OnFootRow& row : rows.on_feet) {
    if (!row.ended_on || *row.ended_on <= day) continue;
    row.ended = FixtureEnd::still_on;
    row.ended_on.reset();
  }
  keep_cases(rows.cases, day, findings);
}

}  // namespace evenclaw
