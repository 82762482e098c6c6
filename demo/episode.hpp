// One lesion from its beginning to its end, as the truth file tells it.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "core/base/enum_words.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/lesion.hpp"
#include "demo/foot_state.hpp"

namespace evenclaw::demo {

enum class EpisodeEnd { still_there, healed, cow_left };

/// Weeks are counted from the first week of the herd's story; -1 for never.
struct Episode {
  int cow = 0;  // her herd number
  Foot foot = Foot::lf;
  Claw claw = Claw::none;
  Lesion lesion = Lesion::sh;  // its worst form
  int began = 0;
  int worse_since = -1;  // the late form of a horn lesion
  int ended = -1;
  EpisodeEnd end = EpisodeEnd::still_there;
  bool is_relapse = false;  // the same spot had it before
};

using Episodes = std::vector<Episode>;

inline EpisodeIndex begin_episode(Episodes& episodes, const Episode& episode) {
  episodes.push_back(episode);
  return static_cast<EpisodeIndex>(episodes.size()) - 1;
}

inline void end_episode(Episodes& episodes, EpisodeIndex& which, int week, EpisodeEnd end) {
  Episode& episode = episodes[static_cast<std::size_t>(which)];
  episode.ended = week;
  episode.end = end;
  which = -1;
}

}  // namespace evenclaw::demo

namespace evenclaw {

template <>
struct EnumWords<demo::EpisodeEnd> {
  static constexpr EnumWord<demo::EpisodeEnd> table[] = {
      {demo::EpisodeEnd::still_there, "still_there"},
      {demo::EpisodeEnd::healed, "healed"},
      {demo::EpisodeEnd::cow_left, "cow_left"}};
};

}  // namespace evenclaw
