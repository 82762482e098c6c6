#include "core/sheets/vet_stops.hpp"

#include <algorithm>
#include <span>
#include <string_view>

#include "core/sheets/notifiable.hpp"
#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/vet_on_record.hpp"
#include "core/trade/medicine_rules.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view too_short_rule = "toe-far-too-short";

}  // namespace

bool calls_for_vet(const Warning& warning) {
  const std::span<const SignForVet> signs = signs_for_vet();
  const bool is_told = warning.rank != Rank::note || warning.rule == blocked_again_rule;
  return is_told && std::any_of(signs.begin(), signs.end(), [&](const SignForVet& sign) {
           return !sign.check.empty() && sign.check == warning.rule;
         });
}

std::vector<const Warning*> open_vet_stops(const VisitView& view, const CowSeen& cow) {
  std::vector<const Warning*> stops;
  if (is_past_the_vet(view, cow.cow)) return stops;
  for (const WarningShown* shown : cow.warnings) {
    if (shown->decision.empty() && calls_for_vet(shown->warning)) stops.push_back(&shown->warning);
  }
  return stops;
}

std::vector<const EarlierStop*> open_earlier_stops(const VisitView& view, CowId cow) {
  std::vector<const EarlierStop*> stops;
  const bool has_left = who_left(view, cow) != nullptr;
  for (const EarlierStop& stop : view.input.earlier_stops) {
    const bool is_told = is_reportable(view, stop) || (!has_left && !stop.is_settled_alone);
    if (stop.cow == cow && is_told) stops.push_back(&stop);
  }
  return stops;
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
