// What is said of one foot on a cow's card.
#pragma once

#include <optional>
#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// Today's feet and every other foot that was spoken of, in the order LF RF LH RH.
std::vector<Foot> feet_to_tell(const CowSeen& cow, const FootSet& todays_feet);

/// A line for each of feet_to_tell(), but feet of which nothing is said but one and the same state
/// share a line without a term at the end: "Nothing found: both front feet and left hind."
/// "nothing found", "lifted, nobody said whether anything was found", "nobody said what was found":
/// how the foot stands, said of a foot without a finding; "" of one with.
std::string state_words(const CowSeen& cow, Foot foot, const Wording& wording);

std::vector<TermLine> foot_lines(const CowSeen& cow, const VisitView& view);

/// Its state, what was found and done in the order called, then, quietly, what is on it since
/// earlier and what was there before.
TermLine foot_line(const CowSeen& cow, Foot foot, const VisitView& view);

}  // namespace evenclaw
