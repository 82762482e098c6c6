// The track: her feet as the cloven prints she leaves walking away, left lane and right lane,
// front ahead of hind, seen from above.
#pragma once

#include <array>
#include <string>

#include "core/paper/document.hpp"
#include "core/sheets/words.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// Whether a block or a wrap is on; in doubt it is hollow or dashed, with a question mark.
enum class Fitted { no, yes, in_doubt };

/// What is shown of one claw.
struct ClawMark {
  bool found = false;         // filled: something found today
  bool may_be_here = false;   // grey: found today, but nobody said on which claw
  Fitted block = Fitted::no;  // a bar under it
  int earlier = 0;            // a dot with this count beside it: lesions there before
};

/// What is shown of one foot.
struct FootMark {
  FootState state = FootState::unsaid;
  bool todays = true;  // unsaid feet that were not meant for today are drawn as not lifted
  ClawMark outside;
  ClawMark inside;
  bool skin_between = false;  // a diamond: found today on the skin between the claws
  bool skin_behind = false;   // behind, above the bulbs, or on the foot as a whole
  bool skin_in_front = false;
  Fitted wrap = Fitted::no;  // a ring round the print
  int skin_earlier = 0;
};

/// Indexed by Foot.
using Track = std::array<FootMark, 4>;

inline FootMark& mark_of(Track& track, Foot foot) {
  return track[static_cast<std::size_t>(foot)];
}

inline const FootMark& mark_of(const Track& track, Foot foot) {
  return track[static_cast<std::size_t>(foot)];
}

/// Something was found on one of her feet, is on it, or was there before.
bool shows_something(const Track& track);

/// Her four feet, 38 by 31 mm; the two fronts or the two hinds alone, half as high, where the
/// others show nothing. The label says in words what is known of all four. `cow` as she is named
/// there. Its figures are 2.5 mm high where a page shows it 27 mm wide.
Figure track_figure(const Track& track, const std::string& cow, const Wording& wording);

/// One row that shows what each sign means, as wide as a page.
Figure track_key(const Wording& wording);

/// Three prints: the mark of the product.
Figure product_mark(const Wording& wording);

}  // namespace evenclaw
