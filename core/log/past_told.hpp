// What lists told was found on a cow: which findings stand, and the rows of them.
#pragma once

#include <span>
#include <vector>

#include "core/log/cow_story.hpp"
#include "core/trade/past_finding.hpp"

namespace evenclaw {

/// The findings that stand after all was told, by day and in the order of is_told_before(). `told`
/// in the total order: one told again adds its words and remark; one that was said not to be so is
/// out, until a later entry tells it again. Within one entry what is not so comes first.
std::vector<PastStanding> standing_findings(std::span<const Told<PastFindingsTold>> told);

std::vector<PastFindingRow> past_rows_of(const CowStory& story);

}  // namespace evenclaw
