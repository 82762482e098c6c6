#include "core/sheets/left_for_vet.hpp"

#include <algorithm>

#include "core/sheets/vet_stops.hpp"
#include "core/trade/lesion.hpp"

namespace evenclaw {

namespace {

struct SignForVet {
  ActionKind sign;
  Saying words;
};

constexpr SignForVet signs_for_vet[] = {{ActionKind::bone_showing, Saying::leave_foot_alone},
                                        {ActionKind::pus_above, Saying::leave_foot_alone},
                                        {ActionKind::bleeding, Saying::stop_bleeding},
                                        {ActionKind::went_down, Saying::let_her_be}};

/// Foul, or a swelling above both claws, which is taken for it.
bool is_foul(const FindingRow& row) {
  return row.lesion == Lesion::ip || (row.lesion == Lesion::sw && row.claw == Claw::both);
}

bool hurts_on(const CowSeen& cow, Foot foot, Claw claw) {
  return std::any_of(cow.findings.begin(), cow.findings.end(), [&](const FindingRow* row) {
    const bool is_there = row->foot == foot && (row->claw == claw || row->claw == Claw::both);
    const Hurts hurts = facts_of(row->lesion).hurts;
    const bool is_bad = hurts == Hurts::when_bad && row->degree == Degree::bad;
    return is_there && !is_foul(*row) && (hurts == Hurts::yes || is_bad);
  });
}

bool is_beyond_trimming(const FindingRow& row) {
  const bool is_one_sided = row.claw == Claw::outside || row.claw == Claw::inside;
  return row.lesion == Lesion::tn || (row.lesion == Lesion::sw && is_one_sided);
}

bool shows(const CowSeen& cow, ActionKind sign) {
  return std::any_of(cow.actions.begin(), cow.actions.end(),
                     [sign](const ActionRow* row) { return row->action == sign; });
}

std::vector<Saying> left_for(const FindingRow& row, const CowSeen& cow) {
  std::vector<Saying> sayings;
  if (is_beyond_trimming(row)) sayings.push_back(Saying::leave_foot_alone);
  if (is_foul(row)) sayings.push_back(Saying::no_wrap_on_foul);
  if (hurts_on(cow, row.foot, Claw::outside) && hurts_on(cow, row.foot, Claw::inside)) {
    sayings.push_back(Saying::no_block_both_hurt);
  }
  return sayings;
}

std::vector<Saying> left_for(const ActionRow& row) {
  std::vector<Saying> sayings;
  for (const SignForVet& known : signs_for_vet) {
    if (known.sign == row.action) sayings.push_back(known.words);
  }
  return sayings;
}

void add_new(std::vector<Saying>& all, const std::vector<Saying>& more) {
  for (const Saying saying : more) {
    if (std::find(all.begin(), all.end(), saying) == all.end()) all.push_back(saying);
  }
}

}  // namespace

bool may_be_notifiable(const VisitView& view, const CowSeen& cow) {
  int signs = 0;
  for (const ActionKind sign : {ActionKind::sore_mouth, ActionKind::blisters, ActionKind::fever}) {
    signs += shows(cow, sign) ? 1 : 0;
  }
  const bool of_others = std::any_of(view.cows.begin(), view.cows.end(), [&](const CowSeen& other) {
    return other.cow != cow.cow &&
           (shows(other, ActionKind::sore_mouth) || shows(other, ActionKind::blisters));
  });
  return signs >= 2 || (signs == 1 && of_others);
}

std::vector<std::string> left_for_vet(const VisitView& view, const CowSeen& cow,
                                      std::optional<Foot> foot) {
  std::vector<Saying> sayings;
  if (may_be_notifiable(view, cow)) sayings.push_back(Saying::nothing_leaves);
  for (const ActionRow* row : cow.actions) {
    const bool is_elsewhere = foot && row->foot && row->foot != foot;
    if (!is_elsewhere) add_new(sayings, left_for(*row));
  }
  for (const Foot one : all_feet) {
    const bool is_meant = !foot || one == *foot;
    const bool is_too_short = is_meant && !short_toes_on(view, cow, one).empty();
    if (is_too_short) add_new(sayings, {Saying::nothing_off_toe});
  }
  for (const FindingRow* row : cow.findings) {
    if (!foot || row->foot == *foot) add_new(sayings, left_for(*row, cow));
  }
  std::vector<std::string> words;
  words.reserve(sayings.size());
  for (const Saying saying : sayings) words.push_back(view.wording.say(saying));
  return words;
}

bool is_left_for_vet(const CowSeen& cow, Foot foot) {
  const bool is_found = std::any_of(
      cow.findings.begin(), cow.findings.end(),
      [&](const FindingRow* row) { return row->foot == foot && !left_for(*row, cow).empty(); });
  return is_found || std::any_of(cow.actions.begin(), cow.actions.end(), [&](const ActionRow* row) {
           return row->foot == foot && !left_for(*row).empty();
         });
}

}  // namespace evenclaw
