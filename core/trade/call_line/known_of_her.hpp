// What is said with her past in mind, put in plain clauses: which foot carries the wrap, what was
// found there last.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/turn_clause.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// It became of a wrap or block that was on: off, still on, not known, refitted.
bool concerns_one_from_before(ActionKind act);

/// Her rows, and at which visit she stands in the crush.
struct KnownPast {
  const Rows& rows;
  VisitId visit;
  Day today;
};

struct PutPlainly {
  std::vector<TurnClause> clauses;   // in the order they are added; may be none
  std::vector<std::string> learned;  // what of her past was taken, to be shown at once
};

/// The clauses that say the same without her past. The foot is the one spoken of; where none is,
/// the only one that fits. Fault "call-impossible" with the lines to say instead when several feet
/// fit, or none. Nothing is taken over but findings: what was done last time is not done again.
Result<PutPlainly> put_plainly(const TurnDraft& draft, const KnownSaid& said, const KnownPast& past,
                               const Language& language);

/// The foot of an act that tells of a wrap or block from before and names no foot, when only one
/// of hers carries such a one; of "wraps off" every foot that carries one, but none put on today;
/// no foot otherwise. Where none carries one, one that was told off today counts: it may be told
/// once more.
FootSet feet_that_carry_it(const TurnDraft& draft, const ActionSaid& said, const KnownPast& past);

/// "LH wrap on since 13 Oct, 14 days, 9 late": of what is known to be on that foot; "" of nothing.
std::string told_of_fixture(const KnownPast& past, Foot foot, Fixture fixture,
                            const Language& language);

/// Of a finding called "same", "better" or "worse": what was found of it on that foot last, as
/// "LH outside sole ulcer heel (13 Oct)", or that nothing was.
std::string told_of_last(const KnownPast& past, Foot foot, const Finding& finding,
                         const Language& language);

/// Whether words kept with a finding or foot hold a phrase of that kind and value.
bool holds_phrase(std::string_view words, TermKind kind, int value, const Language& language);

/// The note of a foot says that its stump is healed or the claw beside it was trimmed, and no more.
bool tells_of_a_stump_only(std::string_view note, const Language& language);

}  // namespace evenclaw
