#include "core/trade/call_line/possible.hpp"

#include <algorithm>
#include <string_view>

#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

using Why = std::optional<std::string>;

std::string named(Lesion lesion) {
  return std::string(facts_of(lesion).name);
}

std::string listed(std::span<const Place> places) {
  std::string text;
  for (const Place place : places) {
    if (!text.empty()) text += ", ";
    text += facts_of(place).said;
  }
  return text;
}

Why why_not_stage(const Finding& finding) {
  if (finding.stage == DdStage::not_called || finding.lesion == Lesion::dd) return std::nullopt;
  return "a stage such as " + std::string(word_of(finding.stage)) +
         " is said of DD, not of: " + named(finding.lesion);
}

Why why_not_infected(const Finding& finding) {
  const bool may_be =
      facts_of(finding.lesion).group == LesionGroup::horn || finding.lesion == Lesion::ih;
  if (!finding.dd_infected || may_be) return std::nullopt;
  return "DD is in a lesion of the horn or in a growth, not in: " + named(finding.lesion);
}

Why why_not_claw(const Finding& finding) {
  if (!is_called(finding.claw)) return std::nullopt;
  if (!may_have_claw(finding.lesion)) {
    return named(finding.lesion) + " belongs to the foot, not to one claw";
  }
  const bool is_in_skin = finding.place != Place::not_called && !facts_of(finding.place).needs_claw;
  if (is_in_skin && finding.lesion != Lesion::sw) {
    return "the skin " + std::string(facts_of(finding.place).said) +
           " belongs to the foot, not to one claw";
  }
  return std::nullopt;
}

Why why_not_place(const Finding& finding) {
  if (finding.place == Place::not_called) return std::nullopt;
  const LesionFacts& lesion = facts_of(finding.lesion);
  const PlaceFacts& place = facts_of(finding.place);
  const bool is_on_claw = lesion.kept_on == KeptOn::claw;
  const bool is_of_the_foot = !may_have_claw(finding.lesion);
  if (is_of_the_foot && lesion.usual_places.empty()) {
    return "no place is said of this: " + named(finding.lesion);
  }
  if (is_on_claw && !place.needs_claw) {
    return named(finding.lesion) + " is in the horn of a claw, it cannot lie " +
           std::string(place.said);
  }
  if (is_of_the_foot && place.needs_claw) {
    return named(finding.lesion) + " is in the skin, it cannot lie in the horn (" +
           std::string(place.said) + "); say {" + listed(lesion.usual_places) + "}";
  }
  const bool is_usual = std::find(lesion.usual_places.begin(), lesion.usual_places.end(),
                                  finding.place) != lesion.usual_places.end();
  if (!lesion.nowhere_else || is_usual) return std::nullopt;
  return named(finding.lesion) + " lies nowhere but here: " + listed(lesion.usual_places);
}

Why why_not_zone(const Finding& finding) {
  if (!finding.zone || place_of_zone(*finding.zone) == finding.place) return std::nullopt;
  return "zone " + std::to_string(*finding.zone) + " is not the " +
         std::string(facts_of(finding.place).said);
}

}  // namespace

Why why_impossible(const Finding& finding) {
  for (const auto why :
       {why_not_stage, why_not_infected, why_not_claw, why_not_place, why_not_zone}) {
    if (Why reason = why(finding)) return reason;
  }
  return std::nullopt;
}

bool is_of_a_claw(Lesion lesion) {
  return facts_of(lesion).kept_on == KeptOn::claw;
}

bool is_of_the_white_line(Lesion lesion) {
  return facts_of(lesion).family == Lesion::wl;
}

}  // namespace evenclaw
