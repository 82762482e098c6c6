#include "core/api/vet_asked_earlier.hpp"

#include "core/api/filled_rows.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/sheets/vet_asked_before.hpp"

namespace evenclaw {

Result<std::vector<VetAskedBefore>> vet_asked_earlier(Store& store, const VisitRow& visit,
                                                      const Rows& rows) {
  std::vector<VetAskedBefore> asked;
  for (const TaskRow& task : rows.tasks) {
    const bool is_asked = task.open && is_for_vet(task) && task.visit != visit.visit;
    if (!is_asked) continue;
    const std::vector<Filter> of_her = {{"cow", Compare::equal, Cell(to_text(task.cow))},
                                        {"visit", Compare::equal, Cell(to_text(task.visit))}};
    Rows then;
    Faults faults;
    fill(then.turns, faults, store, visit.herd, of_her);
    fill(then.findings, faults, store, visit.herd, of_her);
    fill(then.actions, faults, store, visit.herd, of_her);
    if (!faults.empty()) return faults;
    asked.push_back({task.task, vet_asked_for_what(task, then, rows.cases, english_wording()),
                     left_until_vet(task, then, rows.cases)});
  }
  return asked;
}

}  // namespace evenclaw
