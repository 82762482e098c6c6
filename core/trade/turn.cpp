#include "core/trade/turn.hpp"

#include <algorithm>
#include <utility>

#include "core/trade/identity.hpp"
#include "core/trade/not_called.hpp"

namespace evenclaw {

namespace {

/// What was measured on a foot that is trimmed tells nothing of what was found there.
bool is_only_trimmed(const FootCall& call) {
  FootCall unmeasured = call;
  unmeasured.measures.clear();
  return call.trimmed != Trimmed::not_called && is_only_named(unmeasured);
}

}  // namespace

std::string called_as(const CowSaid& cow) {
  switch (cow.known) {
    case CowKnown::numbered:
      return plain_number(cow.number);
    case CowKnown::doubtful: {
      std::string words = cow.number;
      for (const std::string& other : cow.alternatives) words += " or " + other;
      return cow.alternatives.empty() ? words + "?" : words;
    }
    case CowKnown::unnumbered:
      return cow.looks;
  }
  return {};
}

const FootCall* find_foot(const Turn& turn, Foot foot) {
  const auto at = std::find_if(turn.feet.begin(), turn.feet.end(),
                               [foot](const FootCall& call) { return call.foot == foot; });
  return at == turn.feet.end() ? nullptr : &*at;
}

FootCall* find_foot(Turn& turn, Foot foot) {
  return const_cast<FootCall*>(find_foot(std::as_const(turn), foot));
}

bool came_for(const Turn& turn, Reason reason) {
  return turn.reason == reason ||
         std::find(turn.also.begin(), turn.also.end(), reason) != turn.also.end();
}

Turn settled(Turn turn, FootSet todays_feet) {
  for (FootCall& call : turn.feet) {
    if (!call.findings.empty()) call.state = FootState::finding;
  }
  if (!turn.rest_fine) return turn;
  for (const Foot foot : all_feet) {
    if (!todays_feet.has(foot)) continue;
    if (FootCall* named = find_foot(turn, foot)) {
      if (is_only_trimmed(*named)) named->state = FootState::nothing_found;
      continue;
    }
    FootCall call;
    call.foot = foot;
    call.state = FootState::nothing_found;
    turn.feet.push_back(std::move(call));
  }
  return turn;
}

}  // namespace evenclaw
