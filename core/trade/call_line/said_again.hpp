// When something said a second time is the same thing, and when a taking back means it.
#pragma once

#include <vector>

#include "core/trade/call_line/turn_clause.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// Said twice they are one: alike wherever both were called.
bool are_one(const Finding& a, const Finding& b);
/// Of an act another time may be said later: it is the time that holds. Of what holds milk or meat
/// back only a longer one is, for a shorter one could be of another medicine.
bool are_one(const Action& first, const Action& later);
bool are_one(const Measure& a, const Measure& b);

/// Adds to `kept` what only `more` tells; of an act the time that `more` tells holds.
void complete(Finding& kept, const Finding& more);
void complete(Action& kept, const Action& more);
void complete(Measure& kept, const Measure& more);

/// Whether taking back `said` means `found`: the lesion or a subtype of it, and what was called
/// with it fits.
bool takes_back(const Finding& said, const Finding& found);
/// Taking back a block or wrap that is on means any way in which it was put on.
bool takes_back(const Action& said, const Action& done);
/// "No, no 48 mm" means whatever was measured so, "no, no length" however long it was.
bool takes_back(const MeasureTakenBack& said, const Measure& measured);

/// Whether what was said is what the clause takes back.
bool is_taken_back_by(const TurnClause& clause, const TurnClause& said);

/// Adds what a correction says again. What was taken back is not said again, or it would take away
/// the like of it on the foot that was meant; nor is whose it was.
void remember(std::vector<TurnClause>& since_naming, const TurnClause& clause);

}  // namespace evenclaw
