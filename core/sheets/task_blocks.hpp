// Tasks as blocks of a document: by date, each cow once per date, with a box to tick.
#pragma once

#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/paper/document.hpp"
#include "core/sheets/cow_names.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// Asked of the vet: such a task stands in the box, not in the list.
bool is_for_vet(const TaskRow& task);

/// The vet is asked for pain relief, not to see her.
bool is_for_pain_relief(const TaskRow& task);

/// For each due day and owner a heading of `level` and a list. A cow with tasks of several owners
/// on one day stands once, in the list of the first of them (farm, trimmer, vet), with the other
/// owner named on the line. What is late is called so first, and from when on a thing may be
/// done is told; in the heading, when it holds for all below.
/// `tasks` in the order of open_tasks_in_order().
std::vector<Block> task_blocks(const std::vector<const TaskRow*>& tasks, const CowNames& names,
                               int level, Day today, const Wording& wording);

/// "7 tasks on 5 cows".
std::string task_count_words(const std::vector<const TaskRow*>& tasks, const Wording& wording);

}  // namespace evenclaw
