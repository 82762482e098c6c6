// What is called out at a visit of the invented business, before it becomes lines.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/trade/dd_stage.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/place.hpp"
#include "core/trade/reason.hpp"

namespace evenclaw::demo {

struct CalledFinding {
  Lesion lesion = Lesion::sh;
  Claw claw = Claw::none;
  Place place = Place::not_called;
  Degree degree = Degree::not_called;
  DdStage stage = DdStage::not_called;
};

enum class BlockCalled { nothing, put_on, again, refitted, still_on, taken_off, came_off };
enum class WrapCalled { nothing, put_on, taken_off };

struct CalledFoot {
  Foot foot = Foot::lh;
  std::vector<CalledFinding> findings;
  bool was_opened = false;
  BlockCalled block = BlockCalled::nothing;
  Claw block_claw = Claw::none;
  WrapCalled wrap = WrapCalled::nothing;
  bool was_sprayed = false;
  bool needs_vet = false;
  bool see_again = false;

  [[nodiscard]] bool says_anything() const {
    return !findings.empty() || block != BlockCalled::nothing || wrap != WrapCalled::nothing ||
           was_sprayed || needs_vet;
  }
};

struct CalledTurn {
  int number = 0;
  Reason reason = Reason::routine;
  std::optional<Foot> lame_on;
  std::vector<CalledFoot> feet;  // those of which something is called
  bool rest_is_fine = true;      // said so
  bool goes_ahead = false;       // what is asked of two sore claws is answered at once
  // Known of her that day, not called:
  int lactation = 1;
  int weeks_in_milk = 0;
  bool is_dry = false;
};

/// What the farmer tells at the gate.
struct Talk {
  std::vector<int> gone;
  std::vector<int> wraps_off;
  std::vector<int> blocks_came_off;
};

struct CalledVisit {
  int week = 0;  // of the story
  Day day;
  std::string_view caller;
  std::string_view writer;
  FootSet todays_feet = four_feet;
  Talk talk;
  std::vector<CalledTurn> turns;
};

}  // namespace evenclaw::demo
