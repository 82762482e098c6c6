#include "core/sheets/due_sheet.hpp"

#include <iterator>
#include <utility>

#include "core/sheets/task_blocks.hpp"
#include "core/sheets/track.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

namespace {

using Tasks = std::vector<const TaskRow*>;

struct Part {
  Saying title;
  Tasks tasks;
};

std::vector<Part> parts_of(const Tasks& tasks, Day today) {
  std::vector<Part> parts = {{Saying::due_held_back, {}},
                             {Saying::due_late, {}},
                             {Saying::due_now, {}},
                             {Saying::due_coming, {}}};
  for (const TaskRow* task : tasks) {
    const bool is_held_back = task->kind == TaskKind::withdrawal_end && today < task->overdue;
    const std::size_t part = task->overdue <= today ? 1 : (task->earliest <= today ? 2 : 3);
    parts[is_held_back ? 0 : part].tasks.push_back(task);
  }
  return parts;
}

}  // namespace

Document due_sheet(const DueSheetInput& input, const Wording& wording) {
  const CowNames names(input.cows, wording);
  const std::string date = wording.full_date(input.today);
  Document document;
  document.language = std::string(wording.tables().language);
  document.kind = wording.say(Saying::due_kind);
  document.title = wording.say(Saying::title, {{"herd", input.herd_name}, {"date", date}});
  document.mark = product_mark(wording);
  document.foot = wording.say(
      Saying::due_foot, {{"herd", input.herd_name}, {"date", date}, {"version", input.version}});
  for (const Part& part : parts_of(open_tasks_in_order(input.tasks, names), input.today)) {
    if (part.tasks.empty()) continue;
    document.blocks.emplace_back(
        Heading{2, wording.say(part.title), task_count_words(part.tasks, wording)});
    std::vector<Block> blocks = task_blocks(part.tasks, names, 3, input.today, wording);
    std::move(blocks.begin(), blocks.end(), std::back_inserter(document.blocks));
  }
  if (document.blocks.empty()) {
    document.blocks.emplace_back(Paragraph{{plain(wording.say(Saying::nothing_due))}});
  }
  return document;
}

}  // namespace evenclaw
