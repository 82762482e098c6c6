// Whether the list or somebody spoke of her milk and of her meat, or of one of them only.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/sheets/visit_view.hpp"
#include "core/sheets/withdrawal_said.hpp"

namespace evenclaw {

enum class HalfNotKnown { milk, meat };

/// The half that neither the herd's list stated when that was put on or given, nor anybody told;
/// nothing when both are known, or neither. Of a telling that is of no medicine: the half that was
/// not told at that visit nor since. `said` is what all acts of hers tell.
std::optional<HalfNotKnown> half_not_known(const VisitView& view, const std::vector<SaidOf>& said,
                                           const ActionRow& row);

/// Both halves of hers at most: of one medicine milk can be missing, of another meat; and of what
/// was told of no medicine. `acts` are all of hers, in the order in which they were done.
std::vector<HalfNotKnown> halves_not_known(const VisitView& view,
                                           const std::vector<const ActionRow*>& acts);

/// "meat withdrawal not known".
std::string half_words(HalfNotKnown half, const Wording& wording);

}  // namespace evenclaw
