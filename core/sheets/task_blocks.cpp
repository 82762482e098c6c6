#include "core/sheets/task_blocks.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <set>
#include <utility>

namespace evenclaw {

namespace {

using Tasks = std::vector<const TaskRow*>;

std::string owner_words(Owner owner, const Wording& wording) {
  switch (owner) {
    case Owner::farmer:
      return wording.say(Saying::for_farmer);
    case Owner::trimmer:
      return wording.say(Saying::for_trimmer);
    case Owner::vet:
      return wording.say(Saying::for_vet);
  }
  return {};
}

/// All tasks of one cow on one day.
struct CowOnDay {
  CowId cow;
  Owner listed_under = Owner::farmer;
  Tasks tasks;
};

std::vector<CowOnDay> cows_of(const Tasks& of_one_day) {
  std::vector<CowOnDay> cows;
  for (const TaskRow* task : of_one_day) {
    const auto known = std::find_if(cows.begin(), cows.end(),
                                    [&](const CowOnDay& cow) { return cow.cow == task->cow; });
    if (known != cows.end()) {
      known->tasks.push_back(task);
    } else {
      cows.push_back({task->cow, task->owner, {task}});
    }
  }
  return cows;
}

bool one_owner(const std::vector<CowOnDay>& cows) {
  return std::all_of(cows.begin(), cows.end(), [&](const CowOnDay& cow) {
    return cow.listed_under == cows.front().listed_under;
  });
}

Runs task_line(const TaskRow& task, Owner listed_under, Day today, const Wording& wording) {
  const std::string words =
      task.owner == listed_under
          ? task.words
          : wording.say(Saying::other_owner,
                        {{"owner", owner_words(task.owner, wording)}, {"words", task.words}});
  Runs line = {plain(words)};
  if (task.overdue <= today) {
    line.push_back(strong(' ' + wording.say(Saying::late)));
  } else if (task.owner == Owner::farmer && task.earliest > today && task.earliest < task.due) {
    const std::string from = wording.date(task.earliest, today);
    line.push_back(quiet(' ' + wording.say(Saying::from_day, {{"date", from}})));
  }
  return line;
}

TaskItem item_of(const CowOnDay& cow, const CowNames& names, Day today, const Wording& wording) {
  TaskItem item;
  item.label = names.label(cow.cow);
  const std::string looks = names.looks(cow.cow);
  if (!looks.empty()) item.about = {strong(looks)};
  for (const TaskRow* task : cow.tasks) {
    item.lines.push_back(task_line(*task, cow.listed_under, today, wording));
  }
  return item;
}

/// What one owner has to do on a day; nothing when that is nothing.
std::optional<TaskList> list_of(Owner owner, const std::vector<CowOnDay>& cows,
                                const CowNames& names, Day today, const Wording& wording) {
  TaskList list{one_owner(cows) ? "" : capitalised(owner_words(owner, wording)),
                wording.say(Saying::done_on),
                {}};
  for (const CowOnDay& cow : cows) {
    if (cow.listed_under == owner) list.items.push_back(item_of(cow, names, today, wording));
  }
  if (list.items.empty()) return std::nullopt;
  return list;
}

/// Says beside the date whose tasks these are when they are all of one owner.
Heading day_heading(const std::vector<CowOnDay>& cows, int level, Day today,
                    const Wording& wording) {
  const Day due = cows.front().tasks.front()->due;
  Heading heading{level,
                  capitalised(wording.say(Saying::by_day, {{"date", wording.date(due, today)}}))};
  if (due == today) heading.aside = wording.say(Saying::today);
  if (one_owner(cows)) {
    heading.aside +=
        (heading.aside.empty() ? "" : ", ") + owner_words(cows.front().listed_under, wording);
  }
  return heading;
}

}  // namespace

bool is_for_vet(const TaskRow& task) {
  return task.kind == TaskKind::vet || task.owner == Owner::vet;
}

std::string task_count_words(const Tasks& tasks, const Wording& wording) {
  std::set<CowId> cows;
  for (const TaskRow* task : tasks) cows.insert(task->cow);
  return wording.say(Saying::on_cows, {{"tasks", wording.count(Saying::task_count, tasks.size())},
                                       {"n", std::to_string(cows.size())}});
}

std::vector<Block> task_blocks(const Tasks& tasks, const CowNames& names, int level, Day today,
                               const Wording& wording) {
  std::vector<Block> blocks;
  for (auto at = tasks.begin(); at != tasks.end();) {
    const Day due = (*at)->due;
    const auto end = std::find_if(at, tasks.end(), [&](const TaskRow* t) { return t->due != due; });
    const std::vector<CowOnDay> cows = cows_of(Tasks(at, end));
    at = end;
    blocks.emplace_back(day_heading(cows, level, today, wording));
    for (const Owner owner : {Owner::farmer, Owner::trimmer, Owner::vet}) {
      auto list = list_of(owner, cows, names, today, wording);
      if (list) blocks.emplace_back(*std::move(list));
    }
  }
  return blocks;
}

}  // namespace evenclaw
