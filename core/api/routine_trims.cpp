#include "core/api/routine_trims.hpp"

#include <map>
#include <utility>

#include "core/trade/cow_facts.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/routine_trim.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

namespace {

using CowKey = std::pair<HerdId, CowId>;

/// Her rows of one table, out of those of the herd.
template <class Row>
std::map<CowKey, std::vector<Row>> by_cow(std::vector<Row> rows) {
  std::map<CowKey, std::vector<Row>> sorted;
  for (Row& row : rows) {
    const CowKey key{row.herd, row.cow};
    sorted[key].push_back(std::move(row));
  }
  return sorted;
}

TaskRow task_row(const CowKey& cow, const RoutineTrimDue& trim) {
  TaskRow task;
  task.herd = cow.first;
  task.cow = cow.second;
  task.task = routine_trim_id(cow.second, trim.rule->slug, trim.from);
  task.made_on = trim.from;
  task.kind = TaskKind::routine_trim;
  task.owner = Owner::trimmer;
  task.earliest = trim.from;
  task.due = trim.due;
  task.overdue = trim.overdue;
  task.words = trim.rule->words;
  task.rule = trim.rule->slug;
  task.rule_version = trim.rule->version;
  return task;
}

}  // namespace

Result<std::vector<TaskRow>> routine_trims(Store& store, std::optional<HerdId> herd, Day today) {
  std::vector<TaskRow> due;
  auto facts = select_as<CowFactsRow>(store, herd);
  if (!facts) return facts.faults();
  // Nothing was told of any cow: the turns of the herd need not be read.
  if (facts->empty()) return due;
  auto turns = select_as<TurnRow>(store, herd);
  if (!turns) return turns.faults();
  auto feet = select_as<FootRow>(store, herd);
  if (!feet) return feet.faults();
  auto turns_of = by_cow(*std::move(turns));
  auto feet_of = by_cow(*std::move(feet));
  for (CowFactsRow& row : *facts) {
    const CowKey cow{row.herd, row.cow};
    Rows hers;
    hers.cow_facts.push_back(std::move(row));
    hers.turns = std::move(turns_of[cow]);
    const auto trim = routine_trim_due(facts_of(hers), trims_of(hers.turns, feet_of[cow]), today);
    if (trim) due.push_back(task_row(cow, *trim));
  }
  return due;
}

}  // namespace evenclaw
