// Of which feet a line spoke that nobody could read: they are not "nothing found".
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "core/trade/call_line/language.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

struct RefusedFeet {
  FootSet named;   // foot words that can be read
  FootSet one_of;  // a foot word with a slip in it: "LG" is LF or LH
  // Something found or done on a foot, and no foot word at all; what became of a wrap or block of
  // last time is none of it.
  bool any_foot = false;

  friend bool operator==(const RefusedFeet&, const RefusedFeet&) = default;
};

/// The legs of "lame LH" do not count: she came lame on them, nothing was said of the foot.
RefusedFeet feet_in_refused(std::string_view text, const Language& language);

/// A line about the cow in the crush that was refused. Words of a foot without its name belong to
/// the feet that were being spoken of.
struct RefusedLine {
  RefusedLine(std::string_view line, FootSet feet_named, const Language& language);

  std::string text;
  RefusedFeet feet;
  FootSet spoken_of;            // when it was refused
  std::size_t said_before = 0;  // how many lines of hers had been taken by then

  /// The feet of which it is still not known what was called: the named ones; those a slip could
  /// mean while none of them was called; for words without a foot, `todays_feet` once "rest fine"
  /// was said. Never a foot that has been called; one that was only named or trimmed has not.
  [[nodiscard]] FootSet left_open(const Turn& turn, FootSet todays_feet) const;
};

}  // namespace evenclaw
