// A toe that was measured short: what is left of the sole under its tip may be too thin to walk on.
#include <optional>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"

namespace evenclaw {

namespace {

// Of adults of a large breed (docs/method/checks.md); breed and weight are not known.
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

/// No value holds for heifers.
std::optional<Toe> short_toe_of_an_adult(const Turn& turn) {
  const std::optional<Toe> shortest = shortest_toe(turn);
  const bool is_short = shortest && shortest->length < short_below;
  if (!is_short || came_for(turn, Reason::heifer)) return std::nullopt;
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
  const std::optional<Toe> toe = short_toe_of_an_adult(situation.turn);
  if (!toe || !is_far_too_short(*toe)) return {};
  return {about_toe(situation, *toe, "no more off; in a large adult the sole is too thin.")};
}

std::vector<Firing> toe_short(const Situation& situation) {
  const std::optional<Toe> toe = short_toe_of_an_adult(situation.turn);
  if (!toe || is_far_too_short(*toe)) return {};
  return {about_toe(situation, *toe, "short for a large adult. Sole firm?")};
}

}  // namespace evenclaw
