#include "core/sheets/vet_stops.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/trade/medicine_rules.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view too_short_rule = "toe-far-too-short";

constexpr std::string_view stop_rules[] = {
    "notifiable-signs",     "pus-above-the-horn", "toe-or-bone",
    "swollen-on-one-side",  "bleeding-goes-on",   "down-in-the-crush",
    "foul-without-the-vet", "lame-nothing-found", "worst-walk-needs-the-vet",
    "lame-on-two-legs",     too_short_rule,       "act-reserved-for-vet"};

bool has_left(const VisitView& view, CowId cow) {
  return std::any_of(view.input.rows.cows.begin(), view.input.rows.cows.end(),
                     [cow](const CowRow& row) { return row.cow == cow && row.left_on; });
}

bool vet_came_since(const VisitView& view, CowId cow) {
  return std::any_of(view.input.rows.tasks.begin(), view.input.rows.tasks.end(),
                     [&](const TaskRow& task) {
                       return task.cow == cow && task.kind == TaskKind::vet && !task.open &&
                              task.visit == view.input.visit.visit;
                     });
}

}  // namespace

std::span<const std::string_view> vet_stop_rules() {
  return stop_rules;
}

bool calls_for_vet(const Warning& warning) {
  return warning.rank == Rank::stop && std::find(std::begin(stop_rules), std::end(stop_rules),
                                                 warning.rule) != std::end(stop_rules);
}

std::vector<const Warning*> open_vet_stops(const VisitView& view, const CowSeen& cow) {
  std::vector<const Warning*> stops;
  if (has_left(view, cow.cow) || vet_came_since(view, cow.cow)) return stops;
  for (const WarningShown* shown : cow.warnings) {
    if (shown->decision.empty() && calls_for_vet(shown->warning)) stops.push_back(&shown->warning);
  }
  return stops;
}

std::vector<const EarlierStop*> open_earlier_stops(const VisitView& view, CowId cow) {
  std::vector<const EarlierStop*> stops;
  if (has_left(view, cow)) return stops;
  for (const EarlierStop& stop : view.input.earlier_stops) {
    if (stop.cow == cow) stops.push_back(&stop);
  }
  return stops;
}

bool is_vet_sign(ActionKind kind) {
  constexpr ActionKind signs[] = {
      ActionKind::pus_above, ActionKind::bone_showing, ActionKind::bleeding, ActionKind::went_down,
      ActionKind::blisters,  ActionKind::sore_mouth,   ActionKind::fever};
  return std::find(std::begin(signs), std::end(signs), kind) != std::end(signs);
}

std::vector<std::string> signs_of(const VisitView& view, const CowSeen& cow,
                                  std::optional<Foot> foot) {
  std::vector<std::string> signs;
  for (const ActionRow* row : cow.actions) {
    if (!is_vet_sign(row->action) || row->foot != foot) continue;
    std::string words = view.wording.act(*row, view.input.visit.day);
    const bool is_new = std::find(signs.begin(), signs.end(), words) == signs.end();
    if (is_new) signs.push_back(std::move(words));
  }
  return signs;
}

std::vector<std::string> reserved_acts_on(const VisitView& view, const CowSeen& cow,
                                          std::optional<Foot> foot) {
  std::vector<std::string> acts;
  for (const ActionRow* row : cow.actions) {
    if (!reserved_act(row->action) || row->foot != foot) continue;
    acts.push_back(view.wording.act(*row, view.input.visit.day));
  }
  return acts;
}

std::vector<std::string> short_toes_on(const VisitView& view, const CowSeen& cow, Foot foot) {
  std::vector<std::string> toes;
  const auto is_short = [&](const MeasureRow* row) {
    return std::any_of(cow.warnings.begin(), cow.warnings.end(), [&](const WarningShown* shown) {
      const Warning& warning = shown->warning;
      return warning.rule == too_short_rule && warning.foot == foot && warning.claw == row->claw;
    });
  };
  for (const MeasureRow* row : cow.measures) {
    const bool is_toe = row->foot == foot && row->measure == MeasureKind::toe_length;
    if (is_toe && is_short(row)) toes.push_back(view.wording.measure(*row));
  }
  return toes;
}

}  // namespace evenclaw
