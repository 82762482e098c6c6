#include "core/api/tasks_as_told.hpp"

#include "core/api/below_floor.hpp"
#include "core/api/days_asked.hpp"
#include "core/sheets/sore_block.hpp"
#include "core/sheets/vet_first.hpp"
#include "core/sheets/words.hpp"

namespace evenclaw {

Outcome tell_open_tasks(Store& store, std::optional<HerdId> herd, Day today,
                        std::vector<TaskRow>& tasks) {
  const Outcome in_doubt = tell_days_in_doubt(store, tasks);
  if (!in_doubt) return in_doubt.faults();
  const Outcome floors = tell_off_label_floors(store, herd, today, tasks);
  if (!floors) return floors.faults();
  tell_vet_asked_first(tasks, english_wording());
  tell_sore_blocks(tasks, english_wording());
  return Done{};
}

}  // namespace evenclaw
