// The day a wrap or block put on today is said to come off: one that it is never meant to reach, or
// that comes before it has helped, is a slip.
#include <string>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// Our judgement: a refitted block may have two weeks to go, and less is the day of a wrap.
constexpr int soonest_block_off_days = 14;

/// The block or wrap that the act puts on.
std::optional<Fixture> put_on_today(const Action& action) {
  const std::optional<FixtureSaid> said = fixture_said(action.kind);
  if (!said || !is_on_after(said->step) || said->step == FixtureStep::left_on) return std::nullopt;
  return said->fixture;
}

/// What is held against the day; empty when it can be meant.
std::string why_not_then(Fixture fixture, int days) {
  switch (fixture) {
    case Fixture::wrap:
      if (days < wrap_off_rule.overdue_days) return {};
      return "A wrap comes off after " + std::to_string(wrap_off_rule.earliest_days) + " to " +
             std::to_string(wrap_off_rule.overdue_days - 1) + '.';
    case Fixture::block:
      if (days < soonest_block_off_days) return "A block needs about 4 weeks.";
      if (days > block_off_rule.overdue_days) return "Past 6 weeks a block tips her back.";
      return {};
  }
  return {};
}

std::string in_days(int days) {
  return days == 1 ? "tomorrow" : "in " + std::to_string(days) + " days";
}

Firing asked(const Situation& situation, const FootCall& call, const Action& action, int days) {
  const Fixture fixture = *put_on_today(action);
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.claw = action.claw;
  firing.warning.words = sentence(spoken_where(call.foot, action.claw)) + ": " +
                         std::string(name_of(fixture)) + " off " + in_days(days) + "? " +
                         why_not_then(fixture, days);
  const int usual_days =
      fixture == Fixture::wrap ? wrap_off_rule.due_days : block_off_rule.earliest_days;
  firing.warning.answers = {
      offered_other_day(call.foot, action.kind, action.claw, usual_days, situation.language),
      offered_go_ahead(situation.language)};
  firing.causes = {{call.foot, About::day_off}};
  return firing;
}

}  // namespace

std::vector<Firing> comes_off_on_that_day(const Situation& situation) {
  std::vector<Firing> firings;
  for (const FootCall& call : situation.turn.feet) {
    for (const Action& action : call.actions) {
      const std::optional<Fixture> fixture = put_on_today(action);
      const std::optional<Day> off = day_meant(action.when, situation.today);
      if (!fixture || !off) continue;
      const int days = *off - situation.today;
      if (why_not_then(*fixture, days).empty()) continue;
      firings.push_back(asked(situation, call, action, days));
    }
  }
  return firings;
}

}  // namespace evenclaw
