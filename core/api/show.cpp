#include "core/api/show.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/herds.hpp"
#include "core/api/identities.hpp"
#include "core/log/selection.hpp"
#include "core/sheets/words.hpp"

namespace evenclaw {

namespace {

std::vector<Filter> of_cow(CowId cow) {
  return {{"cow", Compare::equal, Cell(to_text(cow))}};
}

FootSeen seen(const FootRow& row) {
  FootSeen foot;
  foot.day = row.day;
  foot.foot = row.foot;
  foot.turn = row.turn;
  foot.state = row.state;
  foot.trimmed = row.trimmed;
  foot.called_lame = row.called_lame;
  return foot;
}

Result<std::vector<FootSeen>> feet_through_time(Store& store, HerdId herd, CowId cow) {
  const auto rows = select_as<FootRow>(store, herd, of_cow(cow));
  if (!rows) return rows.faults();
  const auto findings = select_as<FindingRow>(store, herd, of_cow(cow), {"position"});
  if (!findings) return findings.faults();
  const auto actions = select_as<ActionRow>(store, herd, of_cow(cow), {"position"});
  if (!actions) return actions.faults();
  const auto measures = select_as<MeasureRow>(store, herd, of_cow(cow), {"position"});
  if (!measures) return measures.faults();
  const Wording& wording = english_wording();
  std::vector<FootSeen> feet;
  for (const FootRow& row : *rows) {
    FootSeen foot = seen(row);
    for (const FindingRow& finding : *findings) {
      if (finding.turn != row.turn || finding.foot != row.foot) continue;
      foot.found.push_back(wording.finding_at_claw(finding));
    }
    for (const ActionRow& action : *actions) {
      if (action.turn != row.turn || action.foot != row.foot) continue;
      foot.acts.push_back(wording.act(action, row.day));
    }
    for (const MeasureRow& measure : *measures) {
      if (measure.turn != row.turn || measure.foot != row.foot) continue;
      foot.measured.push_back(wording.measure(measure));
    }
    feet.push_back(std::move(foot));
  }
  std::stable_sort(feet.begin(), feet.end(), [](const FootSeen& a, const FootSeen& b) {
    return std::tuple(b.day, a.foot) < std::tuple(a.day, b.foot);
  });
  return feet;
}

Outcome add_what_is_open(Store& store, HerdId herd, CowId cow, Day today, CowShown& shown) {
  const auto on_feet = select_as<OnFootRow>(store, herd, of_cow(cow));
  if (!on_feet) return on_feet.faults();
  for (const OnFootRow& row : *on_feet) {
    if (row.ended == FixtureEnd::still_on) shown.on_her.push_back(row);
  }
  const auto cases = select_as<CaseRow>(store, herd, of_cow(cow));
  if (!cases) return cases.faults();
  for (const CaseRow& row : *cases) {
    if (!row.not_found_on) shown.open_cases.push_back(row);
  }
  const auto due = list_due(store, herd, today);
  if (!due) return due.faults();
  for (const DueTask& task : due->tasks) {
    if (task.cow == cow) shown.open_tasks.push_back(task);
  }
  return Done{};
}

std::string text_of_cell(const Cell& cell) {
  if (const auto* number = std::get_if<std::int64_t>(&cell)) return std::to_string(*number);
  if (const auto* text = std::get_if<std::string>(&cell)) return *text;
  return {};
}

std::int64_t number_of_cell(const Cell& cell) {
  const auto* number = std::get_if<std::int64_t>(&cell);
  return number == nullptr ? 0 : *number;
}

/// The herd itself leads each counted row and is left out here.
CountLine count_line(const CountQuery& query, const Cells& cells) {
  CountLine line;
  const std::size_t groups = query.group_by.size();
  for (std::size_t i = 0; i < groups; ++i) line.groups.push_back(text_of_cell(cells[i + 1]));
  line.count = number_of_cell(cells[groups + 1]);
  for (std::size_t i = 0; i < query.sums.size(); ++i) {
    line.sums.push_back(number_of_cell(cells[groups + 2 + i]));
  }
  return line;
}

Result<NamedCount> counted(Store& store, HerdId herd, CountQuery query) {
  query.where.insert(query.where.begin(), {"herd", Compare::equal, Cell(to_text(herd))});
  const auto rows = store.count(query);
  if (!rows) return rows.faults();
  NamedCount count;
  count.name = query.name;
  count.columns = query.group_by;
  count.columns.emplace_back("count");
  count.columns.insert(count.columns.end(), query.sums.begin(), query.sums.end());
  for (const Cells& cells : *rows) count.lines.push_back(count_line(query, cells));
  return count;
}

/// Who looks for a cow by what she was called by mistake wants to see where her record went.
Result<CowId> cow_to_show(Store& store, HerdId herd, std::string_view said, Day today) {
  const auto cow = find_cow(store, herd, said, today);
  if (cow || cow.faults().front().slug != "cow-not-found") return cow;
  const auto called = find_cow_called(store, herd, said);
  if (!called) return called.faults();
  return *called ? Result<CowId>(**called) : cow;
}

}  // namespace

Result<CowShown> show_cow(Store& store, HerdId herd, std::string_view said, Day today) {
  const auto cow = cow_to_show(store, herd, said, today);
  if (!cow) return cow.faults();
  const auto rows = select_as<CowRow>(store, herd, of_cow(*cow));
  if (!rows) return rows.faults();
  const auto known = herd_of(store, herd);
  if (!known) return known.faults();
  CowShown shown;
  shown.herd_name = known->name;
  if (!rows->empty()) shown.cow = rows->front();
  shown.cow_said = recorded_as(shown.cow);
  auto numbers = select_as<CowNumberRow>(store, herd, of_cow(*cow), {"valid_from"});
  if (!numbers) return numbers.faults();
  shown.numbers = *std::move(numbers);
  auto called = select_as<CowCalledRow>(store, herd, of_cow(*cow), {"day"});
  if (!called) return called.faults();
  shown.called_first = *std::move(called);
  auto feet = feet_through_time(store, herd, *cow);
  if (!feet) return feet.faults();
  shown.feet = *std::move(feet);
  auto turns = select_as<TurnRow>(store, herd, of_cow(*cow), {"day"});
  if (!turns) return turns.faults();
  shown.turns.assign(turns->rbegin(), turns->rend());
  const Outcome added = add_what_is_open(store, herd, *cow, today, shown);
  if (!added) return added.faults();
  return shown;
}

Result<HerdShown> show_herd(Store& store, HerdId herd) {
  const auto known = herd_of(store, herd);
  if (!known) return known.faults();
  HerdShown shown;
  shown.herd = herd;
  shown.name = known->name;
  auto cows = select_as<CowRow>(store, herd, {}, {"number"});
  if (!cows) return cows.faults();
  shown.cows = *std::move(cows);
  auto visits = select_as<VisitRow>(store, herd, {}, {"day", "ordinal"});
  if (!visits) return visits.faults();
  shown.visits.assign(visits->rbegin(), visits->rend());
  for (const CountQuery& query : named_counts()) {
    auto count = counted(store, herd, query);
    if (!count) return count.faults();
    shown.counts.push_back(*std::move(count));
  }
  return shown;
}

}  // namespace evenclaw
