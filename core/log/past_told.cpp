#include "core/log/past_told.hpp"

#include <algorithm>
#include <utility>

namespace evenclaw {

namespace {

void take_finding(const PastFindingsTold& body, const PastFinding& told,
                  std::vector<PastStanding>& standing) {
  const auto at = std::lower_bound(standing.begin(), standing.end(), told,
                                   [](const PastStanding& known, const PastFinding& finding) {
                                     return is_told_before(known.told, finding);
                                   });
  if (at == standing.end() || !is_same_finding(at->told, told)) {
    PastFinding first = told;
    first.words = told_together("", told.words);
    first.remark = told_together("", told.remark);
    standing.insert(at, {std::move(first), body.scheme, body.source});
    return;
  }
  at->told.words = told_together(at->told.words, told.words);
  at->told.remark = told_together(at->told.remark, told.remark);
}

void take_back(const PastFinding& wrong, std::vector<PastStanding>& standing) {
  std::erase_if(standing,
                [&](const PastStanding& known) { return is_same_finding(known.told, wrong); });
}

}  // namespace

std::vector<PastStanding> standing_findings(std::span<const Told<PastFindingsTold>> told) {
  std::vector<PastStanding> standing;
  for (const Told<PastFindingsTold>& entry : told) {
    for (const PastFinding& wrong : entry.body.not_so) take_back(wrong, standing);
    for (const PastFinding& finding : entry.body.findings) {
      take_finding(entry.body, finding, standing);
    }
  }
  return standing;
}

std::vector<PastFindingRow> past_rows_of(const CowStory& story) {
  std::vector<PastFindingRow> rows;
  rows.reserve(story.past.size());
  for (const PastStanding& standing : story.past) {
    const PastFinding& told = standing.told;
    const bool is_of_same_day = !rows.empty() && rows.back().day == told.day;
    PastFindingRow row;
    row.herd = story.herd;
    row.cow = story.cow;
    row.day = told.day;
    row.position = is_of_same_day ? rows.back().position + 1 : 1;
    row.foot = told.foot;
    row.claw = told.claw;
    row.lesion = told.lesion;
    row.place = told.place;
    row.zone = told.zone;
    row.degree = told.degree;
    row.stage = told.stage;
    row.words = told.words;
    row.remark = told.remark;
    row.scheme = standing.scheme;
    if (standing.source) row.source = to_text(*standing.source);
    rows.push_back(std::move(row));
  }
  return rows;
}

}  // namespace evenclaw
