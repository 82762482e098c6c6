#include "core/api/told_two_ways.hpp"

#include <algorithm>
#include <cstddef>
#include <map>
#include <optional>
#include <utility>

namespace evenclaw {

namespace {

using Fates = std::vector<FateTold>;

FootSet both_in(const FateTold& a, const FateTold& b) {
  if (a.feet.empty()) return b.feet;
  if (b.feet.empty()) return a.feet;
  FootSet both;
  for (const Foot foot : all_feet) {
    if (a.feet.has(foot) && b.feet.has(foot)) both.add(foot);
  }
  return both;
}

bool speak_of_one(const FateTold& a, const FateTold& b) {
  return a.feet.empty() || b.feet.empty() || !both_in(a, b).empty();
}

bool contradict(const FateTold& off, const FateTold& on) {
  const bool is_pair = off.is_off && !on.is_off && speak_of_one(off, on);
  return is_pair && (off.device != on.device || off.order < on.order);
}

template <class Told>
bool is_settled(const std::vector<Told>& fates) {
  const auto last = std::max_element(
      fates.begin(), fates.end(), [](const Told& a, const Told& b) { return a.order < b.order; });
  const bool on_one_device = std::all_of(
      fates.begin(), fates.end(), [&](const Told& one) { return one.device == last->device; });
  return last->is_since || (last->is_news && on_one_device);
}

/// The feet told of both ways; nothing when none are.
std::optional<FootSet> feet_in_doubt(const Fates& fates) {
  std::optional<FootSet> feet;
  for (const FateTold& off : fates) {
    for (const FateTold& on : fates) {
      if (!contradict(off, on)) continue;
      if (!feet) feet = FootSet{};
      feet->add(both_in(off, on));
    }
  }
  return feet;
}

}  // namespace

std::vector<CowId> walk_told_two_ways(const std::vector<WalkTold>& told) {
  std::map<CowId, std::vector<WalkTold>> by_cow;
  for (const WalkTold& one : told) by_cow[one.cow].push_back(one);
  std::vector<CowId> cows;
  for (const auto& [cow, walks] : by_cow) {
    const auto sound =
        std::count_if(walks.begin(), walks.end(), [](const WalkTold& one) { return one.is_sound; });
    const bool is_both = sound > 0 && static_cast<std::size_t>(sound) < walks.size();
    if (is_both && !is_settled(walks)) cows.push_back(cow);
  }
  return cows;
}

bool tells_its_fate(FixtureStep step) {
  return is_off_after(step) || step == FixtureStep::left_on;
}

std::vector<ToldTwoWays> told_two_ways(const std::vector<FateTold>& told) {
  std::map<std::pair<CowId, Fixture>, Fates> by_cow;
  for (const FateTold& one : told) by_cow[{one.cow, one.fixture}].push_back(one);
  std::vector<ToldTwoWays> all;
  for (const auto& [of, fates] : by_cow) {
    const std::optional<FootSet> feet = feet_in_doubt(fates);
    if (feet && !is_settled(fates)) all.push_back({of.first, of.second, *feet});
  }
  return all;
}

}  // namespace evenclaw
