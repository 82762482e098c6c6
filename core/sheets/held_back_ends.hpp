// Until when her milk and her meat are held back, as it stands beside her number in a box.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/left_to_ask.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// It has passed on the day of printing, whatever the law asks.
bool is_end_over(const TaskRow& task, const VisitView& view);

/// The latest ends the law's floor sets of what she got and whoever has her must know of.
FloorEnds open_floor(CowId cow, const std::vector<LeftToAsk>& asked);

/// A line for each end of hers, milk before meat: the later of what was told and of the law's
/// floor, the floor also where what was told is over or was never told. Where an end is not known
/// of something she got it is told as the earliest. `asked` is left_to_ask(view).
std::vector<Runs> end_lines(const VisitView& view, CowId cow, const std::vector<LeftToAsk>& asked);

/// "Her meat: withdrawal not known", for each half that has no line among her ends. `acts` are all
/// of hers, in the order in which they were done.
std::vector<Runs> half_lines(const VisitView& view, CowId cow, const std::vector<LeftToAsk>& asked,
                             const std::vector<const ActionRow*>& acts);

}  // namespace evenclaw
