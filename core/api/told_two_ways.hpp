// A wrap or block that one says is off and another says is still on, at the same visit.
#pragma once

#include <cstdint>
#include <vector>

#include "core/base/id.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

/// What was said to have become of one: in the crush, or as news that was clear.
struct FateTold {
  CowId cow;
  Fixture fixture = Fixture::wrap;
  FootSet feet;  // empty: no foot was named
  bool is_off = false;
  bool is_news = false;
  bool is_since = false;  // told after the visit, which settles it
  DeviceId device;
  std::int64_t order = 0;  // in the log
};

struct ToldTwoWays {
  CowId cow;
  Fixture fixture = Fixture::wrap;
  FootSet feet;  // of which both were said, as far as one was named
  friend bool operator==(const ToldTwoWays&, const ToldTwoWays&) = default;
};

/// How she was said to walk: in the crush, or as news that was clear.
struct WalkTold {
  CowId cow;
  bool is_sound = false;  // else she was said to be lame still
  bool is_news = false;
  bool is_since = false;
  DeviceId device;
  std::int64_t order = 0;
};

/// The cows of whom both were said. What settles it is told as of wraps and blocks.
std::vector<CowId> walk_told_two_ways(const std::vector<WalkTold>& told);

/// It is off after this step, or was left on.
bool tells_its_fate(FixtureStep step);

/// Off and still on, told on two devices, for there nobody knows which came first; on one device
/// only when "still on" came after "off", for who finds it on may take it off. News settles it when
/// it comes last and all was told on one device, or when it was told after the visit. Each cow and
/// fixture once, by cow.
std::vector<ToldTwoWays> told_two_ways(const std::vector<FateTold>& told);

}  // namespace evenclaw
