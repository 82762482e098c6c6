// What was put on, given or told of her and still leaves somebody to be asked, at whatever visit.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <vector>

#include "core/sheets/off_label_floor.hpp"
#include "core/sheets/visit_view.hpp"
#include "core/sheets/withdrawal_known.hpp"

namespace evenclaw {

/// No list takes a longer withdrawal (medicine.hpp: 730 days): after that nothing is held back.
inline constexpr int longest_asked_days = 730;

struct LeftToAsk {
  CowId cow;
  const ActionRow* row = nullptr;    // lives as long as the input
  std::optional<HalfNotKnown> half;  // nothing when neither milk nor meat is known
  FloorEnds floor = {};  // known, but below the law's floor off label: until then it is asked
};

/// All acts of each cow that the input holds, in the order in which they were done.
std::map<CowId, std::vector<const ActionRow*>> acts_by_cow(const VisitView& view);

/// Of this visit and of earlier ones, by number of the cow and in the order in which it was done.
/// What was left open before counts as answered by what is told at a later visit. Of cows who left
/// what their new owner or the slaughterhouse must know of (core/trade/after_leaving.hpp).
std::vector<LeftToAsk> left_to_ask(const VisitView& view);

/// From the acts of earlier visits takes out all that no sheet has to tell. There stay all acts of
/// the visits `whole`, and of a cow of whom somebody may have to be asked what was put on, given or
/// told; so it may be of `below_floor`, products with the days for which the law's floor holds.
void keep_what_may_be_asked(std::vector<ActionRow>& earlier, const std::set<VisitId>& whole,
                            Day today, const std::map<ProductId, std::int32_t>& below_floor = {});

}  // namespace evenclaw
