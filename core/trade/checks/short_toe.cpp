// A toe that was measured short: what is left of the sole under its tip may be too thin to walk on.
#include <optional>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/cow_facts.hpp"

namespace evenclaw {

namespace {

// Of an adult Holstein-Friesian (docs/method/checks.md).
constexpr Length short_below{750};
constexpr Length far_too_short_below{700};

struct Toe {
  Foot foot;
  Claw claw;
  Length length;
};

std::optional<Toe> shortest_toe(const Turn& turn) {
  std::optional<Toe> shortest;
  for (const FootCall& call : turn.feet) {
    for (const Measure& measure : call.measures) {
      if (measure.kind != MeasureKind::toe_length) continue;
      const bool shorter = !shortest || measure.length < shortest->length;
      if (shorter) shortest = Toe{call.foot, measure.claw, measure.length};
    }
  }
  return shortest;
}

/// What she came for today is told later than what was known of her.
bool is_heifer_today(const Situation& situation, const CowFacts& facts) {
  if (came_for(situation.turn, Reason::heifer)) return true;
  const bool has_calved =
      came_for(situation.turn, Reason::fresh) || came_for(situation.turn, Reason::dry_off);
  return !has_calved && is_heifer_on(facts, situation.today);
}

/// No value holds for heifers, small breeds or cows under 400 kg. Of whom nothing is known is taken
/// for an adult of a large breed.
bool holds_for_her(const Situation& situation) {
  const CowFacts facts = facts_of(situation.past);
  const bool is_small = facts.breed && is_small_breed(*facts.breed);
  const bool is_light = facts.weight == WeightClass::under_400_kg;
  return !is_small && !is_light && !is_heifer_today(situation, facts);
}

std::optional<Toe> short_toe_of_an_adult(const Situation& situation) {
  const std::optional<Toe> shortest = shortest_toe(situation.turn);
  const bool is_short = shortest && shortest->length < short_below;
  if (!is_short || !holds_for_her(situation)) return std::nullopt;
  return shortest;
}

bool is_far_too_short(const Toe& toe) {
  return toe.length < far_too_short_below;
}

Firing about_toe(const Situation& situation, const Toe& toe, const std::string& words) {
  Firing firing;
  firing.warning.foot = toe.foot;
  firing.warning.claw = toe.claw;
  firing.warning.words =
      "Toe " + to_text(toe.length) + " (" + spoken_where(toe.foot, toe.claw) + "): " + words;
  firing.warning.answers = {offered_go_ahead(situation.language)};
  firing.causes = {{std::nullopt, About::toe_length}};
  return firing;
}

}  // namespace

std::vector<Firing> toe_far_too_short(const Situation& situation) {
  const std::optional<Toe> toe = short_toe_of_an_adult(situation);
  if (!toe || !is_far_too_short(*toe)) return {};
  return {about_toe(situation, *toe, "no more off; Holsteins need 83 (median; 90 proposed).")};
}

std::vector<Firing> toe_short(const Situation& situation) {
  const std::optional<Toe> toe = short_toe_of_an_adult(situation);
  if (!toe || is_far_too_short(*toe)) return {};
  return {about_toe(situation, *toe, "Holsteins need 83 (median; 90 proposed). Sole firm?")};
}

}  // namespace evenclaw
