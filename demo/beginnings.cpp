#include "demo/beginnings.hpp"

#include <array>
#include <cstddef>
#include <vector>

#include "demo/dermatitis.hpp"
#include "demo/horn.hpp"
#include "demo/on_off_lesions.hpp"
#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

/// What a rate goes with besides the spot.
enum class GoesWith { sole, white_line, skin, dirt, horn };
constexpr std::size_t kinds = 5;
using Times = std::array<double, kinds>;

/// A spot where a lesion may begin, with its rate on a mean cow of a mean farm.
struct Spot {
  GoesWith with;
  Foot foot;
  std::size_t claw = 0;               // of the horn
  const OnOffFacts* other = nullptr;  // of what is there or not
  double rate = 0;
};

std::vector<Spot> spots_of(Foot foot) {
  const double comes_back = value_of(Parameter::horn_comes_back);
  std::vector<Spot> spots;
  for (const std::size_t claw : {std::size_t{0}, std::size_t{1}}) {
    // As if it had been there before; of one that had not, fewer are taken.
    const double times = comes_back * rate_of_claw(foot, claw_of(claw));
    spots.push_back(
        {GoesWith::sole, foot, claw, nullptr, times * value_of(Parameter::bruise_begins)});
    spots.push_back(
        {GoesWith::white_line, foot, claw, nullptr, times * value_of(Parameter::fissure_begins)});
  }
  spots.push_back(
      {GoesWith::skin, foot, 0, nullptr, is_hind(foot) ? 1.0 : value_of(Parameter::dd_front)});
  for (const OnOffFacts& facts : all_on_off_lesions()) {
    const GoesWith with = facts.follows_dirt ? GoesWith::dirt : GoesWith::horn;
    spots.push_back({with, foot, 0, &facts, facts.begins * (is_hind(foot) ? 1.0 : facts.front)});
  }
  return spots;
}

struct AllSpots {
  std::vector<Spot> spots;
  Times sums{};  // of the rates, by what they go with
};

AllSpots all_spots() {
  AllSpots all;
  for (const Foot foot : all_feet) {
    for (const Spot& spot : spots_of(foot)) {
      all.spots.push_back(spot);
      all.sums[static_cast<std::size_t>(spot.with)] += spot.rate;
    }
  }
  return all;
}

Times times_of(const Cow& cow, const HerdWeek& herd) {
  const double horn = horn_rate(cow, herd.week);
  return {horn * herd.pressure.sole, horn * herd.pressure.white_line,
          skin_rate(cow, herd.week) * herd.pressure.skin * herd.infection, herd.pressure.dirt,
          horn};
}

void begin_horn(Cow& cow, const Spot& at, int week, Episodes& episodes) {
  const HornSpot spot = at.with == GoesWith::sole ? HornSpot::sole : HornSpot::white_line;
  HornState& horn = cow.feet[index_of(at.foot)].claws[at.claw].horn[static_cast<std::size_t>(spot)];
  if (horn.stage != HornStage::sound) return;
  const bool is_taken =
      horn.was_there_before || cow.steps.chance(1.0 / value_of(Parameter::horn_comes_back));
  if (!is_taken) return;
  begin_lesion(horn, {cow.number, week, at.foot, claw_of(at.claw), spot}, episodes);
}

void begin_at(Cow& cow, const Spot& at, int week, Episodes& episodes) {
  FootState& foot = cow.feet[index_of(at.foot)];
  if (at.other != nullptr) {
    begin_lesion(foot, *at.other, {cow.number, week, at.foot}, cow.steps, episodes);
  } else if (at.with == GoesWith::skin) {
    infect(foot, {cow.number, week, at.foot}, cow.steps, episodes);
  } else {
    begin_horn(cow, at, week, episodes);
  }
}

}  // namespace

void perhaps_begin(Cow& cow, const HerdWeek& herd, Episodes& episodes) {
  static const AllSpots all = all_spots();
  const Times times = times_of(cow, herd);
  double rate = 0;
  for (std::size_t kind = 0; kind < kinds; ++kind) rate += times[kind] * all.sums[kind];
  double left = cow.steps.uniform();
  if (left >= rate) return;
  for (const Spot& spot : all.spots) {
    left -= spot.rate * times[static_cast<std::size_t>(spot.with)];
    if (left < 0) return begin_at(cow, spot, herd.week, episodes);
  }
}

}  // namespace evenclaw::demo
