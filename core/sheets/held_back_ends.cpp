#include "core/sheets/held_back_ends.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "core/trade/after_leaving.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

namespace {

bool is_milk_end(const TaskRow& task) {
  return task.rule == milk_withdrawal_rule.slug;
}

bool is_meat_end(const TaskRow& task) {
  return task.rule == meat_withdrawal_rule.slug;
}

/// Which milking of its day it is stands in the words of a task alone.
bool ends_later(const TaskRow& a, const TaskRow& b) {
  const std::string_view evening = word_of(Milking::evening);
  if (a.due != b.due) return a.due > b.due;
  return a.words.find(evening) != std::string::npos && b.words.find(evening) == std::string::npos;
}

/// The latest end of her milk, then that of her meat: treated twice, the later holds.
std::vector<const TaskRow*> latest_ends(const VisitView& view, CowId cow) {
  std::vector<const TaskRow*> latest;
  for (const TaskRow* task : view.tasks) {
    if (task->kind != TaskKind::withdrawal_end || task->cow != cow) continue;
    const auto same = std::find_if(latest.begin(), latest.end(),
                                   [&](const TaskRow* other) { return other->rule == task->rule; });
    if (same == latest.end()) {
      latest.push_back(task);
    } else if (ends_later(*task, **same)) {
      *same = task;
    }
  }
  std::stable_partition(latest.begin(), latest.end(),
                        [](const TaskRow* task) { return is_milk_end(*task); });
  return latest;
}

/// Which halves of hers have an end, be it told or the law's.
MilkAndMeat with_end(const std::vector<const TaskRow*>& told, const FloorEnds& floor) {
  const bool is_milk =
      std::any_of(told.begin(), told.end(), [](const TaskRow* task) { return is_milk_end(*task); });
  const bool is_meat =
      std::any_of(told.begin(), told.end(), [](const TaskRow* task) { return is_meat_end(*task); });
  return {is_milk || floor.milk, is_meat || floor.meat};
}

bool is_end_known_of(const LeftToAsk& one, std::optional<HalfNotKnown> of) {
  return one.floor.is_open() || (one.half && one.half != of);
}

/// What she got of which nobody stated that withdrawal, each once.
std::vector<std::string> unknown_of(const VisitView& view, CowId cow,
                                    const std::vector<LeftToAsk>& asked,
                                    std::optional<HalfNotKnown> of) {
  std::vector<std::string> unknown;
  for (const LeftToAsk& one : asked) {
    if (one.cow != cow || is_end_known_of(one, of)) continue;
    ActionRow act = *one.row;
    act.claw = Claw::none;
    act.said_for = std::nullopt;
    std::string words = tells_withdrawal(act.action)
                            ? view.wording.say(BoxSaying::what_is_not_named)
                            : view.wording.act(act, view.input.visit.day);
    const bool is_new = std::find(unknown.begin(), unknown.end(), words) == unknown.end();
    if (is_new) unknown.push_back(std::move(words));
  }
  return unknown;
}

/// How she is marked stands behind the end.
std::string with_unknown(const std::string& words, const std::vector<std::string>& unknown,
                         const Wording& wording) {
  if (unknown.empty()) return words;
  const std::size_t mark = std::min(words.find("; "), words.size());
  return wording.say(BoxSaying::end_not_known_for,
                     {{"end", words.substr(0, mark)}, {"what", wording.list(unknown)}}) +
         words.substr(mark);
}

Runs floor_line(const std::string& end, const std::vector<std::string>& unknown,
                const Wording& wording) {
  const std::string words = wording.say(BoxSaying::end_is_the_floor, {{"end", end}});
  return {strong(as_sentence(capitalised(with_unknown(words, unknown, wording))))};
}

/// An end beside something of which none is known is no end.
Runs told_line(const TaskRow& task, const VisitView& view, const FloorEnds& floor,
               const std::vector<std::string>& unknown) {
  if (!unknown.empty()) {
    return {strong(as_sentence(capitalised(with_unknown(task.words, unknown, view.wording))))};
  }
  Runs line = {strong(capitalised(task.words))};
  const bool is_floor_open = is_milk_end(task) ? floor.milk.has_value() : floor.meat.has_value();
  if (is_end_over(task, view) && !is_floor_open) {
    line.push_back(plain(", " + view.wording.say(Saying::its_time_is_over)));
  }
  line.push_back(plain("."));
  return line;
}

Saying told_of(HalfNotKnown half) {
  switch (half) {
    case HalfNotKnown::milk:
      return Saying::milk_not_spoken_of;
    case HalfNotKnown::meat:
      return Saying::meat_not_spoken_of;
  }
  return Saying::milk_not_spoken_of;
}

bool is_milked_still(const VisitView& view, CowId cow) {
  const CowRow* left = who_left(view, cow);
  return left == nullptr || held_after(way_left(left->left_words)).milk;
}

}  // namespace

bool is_end_over(const TaskRow& task, const VisitView& view) {
  return task.overdue <= view.input.printed;
}

FloorEnds open_floor(CowId cow, const std::vector<LeftToAsk>& asked) {
  FloorEnds latest;
  for (const LeftToAsk& one : asked) {
    if (one.cow != cow) continue;
    latest.milk = std::max(latest.milk, one.floor.milk);
    latest.meat = std::max(latest.meat, one.floor.meat);
  }
  return latest;
}

std::vector<Runs> end_lines(const VisitView& view, CowId cow, const std::vector<LeftToAsk>& asked) {
  const FloorEnds floor = open_floor(cow, asked);
  const std::vector<const TaskRow*> told = latest_ends(view, cow);
  const MilkAndMeat has_told = with_end(told, {});
  const auto unknown = [&](std::optional<HalfNotKnown> of) {
    return unknown_of(view, cow, asked, of);
  };
  std::vector<Runs> lines;
  if (floor.milk && !has_told.milk) {
    lines.push_back(floor_line(floor_end(view, ActionKind::milk_withheld, floor),
                               unknown(HalfNotKnown::milk), view.wording));
  }
  for (const TaskRow* task : told) {
    std::optional<HalfNotKnown> of;
    if (is_milk_end(*task)) of = HalfNotKnown::milk;
    if (is_meat_end(*task)) of = HalfNotKnown::meat;
    const std::string lawful = later_floor(view, *task, floor);
    if (lawful.empty()) {
      lines.push_back(told_line(*task, view, floor, unknown(of)));
      continue;
    }
    lines.push_back(floor_line(lawful, unknown(of), view.wording));
    lines.push_back({plain(
        as_sentence(view.wording.say(BoxSaying::told_beside_floor, {{"what", task->words}})))});
  }
  if (floor.meat && !has_told.meat) {
    lines.push_back(floor_line(floor_end(view, ActionKind::meat_withheld, floor),
                               unknown(HalfNotKnown::meat), view.wording));
  }
  return lines;
}

std::vector<Runs> half_lines(const VisitView& view, CowId cow, const std::vector<LeftToAsk>& asked,
                             const std::vector<const ActionRow*>& acts) {
  const MilkAndMeat has_end = with_end(latest_ends(view, cow), open_floor(cow, asked));
  std::vector<Runs> lines;
  for (const HalfNotKnown half : halves_not_known(view, acts)) {
    const bool is_milk = half == HalfNotKnown::milk;
    const bool is_told = is_milk ? has_end.milk : has_end.meat;
    if (is_told || (is_milk && !is_milked_still(view, cow))) continue;
    lines.push_back({strong(view.wording.say(told_of(half)))});
  }
  return lines;
}

}  // namespace evenclaw
