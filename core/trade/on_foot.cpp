#include "core/trade/on_foot.hpp"

#include <algorithm>
#include <iterator>

namespace evenclaw {

namespace {

bool is_block_step(const Action& action, bool (*wanted)(FixtureStep)) {
  const std::optional<FixtureSaid> said = fixture_said(action.kind);
  return said && said->fixture == Fixture::block && wanted(said->step);
}

void add_blocks_put_on(ClawPair& claws, const FootCall& call, bool (*wanted)(FixtureStep)) {
  for (const Action& action : call.actions) {
    if (is_block_step(action, wanted)) claws.add(action.claw);
  }
}

bool is_new_block(FixtureStep step) {
  return step == FixtureStep::put_on;
}

struct FixtureAct {
  ActionKind kind;
  FixtureSaid said;
};

// Every other act is done to the claw or to her, and leaves nothing on a foot.
constexpr FixtureAct fixture_acts[] = {
    {ActionKind::block_on, {Fixture::block, FixtureStep::put_on}},
    {ActionKind::block_stacked, {Fixture::block, FixtureStep::stacked}},
    {ActionKind::block_refitted, {Fixture::block, FixtureStep::renewed}},
    {ActionKind::block_again, {Fixture::block, FixtureStep::renewed}},
    {ActionKind::block_off, {Fixture::block, FixtureStep::taken_off}},
    {ActionKind::block_came_off, {Fixture::block, FixtureStep::came_off}},
    {ActionKind::block_still_on, {Fixture::block, FixtureStep::left_on}},
    {ActionKind::block_unknown, {Fixture::block, FixtureStep::not_known}},
    {ActionKind::wrap_on, {Fixture::wrap, FixtureStep::put_on}},
    {ActionKind::wrap_off, {Fixture::wrap, FixtureStep::taken_off}},
    {ActionKind::wrap_came_off, {Fixture::wrap, FixtureStep::came_off}},
    {ActionKind::wrap_still_on, {Fixture::wrap, FixtureStep::left_on}},
    {ActionKind::wrap_unknown, {Fixture::wrap, FixtureStep::not_known}}};

}  // namespace

std::optional<FixtureSaid> fixture_said(ActionKind kind) {
  const auto row = std::find_if(std::begin(fixture_acts), std::end(fixture_acts),
                                [&](const FixtureAct& act) { return act.kind == kind; });
  if (row == std::end(fixture_acts)) return std::nullopt;
  return row->said;
}

std::optional<FixtureSaid> fixture_said(News news) {
  switch (news) {
    case News::wrap_off:
      return FixtureSaid{Fixture::wrap, FixtureStep::taken_off};
    case News::wrap_came_off:
      return FixtureSaid{Fixture::wrap, FixtureStep::came_off};
    case News::wrap_still_on:
      return FixtureSaid{Fixture::wrap, FixtureStep::left_on};
    case News::block_off:
      return FixtureSaid{Fixture::block, FixtureStep::taken_off};
    case News::block_came_off:
      return FixtureSaid{Fixture::block, FixtureStep::came_off};
    case News::block_still_on:
      return FixtureSaid{Fixture::block, FixtureStep::left_on};
    case News::looked_at:
    case News::vet_came:
    case News::still_lame:
    case News::walks_sound:
    case News::gone:
    case News::kicks:
    case News::jumps:
    case News::lies_down:
    case News::needs_hoist:
    case News::kicks_no_more:
    case News::jumps_no_more:
    case News::lies_down_no_more:
    case News::hoist_no_more:
      return std::nullopt;
  }
  return std::nullopt;
}

bool is_on_after(FixtureStep step) {
  switch (step) {
    case FixtureStep::put_on:
    case FixtureStep::stacked:
    case FixtureStep::renewed:
    case FixtureStep::left_on:
      return true;
    case FixtureStep::taken_off:
    case FixtureStep::came_off:
    case FixtureStep::not_known:
      return false;
  }
  return false;
}

bool is_off_after(FixtureStep step) {
  return step == FixtureStep::taken_off || step == FixtureStep::came_off;
}

bool ClawPair::has(Claw claw) const {
  if (claw == Claw::outside) return outside;
  if (claw == Claw::inside) return inside;
  return claw == Claw::both && both();
}

void ClawPair::add(Claw claw) {
  outside = outside || claw == Claw::outside || claw == Claw::both;
  inside = inside || claw == Claw::inside || claw == Claw::both;
}

void ClawPair::remove(Claw claw) {
  outside = outside && claw != Claw::outside && claw != Claw::both;
  inside = inside && claw != Claw::inside && claw != Claw::both;
}

Claw ClawPair::claw() const {
  if (both()) return Claw::both;
  if (outside) return Claw::outside;
  return inside ? Claw::inside : Claw::not_called;
}

std::string_view name_of(Fixture fixture) {
  return fixture == Fixture::block ? "block" : "wrap";
}

bool is_called(Claw claw) {
  return claw == Claw::outside || claw == Claw::inside || claw == Claw::both;
}

bool claws_agree(Claw a, Claw b) {
  return a == b || a == Claw::both || b == Claw::both || !is_called(a) || !is_called(b);
}

ClawPair missing_before(const Rows& past, Foot foot) {
  ClawPair claws;
  for (const FootRow& row : past.feet) {
    if (row.foot == foot) claws.add(row.missing);
  }
  return claws;
}

std::vector<OnFootRow> fixtures_left(const Rows& past, Foot foot, Fixture fixture) {
  std::vector<OnFootRow> left;
  for (const OnFootRow& row : past.on_feet) {
    const bool not_known_off =
        row.ended == FixtureEnd::still_on || row.ended == FixtureEnd::unknown;
    if (not_known_off && row.foot == foot && row.fixture == fixture) left.push_back(row);
  }
  return left;
}

bool is_known_on(const Rows& past, Foot foot, Fixture fixture, Day today) {
  return std::any_of(past.on_feet.begin(), past.on_feet.end(), [&](const OnFootRow& row) {
    const bool is_there = row.ended == FixtureEnd::still_on || row.ended == FixtureEnd::unknown ||
                          row.ended_on == today;
    return is_there && row.foot == foot && row.fixture == fixture;
  });
}

ClawPair blocked_before(const Rows& past, Foot foot) {
  ClawPair claws;
  for (const OnFootRow& row : fixtures_left(past, foot, Fixture::block)) {
    // "Don't know" is asked again at the next visit, it is no ground for an alarm.
    if (row.ended == FixtureEnd::still_on) claws.add(row.claw);
  }
  return claws;
}

ClawPair blocked_after(const Rows& past, const FootCall& call) {
  ClawPair claws = blocked_before(past, call.foot);
  for (const Action& action : call.actions) {
    if (is_block_step(action, is_off_after)) {
      claws.remove(is_called(action.claw) ? action.claw : Claw::both);
    }
  }
  for (const Action& action : call.actions) {
    if (is_block_step(action, is_on_after)) claws.add(claw_meant(past, call, action));
  }
  return claws;
}

Claw claw_meant(const Rows& past, const FootCall& call, const Action& action) {
  if (is_called(action.claw)) return action.claw;
  if (action.kind == ActionKind::block_on) return Claw::not_called;
  ClawPair known = blocked_before(past, call.foot);
  add_blocks_put_on(known, call, is_new_block);
  return known.both() ? Claw::not_called : known.claw();
}

bool speaks_of(const FootCall& call, Fixture fixture) {
  return std::any_of(call.actions.begin(), call.actions.end(), [&](const Action& action) {
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    return said && said->fixture == fixture;
  });
}

}  // namespace evenclaw
