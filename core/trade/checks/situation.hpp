// What the single checks share: the situation they look at and what they give back.
#pragma once

#include <string>
#include <vector>

#include "core/trade/call_line/language.hpp"
#include "core/trade/check.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

struct Situation {
  const Turn& turn;
  const CowPast& past;
  Day today;
  bool finished;
  const Language& language;  // in which answers are offered
};

/// What of a foot a warning is about. Warnings of different rules that share one have one cause.
enum class About { block, wrap, finding };

struct Cause {
  Foot foot;
  About about;
  friend bool operator==(const Cause&, const Cause&) = default;
};

/// A rule that fires; slug and rank are filled in from the table.
struct Firing {
  Warning warning;
  std::vector<Cause> causes;
};

std::vector<Firing> block_on_painful_claw(const Situation& situation);
std::vector<Firing> both_claws_blocked(const Situation& situation);
std::vector<Firing> block_side_not_called(const Situation& situation);
std::vector<Firing> lame_nothing_found(const Situation& situation);
std::vector<Firing> called_in_two_ways(const Situation& situation);
std::vector<Firing> still_on_not_mentioned(const Situation& situation);
std::vector<Firing> side_or_claw_swapped(const Situation& situation);

About about(Fixture fixture);
std::string_view name_of(Fixture fixture);  // "block", "wrap"

/// A finding of a lesion that hurts when the claw is loaded: no block goes on that claw. Some, as
/// blood in the sole, only when they were called bad (core/trade/lesion.hpp).
bool hurts(const Finding& finding);
/// The finding of the foot that hurts on this claw (outside or inside), or null.
const Finding* painful_finding(const FootCall& call, Claw claw);

/// "sole ulcer"; an `other` lesion by its words, one with a long name by the general one.
std::string spoken_name(const Finding& finding);

/// Answers that put right by word of mouth what was said last; empty when something else was said
/// since, which they would change instead.
std::vector<std::string> foot_correction(const Situation& situation, Foot said, Foot meant);
std::vector<std::string> claw_correction(const Situation& situation, const FootCall& call,
                                         const Action& said, Claw meant);
std::vector<std::string> claw_correction(const Situation& situation, const FootCall& call,
                                         const Finding& said, Claw meant);

}  // namespace evenclaw
