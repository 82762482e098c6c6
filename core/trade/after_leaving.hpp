// What a withdrawal still holds back of a cow who left the herd, by how she left it.
#pragma once

#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/life.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// How she left, as the words tell it in which that was told: "sold", "321 geschlachtet". Nothing
/// is told where they name none of these ways, or more than one: then somebody may have her still.
LeavingWay way_left(std::string_view words);

/// Whoever bought her milks her and may slaughter her; of one who went for slaughter only the meat
/// is left; of a dead one nothing. Of whom nobody told how she left both: our judgement.
MilkAndMeat held_after(LeavingWay way);

/// How a task of hers was closed when she left: nobody did it.
inline constexpr std::string_view closed_as_she_left = "gone";

/// All that was to be done for her; not the end of a withdrawal, which goes with her.
bool ends_when_she_leaves(const TaskRow& task);

/// An end of withdrawal that her new owner or the slaughterhouse must know of on that day.
bool holds_after_leaving(const TaskRow& task, const CowRow& cow, Day today);

/// "last day meat held back: Thu 3 Dec; left the herd Mon 23 Nov": of a cow who left.
std::string words_after_leaving(const TaskRow& task, const CowRow& cow);

}  // namespace evenclaw
