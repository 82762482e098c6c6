// Blocks and wraps on her feet: what an act says of them, and which are on.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/trade/foot.hpp"
#include "core/trade/rows.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// What an act does to a block or wrap, or tells of it.
enum class FixtureStep { put_on, stacked, renewed, taken_off, came_off, left_on, not_known };

struct FixtureSaid {
  Fixture fixture;
  FixtureStep step;

  friend bool operator==(const FixtureSaid&, const FixtureSaid&) = default;
};

/// Nothing for acts that concern neither block nor wrap.
std::optional<FixtureSaid> fixture_said(ActionKind kind);

/// Nothing for news of neither block nor wrap.
std::optional<FixtureSaid> fixture_said(News news);

/// It is on the foot after this step, as far as was said.
bool is_on_after(FixtureStep step);
/// It is off the foot, and said so.
bool is_off_after(FixtureStep step);

/// Which of the two claws of a foot are meant or carry something.
struct ClawPair {
  bool outside = false;
  bool inside = false;

  [[nodiscard]] bool has(Claw claw) const;  // both: both of them

  [[nodiscard]] bool both() const { return outside && inside; }

  [[nodiscard]] bool none() const { return !outside && !inside; }

  void add(Claw claw);
  void remove(Claw claw);
  /// The claw when it is one, `both`, or `not_called` when none is in.
  [[nodiscard]] Claw claw() const;
};

std::string_view name_of(Fixture fixture);  // "block", "wrap"

/// True for outside, inside and both.
bool is_called(Claw claw);

/// The claws mean one another or one of them was not called.
bool claws_agree(Claw a, Claw b);

/// The claws of a foot that were said to be missing in an earlier turn, where it was said which.
ClawPair missing_before(const Rows& past, Foot foot);

/// What was put on before this turn and is not known to be off: still on, or nobody knew.
std::vector<OnFootRow> fixtures_left(const Rows& past, Foot foot, Fixture fixture);

/// One is on that foot, or was told off it today.
bool is_known_on(const Rows& past, Foot foot, Fixture fixture, Day today);

/// The claws of a foot that carry a block before the turn.
ClawPair blocked_before(const Rows& past, Foot foot);
/// And after it: left from before and not said to be off, or put on in the turn. The order of the
/// acts does not matter ("new block on, the old one taken off").
ClawPair blocked_after(const Rows& past, const FootCall& call);

/// The claw a block act means: the one called; else, for an act on a block that must be there
/// already, the only claw known to carry one; else `not_called`, never a guess.
Claw claw_meant(const Rows& past, const FootCall& call, const Action& action);

/// Some act of the foot concerns a fixture of that kind.
bool speaks_of(const FootCall& call, Fixture fixture);

}  // namespace evenclaw
