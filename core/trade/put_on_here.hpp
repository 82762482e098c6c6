// What was put on her feet at this very visit, apart from what was there when she came.
#pragma once

#include <string>
#include <string_view>

#include "core/base/id.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// A wrap or block put on at the visit; one that was only seen to be there is older than that.
bool is_put_on_at(const OnFootRow& row, Fixture fixture, VisitId visit);

/// Her past without the wraps or blocks put on at the visit on these feet, and without what is to
/// be done about them. What was planned at the visit for one that was there before ("wrap still on,
/// off Thu") stays.
Rows without_put_on_at(Rows past, Fixture fixture, VisitId visit, const FootSet& feet);

/// The feet a wrap or block is on, or is to come off.
FootSet feet_carrying(Fixture fixture, const Rows& past);

/// "Her wrap on left hind was put on at this visit. Is that one off? Then say the foot." `asked`:
/// the feet it was put on, not empty; named, the same words are to be said again.
std::string asked_of_put_on_now(Fixture fixture, const FootSet& asked, bool are_named);

/// Whether it is that question, as it stands on record. It was told of what she got in her turn, so
/// the turn does not answer it.
bool asks_of_put_on_now(std::string_view question);

}  // namespace evenclaw
