#include "core/api/below_floor.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <utility>

#include "core/api/herds.hpp"
#include "core/api/products.hpp"
#include "core/log/bodies.hpp"
#include "core/log/body.hpp"
#include "core/sheets/left_to_ask.hpp"
#include "core/sheets/off_label_floor.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/told_ends.hpp"

namespace evenclaw {

namespace {

using DaysByProduct = std::map<ProductId, std::int32_t>;

/// One half of what she was given, held back by the law's floor.
struct FloorOpen {
  const ActionRow* row = nullptr;
  const FollowUpRule* rule = nullptr;
  Day end;
  std::string words;
};

/// All that was given to or told of cows whose floor may still run.
Result<std::vector<ActionRow>> acts_of_cows_below(Store& store, HerdId herd, Day today,
                                                  const DaysByProduct& below) {
  auto rows =
      select_as<ActionRow>(store, herd,
                           {{"day", Compare::at_least, Cell(to_text(today - longest_asked_days))},
                            {"day", Compare::at_most, Cell(to_text(today))}});
  if (!rows) return rows.faults();
  std::set<CowId> cows;
  for (const ActionRow& row : *rows) {
    const auto days = row.listed ? below.find(*row.listed) : below.end();
    if (days != below.end() && today <= row.day + days->second) cows.insert(row.cow);
  }
  std::erase_if(*rows, [&](const ActionRow& row) { return cows.count(row.cow) == 0; });
  let_later_ends_hold(*rows);
  return rows;
}

Outcome add_floors_stated(std::vector<ProductStated>& stated, Store& store,
                          const std::vector<ActionRow>& acts, const std::string& country) {
  std::set<std::pair<EntryId, ProductId>> told;
  for (const ActionRow& row : acts) {
    if (!row.listed || !told.insert({row.turn, *row.listed}).second) continue;
    const auto entry = store.find_entry(row.turn);
    if (!entry) return entry.faults();
    const auto body = *entry ? body_as<TurnRecorded>(**entry) : std::nullopt;
    if (!body) continue;
    const auto add = [&](const Action& action) {
      if (!action.medicine || action.medicine->product != *row.listed) return;
      stated.push_back({row.turn, *row.listed});
      stated.back().floor = least_not_reached(action.medicine->as_listed, country);
    };
    for (const FootCall& foot : body->turn.feet) {
      std::for_each(foot.actions.begin(), foot.actions.end(), add);
    }
    std::for_each(body->turn.actions.begin(), body->turn.actions.end(), add);
  }
  return Done{};
}

void keep_the_later(std::optional<FloorOpen>& kept, FloorOpen other) {
  if (!kept || kept->end < other.end) kept = std::move(other);
}

/// Her milk first, then her meat; the later floor of each.
std::vector<FloorOpen> floors_of_her(const VisitView& view,
                                     const std::vector<const ActionRow*>& acts) {
  const std::vector<SaidOf> said = withdrawals_said(acts);
  std::optional<FloorOpen> milk;
  std::optional<FloorOpen> meat;
  for (const ActionRow* row : acts) {
    const FloorEnds ends = floor_ends(view, acts, said, *row);
    if (ends.milk) {
      const std::string words = floor_words(view, *row, {ends.milk, std::nullopt});
      keep_the_later(milk, {row, &milk_withdrawal_rule, ends.milk->day, words});
    }
    if (ends.meat) {
      const std::string words = floor_words(view, *row, {std::nullopt, ends.meat});
      keep_the_later(meat, {row, &meat_withdrawal_rule, *ends.meat, words});
    }
  }
  std::vector<FloorOpen> floors;
  if (milk) floors.push_back(*std::move(milk));
  if (meat) floors.push_back(*std::move(meat));
  return floors;
}

TaskRow nobody_wrote_down(const FloorOpen& floor) {
  const std::string slug(floor.rule->slug);
  TaskRow task;
  task.herd = floor.row->herd;
  task.cow = floor.row->cow;
  task.task = TaskId{uuid_derived(to_text(floor.row->turn) + " floor of " + slug)};
  task.visit = floor.row->visit;
  task.made_on = floor.row->day;
  task.kind = floor.rule->kind;
  task.owner = floor.rule->owner;
  task.earliest = floor.row->day;
  task.rule = slug;
  task.rule_version = floor.rule->version;
  return task;
}

void tell_floor(std::vector<TaskRow>& tasks, const FloorOpen& floor) {
  const auto is_told_by = [&](const TaskRow& task) {
    const bool is_hers = task.herd == floor.row->herd && task.cow == floor.row->cow;
    return is_hers && task.open && task.visit == floor.row->visit && task.rule == floor.rule->slug;
  };
  auto task = std::find_if(tasks.begin(), tasks.end(), is_told_by);
  if (task == tasks.end()) task = tasks.insert(tasks.end(), nobody_wrote_down(floor));
  // Moved by hand to a later day it holds as it is.
  if (task->due >= floor.end) return;
  const std::size_t mark = task->words.find("; marked");
  const bool is_marked = mark != std::string::npos;
  task->words = floor.words + (is_marked ? task->words.substr(mark) : std::string());
  task->due = floor.end;
  task->overdue = floor.end + 1;
}

Outcome tell_floors_of(Store& store, HerdId herd, Day today, std::vector<TaskRow>& tasks) {
  const auto below = products_below_floor(store, herd);
  if (!below) return below.faults();
  if (below->empty()) return Done{};
  auto acts = acts_of_cows_below(store, herd, today, *below);
  if (!acts) return acts.faults();
  const auto law = local_law(store);
  if (!law) return law.faults();
  VisitSheetInput input;
  input.visit.day = input.printed = today;
  const Outcome stated = add_floors_stated(input.stated, store, *acts, law->country);
  if (!stated) return stated.faults();
  input.rows.actions = *std::move(acts);
  const VisitView view = view_of(input, english_wording());
  for (const auto& [cow, hers] : acts_by_cow(view)) {
    for (const FloorOpen& floor : floors_of_her(view, hers)) tell_floor(tasks, floor);
  }
  return Done{};
}

}  // namespace

Result<DaysByProduct> products_below_floor(Store& store, HerdId herd) {
  const auto law = local_law(store);
  if (!law) return law.faults();
  DaysByProduct below;
  const Outcome read = store.read_entries(
      {herd.value, std::nullopt, {std::string(ProductListed::kind)}}, [&](const Entry& entry) {
        const auto listed = body_as<ProductListed>(entry);
        if (!listed) return true;
        const LeastNotReached least = least_not_reached(listed->as_listed, law->country);
        if (!least.milk_hours && !least.meat_days) return true;
        const Day milk = milk_end({least.milk_hours.value_or(0), WithdrawalUnit::hours}, Day{})
                             .value_or(MilkEnd{})
                             .day;
        std::int32_t& days = below[listed->product];
        days = std::max({days, milk - Day{}, least.meat_days.value_or(0)});
        return true;
      });
  if (!read) return read.faults();
  return below;
}

Outcome tell_off_label_floors(Store& store, std::optional<HerdId> herd, Day today,
                              std::vector<TaskRow>& tasks) {
  if (herd) return tell_floors_of(store, *herd, today, tasks);
  const auto herds = all_herds(store);
  if (!herds) return herds.faults();
  for (const Herd& known : *herds) {
    const Outcome told = tell_floors_of(store, known.herd, today, tasks);
    if (!told) return told.faults();
  }
  return Done{};
}

}  // namespace evenclaw
