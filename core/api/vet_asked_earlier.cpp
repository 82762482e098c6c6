#include "core/api/vet_asked_earlier.hpp"

#include <map>

#include "core/api/filled_rows.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/sheets/vet_asked_before.hpp"

namespace evenclaw {

Result<std::vector<VetAskedBefore>> vet_asked_earlier(Store& store, const VisitRow& visit,
                                                      const Rows& rows) {
  std::map<VisitId, std::vector<const TaskRow*>> by_visit;
  for (const TaskRow& task : rows.tasks) {
    const bool is_asked = task.open && is_for_vet(task) && task.visit != visit.visit;
    if (is_asked) by_visit[task.visit].push_back(&task);
  }
  std::vector<VetAskedBefore> asked;
  for (const auto& [other, tasks] : by_visit) {
    const std::vector<Filter> of_it = {{"visit", Compare::equal, Cell(to_text(other))}};
    Rows then;
    Faults faults;
    fill(then.turns, faults, store, visit.herd, of_it);
    fill(then.findings, faults, store, visit.herd, of_it);
    fill(then.actions, faults, store, visit.herd, of_it);
    if (!faults.empty()) return faults;
    for (const TaskRow* task : tasks) {
      asked.push_back({task->task, vet_asked_for_what(*task, then, rows.cases, english_wording())});
    }
  }
  return asked;
}

}  // namespace evenclaw
