#include "core/sheets/task_blocks.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <set>
#include <utility>

#include "core/trade/follow_up_rules.hpp"

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

/// What stands under one heading: cows with something to do on a day, listed under one owner.
struct CowsOfOwner {
  Owner owner = Owner::farmer;
  std::vector<CowOnDay> cows;
};

/// Farm, trimmer, vet; whoever has nothing to do is left out.
std::vector<CowsOfOwner> by_owner(const std::vector<CowOnDay>& cows) {
  std::vector<CowsOfOwner> owners;
  for (const Owner owner : {Owner::farmer, Owner::trimmer, Owner::vet}) {
    CowsOfOwner of{owner, {}};
    for (const CowOnDay& cow : cows) {
      if (cow.listed_under == owner) of.cows.push_back(cow);
    }
    if (!of.cows.empty()) owners.push_back(std::move(of));
  }
  return owners;
}

/// From when on the farm may do it, where that is not yet and not only on the last day.
std::optional<Day> not_before(const TaskRow& task, Day today) {
  const bool may_be_early =
      task.owner == Owner::farmer && task.earliest > today && task.earliest < task.due;
  return may_be_early ? std::optional(task.earliest) : std::nullopt;
}

/// The day that holds for all tasks of the farm, if one does.
std::optional<Day> not_before(const std::vector<CowOnDay>& cows, Day today) {
  std::optional<Day> from;
  for (const CowOnDay& cow : cows) {
    for (const TaskRow* task : cow.tasks) {
      if (task->owner != Owner::farmer) continue;
      const std::optional<Day> its = not_before(*task, today);
      const bool is_other = !its || (from && from != its);
      if (is_other) return std::nullopt;
      from = its;
    }
  }
  return from;
}

/// What is the same of every line is said in the heading above them.
struct UnderHeading {
  Owner owner = Owner::farmer;
  std::optional<Day> not_before = {};
};

Runs task_line(const TaskRow& task, const UnderHeading& under, Day today, const Wording& wording) {
  Runs line;
  line.push_back(
      plain(task.owner == under.owner
                ? task.words
                : wording.say(Saying::with_reason,
                              {{"what", owner_words(task.owner, wording)}, {"why", task.words}})));
  const std::optional<Day> from = not_before(task, today);
  if (from && from != under.not_before) {
    const std::string date = wording.date(*from, today);
    line.push_back(quiet(' ' + wording.say(Saying::from_day, {{"date", date}})));
  }
  return line;
}

struct DaySheet {
  const CowNames& names;
  int level = 3;  // of the headings
  Day today;
  const Wording& wording;
};

TaskItem item_of(const CowOnDay& cow, const UnderHeading& under, const DaySheet& sheet) {
  TaskItem item;
  item.label = sheet.names.label(cow.cow);
  const std::string looks = sheet.names.beside_label(cow.cow);
  if (!looks.empty()) item.about = {strong(looks)};
  for (const TaskRow* task : cow.tasks) {
    item.lines.push_back(task_line(*task, under, sheet.today, sheet.wording));
  }
  return item;
}

/// "Late, was due by Sun 15 Nov", "By Sun 29 Nov, not before Fri 27 Nov", with today and whose
/// tasks these are beside it.
Heading heading_of(const CowsOfOwner& of, const UnderHeading& under, const DaySheet& sheet) {
  const Wording& wording = sheet.wording;
  const Day due = of.cows.front().tasks.front()->due;
  // Also while its last good day is still to come: a day that is past says no more by when.
  const bool is_late = due < sheet.today;
  std::string words = wording.say(is_late ? Saying::was_due_by : Saying::by_day,
                                  {{"date", wording.date(due, sheet.today)}});
  if (under.not_before) {
    const std::string from = wording.date(*under.not_before, sheet.today);
    words += ", " + wording.say(Saying::from_day, {{"date", from}});
  }
  Heading heading{sheet.level, capitalised(words)};
  if (due == sheet.today) heading.aside = wording.say(Saying::today) + ", ";
  heading.aside += owner_words(of.owner, wording);
  return heading;
}

void add_list(std::vector<Block>& blocks, const CowsOfOwner& of, const DaySheet& sheet) {
  const UnderHeading under{of.owner, not_before(of.cows, sheet.today)};
  TaskList list{sheet.wording.say(Saying::done_on), {}};
  for (const CowOnDay& cow : of.cows) list.items.push_back(item_of(cow, under, sheet));
  blocks.emplace_back(heading_of(of, under, sheet));
  blocks.emplace_back(std::move(list));
}

}  // namespace

bool is_for_vet(const TaskRow& task) {
  return task.kind == TaskKind::vet || task.owner == Owner::vet;
}

bool is_for_pain_relief(const TaskRow& task) {
  return task.rule == pain_relief_rule.slug;
}

std::string task_count_words(const Tasks& tasks, const Wording& wording) {
  std::set<CowId> cows;
  for (const TaskRow* task : tasks) cows.insert(task->cow);
  return wording.say(Saying::on_cows, {{"tasks", wording.count(Saying::task_count, tasks.size())},
                                       {"n", std::to_string(cows.size())}});
}

std::vector<Block> task_blocks(const Tasks& tasks, const CowNames& names, int level, Day today,
                               const Wording& wording) {
  const DaySheet sheet{names, level, today, wording};
  std::vector<Block> blocks;
  for (auto at = tasks.begin(); at != tasks.end();) {
    const Day due = (*at)->due;
    const auto end = std::find_if(at, tasks.end(), [&](const TaskRow* t) { return t->due != due; });
    const std::vector<CowOnDay> cows = cows_of(Tasks(at, end));
    at = end;
    for (const CowsOfOwner& of : by_owner(cows)) add_list(blocks, of, sheet);
  }
  return blocks;
}

}  // namespace evenclaw
