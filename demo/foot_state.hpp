// The true state of a foot, whatever anybody sees of it.
#pragma once

#include <array>
#include <cstdint>

#include "core/trade/dd_stage.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/lesion.hpp"

namespace evenclaw::demo {

/// The two ways in which the horn of a claw goes wrong, each with an early and a late form: a
/// bruise becomes a sole ulcer, a fissure of the white line an abscess.
enum class HornSpot { sole, white_line };
enum class HornStage : std::uint8_t { sound, early, late };

/// What else is found, present or not; the table of them stands in on_off_lesions.cpp.
enum class OnOff { heel_erosion, skin_between, growth, foul, double_sole, toe_ulcer };
inline constexpr int on_off_lesions = 6;

/// An episode of a lesion in the list of the truth; -1 for none.
using EpisodeIndex = std::int32_t;

struct HornState {
  HornStage stage = HornStage::sound;
  Degree degree = Degree::not_called;  // slight, plain, bad; not_called while sound
  bool was_there_before = false;
  bool was_trimmed = false;  // since the late form began
  EpisodeIndex episode = -1;
};

struct OnOffState {
  bool is_there = false;
  Degree degree = Degree::not_called;
  bool was_treated = false;
  EpisodeIndex episode = -1;
};

/// Weeks in which a block or wrap was put on; -1 for none.
struct OnFoot {
  int block_since = -1;
  Claw block_claw = Claw::none;
  bool block_was_lost = false;  // and nobody saw it yet
  int wrap_since = -1;
};

struct ClawState {
  std::array<HornState, 2> horn;  // by HornSpot
};

struct FootState {
  std::array<ClawState, 2> claws;  // outside, inside
  DdStage dd = DdStage::m0;
  EpisodeIndex dd_episode = -1;
  std::array<OnOffState, on_off_lesions> others;
  OnFoot on;
};

constexpr std::size_t index_of(Foot foot) {
  return static_cast<std::size_t>(foot);
}

constexpr Claw claw_of(std::size_t index) {
  return index == 0 ? Claw::outside : Claw::inside;
}

constexpr bool is_hind(Foot foot) {
  return foot == Foot::lh || foot == Foot::rh;
}

/// The lesion a spot shows at that stage; only for one that is not sound.
constexpr Lesion lesion_of(HornSpot spot, HornStage stage) {
  if (spot == HornSpot::sole) return stage == HornStage::late ? Lesion::su : Lesion::sh;
  return stage == HornStage::late ? Lesion::wla : Lesion::wl;
}

constexpr Degree worse(Degree degree) {
  return degree == Degree::slight ? Degree::plain : Degree::bad;
}

}  // namespace evenclaw::demo
