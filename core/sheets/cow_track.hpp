// What the drawing of her feet shows after a visit.
#pragma once

#include "core/sheets/track.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

Track track_of(const CowSeen& cow, Day visit_day, const FootSet& todays_feet);

}  // namespace evenclaw
