#include "core/trade/withdrawal_tasks.hpp"

#include <algorithm>
#include <string>
#include <utility>

#include "core/trade/follow_up_rules.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

template <class T>
void put_later(std::optional<T>& end, const T& other) {
  end = end ? std::max(*end, other) : other;
}

void add_medicine(WithdrawalEnds& ends, const Medicine& medicine) {
  if (medicine.milk_till) {
    put_later(ends.milk,
              MilkEnd{*medicine.milk_till, medicine.milk_milking.value_or(Milking::evening)});
  }
  if (medicine.meat_till) put_later(ends.meat, *medicine.meat_till);
}

void add_told(WithdrawalEnds& ends, const Action& action, Day visit_day) {
  const bool of_both = action.kind == ActionKind::withheld;
  const bool of_milk = of_both || action.kind == ActionKind::milk_withheld;
  const bool of_meat = of_both || action.kind == ActionKind::meat_withheld;
  const std::optional<Day> day = day_meant(action.when, visit_day);
  if (!day) return;
  if (of_milk) put_later(ends.milk, MilkEnd{*day, action.when.milking.value_or(Milking::evening)});
  if (of_meat) put_later(ends.meat, *day);
}

std::string marked_how(const Turn& turn) {
  const auto mark = std::find_if(turn.actions.begin(), turn.actions.end(),
                                 [](const Action& act) { return act.kind == ActionKind::marked; });
  if (mark == turn.actions.end()) return {};
  if (mark->material == Material::not_called) return "; marked";
  return "; marked with " + std::string(word_of(mark->material));
}

TaskMade task_till(const FollowUpRule& rule, Day visit_day, Day end, std::string words) {
  TaskMade task = task_from(rule, {{}, Claw::none, end}, visit_day);
  task.earliest = visit_day;
  task.words = std::move(words);
  return task;
}

}  // namespace

WithdrawalEnds withdrawal_ends(const Action& action, Day visit_day) {
  WithdrawalEnds ends;
  if (action.medicine) add_medicine(ends, *action.medicine);
  add_told(ends, action, visit_day);
  return ends;
}

WithdrawalEnds withdrawal_ends(const Turn& turn, Day visit_day) {
  WithdrawalEnds ends;
  const auto add = [&](const Action& action) {
    const WithdrawalEnds of_one = withdrawal_ends(action, visit_day);
    if (of_one.milk) put_later(ends.milk, *of_one.milk);
    if (of_one.meat) put_later(ends.meat, *of_one.meat);
  };
  for (const FootCall& call : turn.feet) {
    std::for_each(call.actions.begin(), call.actions.end(), add);
  }
  std::for_each(turn.actions.begin(), turn.actions.end(), add);
  return ends;
}

std::vector<TaskMade> withdrawal_tasks(const Turn& turn, Day visit_day) {
  const WithdrawalEnds ends = withdrawal_ends(turn, visit_day);
  const std::string mark = marked_how(turn);
  std::vector<TaskMade> tasks;
  if (ends.milk) {
    tasks.push_back(task_till(milk_withdrawal_rule, visit_day, ends.milk->day,
                              "last milk held back: " + spoken_with_weekday(ends.milk->day) + ' ' +
                                  std::string(word_of(ends.milk->milking)) + mark));
  }
  if (ends.meat) {
    tasks.push_back(
        task_till(meat_withdrawal_rule, visit_day, *ends.meat,
                  "last day meat held back: " + spoken_with_weekday(*ends.meat) + mark));
  }
  return tasks;
}

}  // namespace evenclaw
