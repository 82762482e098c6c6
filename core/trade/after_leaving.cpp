#include "core/trade/after_leaving.hpp"

#include <optional>

#include "core/trade/call_line/lexer.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/leaving_words.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

LeavingWay way_left(std::string_view words) {
  std::string said = " ";
  for (const Token& token : tokens_of(words)) said += token.folded + ' ';
  std::optional<LeavingWay> told;
  for (const LeavingWord& named : leaving_words()) {
    if (said.find(' ' + std::string(named.words) + ' ') == std::string::npos) continue;
    if (told && *told != named.way) return LeavingWay::not_told;
    told = named.way;
  }
  return told.value_or(LeavingWay::not_told);
}

MilkAndMeat held_after(LeavingWay way) {
  switch (way) {
    case LeavingWay::not_told:
    case LeavingWay::sold:
      return {true, true};
    case LeavingWay::slaughtered:
      return {false, true};
    case LeavingWay::died:
      return {false, false};
  }
  return {true, true};
}

bool ends_when_she_leaves(const TaskRow& task) {
  return task.kind != TaskKind::withdrawal_end;
}

bool holds_after_leaving(const TaskRow& task, const CowRow& cow, Day today) {
  const bool is_running = !ends_when_she_leaves(task) && today < task.overdue;
  if (!is_running) return false;
  const MilkAndMeat held = held_after(way_left(cow.left_words));
  return task.rule == milk_withdrawal_rule.slug ? held.milk : held.meat;
}

std::string words_after_leaving(const TaskRow& task, const CowRow& cow) {
  return task.words + "; left the herd " + spoken_with_weekday(*cow.left_on);
}

}  // namespace evenclaw
