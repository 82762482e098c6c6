#include "core/sheets/vet_work_to_ask.hpp"

#include <algorithm>
#include <utility>

#include "core/trade/after_leaving.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

namespace {

bool tells_what_he_gave(const ActionRow& row) {
  return is_given_unnamed(row.action) || is_medicine_act(row.action) ||
         tells_withdrawal(row.action);
}

bool nobody_has_to_ask(const VisitView& view, CowId cow) {
  const CowRow* left = who_left(view, cow);
  if (left == nullptr) return false;
  const MilkAndMeat held = held_after(way_left(left->left_words));
  return !held.milk && !held.meat;
}

}  // namespace

std::vector<VetWork> vet_work_to_ask(const VisitView& view) {
  std::vector<VetWork> all;
  for (const CowSeen& cow : view.cows) {
    const bool is_told = std::any_of(cow.actions.begin(), cow.actions.end(),
                                     [](const ActionRow* row) { return tells_what_he_gave(*row); });
    if (is_told || nobody_has_to_ask(view, cow.cow)) continue;
    std::vector<std::string> acts;
    for (const ActionRow* row : cow.actions) {
      if (row->by_whom != ByWhom::vet) continue;
      std::string act = view.wording.act(*row, view.input.visit.day);
      const bool is_new = std::find(acts.begin(), acts.end(), act) == acts.end();
      if (is_new) acts.push_back(std::move(act));
    }
    if (acts.empty()) continue;
    const std::string words =
        view.wording.say(BoxSaying::ask_what_vet_gave, {{"what", view.wording.list(acts)}});
    all.push_back({cow.cow, words});
  }
  return all;
}

}  // namespace evenclaw
