// A cow that should not be in the crush for long, or should not travel as she is.
#include <algorithm>
#include <optional>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

bool is_on_before(const Rows& past, Foot foot, Fixture fixture) {
  const std::vector<OnFootRow> left = fixtures_left(past, foot, fixture);
  return std::any_of(left.begin(), left.end(),
                     [](const OnFootRow& row) { return row.ended == FixtureEnd::still_on; });
}

/// As far as was said: the last word about it counts, and else what was on before.
bool is_on_afterwards(const Situation& situation, Foot foot, Fixture fixture) {
  bool on = is_on_before(situation.past.rows, foot, fixture);
  const FootCall* call = find_foot(situation.turn, foot);
  if (call == nullptr) return on;
  for (const Action& action : call->actions) {
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    if (said && said->fixture == fixture) on = is_on_after(said->step);
  }
  return on;
}

struct Worn {
  Foot foot;
  Fixture fixture;
};

std::optional<Worn> worn_afterwards(const Situation& situation) {
  for (const Foot foot : all_feet) {
    for (const Fixture fixture : {Fixture::block, Fixture::wrap}) {
      if (is_on_afterwards(situation, foot, fixture)) return Worn{foot, fixture};
    }
  }
  return std::nullopt;
}

}  // namespace

std::vector<Firing> near_calving(const Situation& situation) {
  const Turn& turn = situation.turn;
  const bool near = was_called(turn, ActionKind::near_calving);
  const bool heavy = was_called(turn, ActionKind::heavy_in_calf);
  if (turn.end != TurnEnd::done || (!near && !heavy)) return {};
  Firing firing;
  firing.warning.words = near ? "Near calving: only what cannot wait, briefly; the rest once she "
                                "has calved."
                              : "Heavy in calf: no tipping, and briefly; what can wait waits.";
  firing.warning.answers = {offered_go_ahead(situation.language)};
  firing.causes = {{std::nullopt, About::calving}};
  return {firing};
}

/// Said without the minutes: they run on while she stands there.
std::vector<Firing> long_in_the_crush(const Situation& situation) {
  const std::optional<TimeInCrush>& time = situation.past.in_crush;
  constexpr std::int32_t seconds_in_minute = 60;
  if (!situation.finished || !time || time->seconds < time->long_minutes * seconds_in_minute) {
    return {};
  }
  Firing firing;
  firing.warning.words =
      "In the crush for more than " + std::to_string(time->long_minutes) + " minutes.";
  return {firing};
}

std::vector<Firing> leaving_with_block_or_wrap(const Situation& situation) {
  const Turn& turn = situation.turn;
  const bool leaves = situation.finished && was_called(turn, ActionKind::cull_advised);
  if (!leaves || vet_called(turn)) return {};
  const std::optional<Worn> worn = worn_afterwards(situation);
  if (!worn) return {};
  Firing firing;
  firing.warning.foot = worn->foot;
  firing.warning.words = "Cull advised with a " + std::string(name_of(worn->fixture)) + " on " +
                         std::string(spoken(worn->foot)) + ": fit to travel? Vet, or off first.";
  firing.warning.answers = vet_or_go_ahead(std::nullopt, situation.language);
  firing.causes = {{std::nullopt, About::cull}};
  return {firing};
}

}  // namespace evenclaw
