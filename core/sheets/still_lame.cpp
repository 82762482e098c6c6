#include "core/sheets/still_lame.hpp"

#include <map>

namespace evenclaw {

namespace {

/// Her last day, all turns of it.
struct LastDay {
  Day on;
  bool is_of_visit = false;
  bool came_lame = false;
  FootSet lame = {};
  FootSet lifted = {};
};

void add_turn(LastDay& last, const TurnRow& turn) {
  if (last.on < turn.day) last = {.on = turn.day};
  if (turn.day < last.on) return;
  last.came_lame = last.came_lame || turn.came_lame;
  for (const Foot foot : all_feet) {
    if (turn.lame.has(foot)) last.lame.add(foot);
    if (turn.lifted.has(foot)) last.lifted.add(foot);
  }
}

FootSet lame_left_down(const LastDay& last) {
  FootSet feet;
  for (const Foot foot : all_feet) {
    if (last.lame.has(foot) && !last.lifted.has(foot)) feet.add(foot);
  }
  return feet;
}

}  // namespace

std::vector<StillLame> lame_and_not_lifted(const VisitRow& visit,
                                           const std::vector<TurnRow>& turns) {
  std::map<CowId, LastDay> last_days;
  for (const TurnRow& turn : turns) {
    if (visit.day < turn.day) continue;
    LastDay& last = last_days.try_emplace(turn.cow, LastDay{.on = turn.day}).first->second;
    const bool was_of_visit = last.is_of_visit || turn.visit == visit.visit;
    add_turn(last, turn);
    last.is_of_visit = was_of_visit;
  }
  std::vector<StillLame> still_lame;
  for (const auto& [cow, last] : last_days) {
    if (last.is_of_visit || !last.came_lame) continue;
    const FootSet feet = lame_left_down(last);
    const bool is_left = last.lame.empty() ? last.lifted.empty() : !feet.empty();
    if (is_left) still_lame.push_back({cow, last.on, feet});
  }
  return still_lame;
}

}  // namespace evenclaw
