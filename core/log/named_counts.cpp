#include <algorithm>

#include "core/log/selection.hpp"

namespace evenclaw {

namespace {

Filter equals(std::string column, Cell cell) {
  return {std::move(column), Compare::equal, std::move(cell)};
}

std::vector<CountQuery> make_named_counts() {
  const Filter is_open = equals("open", std::int64_t{1});
  const Filter is_on = equals("ended", std::string("still_on"));
  return {
      {"findings_by_lesion_and_visit", "finding", {"visit", "lesion", "step"}, {}, {}},
      {"findings_by_foot_and_claw", "finding", {"lesion", "foot", "claw"}, {}, {}},
      {"findings_by_place", "finding", {"lesion", "place"}, {}, {}},
      {"feet_by_state_and_visit", "foot", {"visit", "state"}, {}, {"called_lame", "called_twice"}},
      {"turns_by_visit_and_reason",
       "turn",
       {"visit", "reason"},
       {},
       {"came_lame", "walks_sound", "stops", "asks", "unanswered"}},
      {"batches_by_visit",
       "batch",
       {"visit", "animals"},
       {},
       {"counted", "apart", "together", "nothing_found", "feet"}},
      {"turns_by_end", "turn", {"visit", "end"}, {}, {}},
      {"actions_by_kind_and_visit", "action", {"visit", "action"}, {}, {}},
      {"cases_by_family_and_relapse", "foot_case", {"family", "relapse"}, {}, {"times_found"}},
      {"open_tasks_by_kind_and_owner", "task", {"kind", "owner"}, {is_open}, {}},
      {"on_feet_by_fixture", "on_foot", {"fixture"}, {is_on}, {}},
      {"doubts_by_kind_and_visit", "doubt", {"visit", "kind"}, {}, {}},
  };
}

}  // namespace

std::span<const CountQuery> named_counts() {
  static const std::vector<CountQuery> counts = make_named_counts();
  return counts;
}

}  // namespace evenclaw
