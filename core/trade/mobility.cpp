#include "core/trade/mobility.hpp"

#include <cassert>
#include <cstddef>

namespace evenclaw {

namespace {

using M = MobilityScale;

constexpr MobilityScaleFacts scale_table[] = {
    {M::zero_to_three, 0, 3,
     "AHDB/DairyCo mobility score (sheet of 2011); 2 and 3 count as lame (DAERA)"},
    {M::one_to_five, 1, 5,
     "Sprecher, Hostetler and Kaneene 1997, Theriogenology 47:1179, in the wording of Cornell "
     "NYSCHAP; 3 to 5 prompt treatment there"},
};

constexpr MobilityFacts score_table[] = {
    {M::zero_to_three, 0, "good", "even weight and rhythm on four feet, back flat",
     "nothing but the routine trim when it is due"},
    {M::zero_to_three, 1, "imperfect",
     "uneven steps or short strides; which leg it is cannot be told at once",
     "watch her; may be better for a routine trim"},
    {M::zero_to_three, 2, "impaired",
     "uneven weight on a leg that can be told, or clearly short strides; back mostly arched",
     "lame: lift the foot and find the cause as soon as practicable"},
    {M::zero_to_three, 3, "severely impaired", "as 2, and she cannot keep up with the healthy herd",
     "very lame: urgent attention, further professional advice, no long walks, straw or grass"},
    {M::one_to_five, 1, "normal", "back level standing and walking, gait normal", ""},
    {M::one_to_five, 2, "mildly lame", "back level standing, arched walking; gait normal", ""},
    {M::one_to_five, 3, "moderately lame",
     "back arched standing and walking; short strides in one or more legs", "treat"},
    {M::one_to_five, 4, "lame",
     "back arched; one deliberate step at a time, spares one or more legs", "treat"},
    {M::one_to_five, 5, "severely lame",
     "back arched; hardly bears weight on one or more legs, or not at all", "treat"},
};

}  // namespace

std::span<const MobilityScaleFacts> all_mobility_scales() {
  return scale_table;
}

std::span<const MobilityFacts> all_mobility_scores() {
  return score_table;
}

const MobilityScaleFacts& facts_of(MobilityScale scale) {
  const auto index = static_cast<std::size_t>(scale);
  assert(scale_table[index].scale == scale);
  return scale_table[index];
}

std::optional<MobilityScale> scale_up_to(int highest) {
  for (const MobilityScaleFacts& facts : scale_table) {
    if (facts.highest == highest) return facts.scale;
  }
  return std::nullopt;
}

}  // namespace evenclaw
