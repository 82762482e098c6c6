// What a list tells was found on a cow's feet, put beside what lists told before.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "core/api/importing/known_herd.hpp"
#include "core/base/date.hpp"
#include "core/base/digest.hpp"
#include "core/log/past_bodies.hpp"
#include "core/trade/past_finding.hpp"

namespace evenclaw {

/// Whether lists told it of her before, in whatever words.
bool has_finding(const KnownCow& cow, const PastFinding& told);

/// The same, and its words and remark too.
bool is_told_of_her(const KnownCow& cow, const PastFinding& told);

/// Told again, its words and remark are added to those known.
void add_finding(KnownCow& cow, const PastFinding& told);

/// What one list tells was found on a cow; a day without a finding when its lines tell of none.
using FoundByDay = std::map<Day, std::vector<PastFinding>>;

/// What that file told before of one of these days, and does not tell now, is out: its words are
/// read otherwise. Of other days, and what other files told, stays.
void take_back_untold(KnownCow& cow, const FoundByDay& told, const Digest& source);

/// What of her findings is new, and what is not so; nothing when neither is. `before` is nothing of
/// a cow who was entered here.
std::optional<PastFindingsTold> findings_told_of(const KnownCow& now,
                                                 const std::optional<KnownCow>& before,
                                                 const Digest& source, LesionScheme scheme);

}  // namespace evenclaw
