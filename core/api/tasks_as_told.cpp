#include "core/api/tasks_as_told.hpp"

#include "core/api/days_asked.hpp"

namespace evenclaw {

Outcome tell_open_tasks(Store& store, std::optional<HerdId> /*herd*/, Day /*today*/,
                        std::vector<TaskRow>& tasks) {
  return tell_days_in_doubt(store, tasks);
}

}  // namespace evenclaw
