// Mobility scores: two scales that are never turned into each other.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "core/base/enum_words.hpp"

namespace evenclaw {

/// "2 of 3" is said on the scale 0-3, "3 of 5" on the scale 1-5. No official conversion exists.
enum class MobilityScale { zero_to_three, one_to_five };

template <>
struct EnumWords<MobilityScale> {
  static constexpr EnumWord<MobilityScale> table[] = {{MobilityScale::zero_to_three, "0-3"},
                                                      {MobilityScale::one_to_five, "1-5"}};
};

struct MobilityScaleFacts {
  MobilityScale scale;
  int lowest;
  int highest;  // what stands behind "of"
  std::string_view source;
};

struct MobilityFacts {
  MobilityScale scale;
  int score;
  std::string_view name;
  std::string_view seen;   // what is seen of her, in our own words
  std::string_view to_do;  // as the source says; "" where it says nothing
};

std::span<const MobilityScaleFacts> all_mobility_scales();
std::span<const MobilityFacts> all_mobility_scores();
const MobilityScaleFacts& facts_of(MobilityScale scale);

/// The scale whose highest score is said behind "of"; nothing when there is none such.
std::optional<MobilityScale> scale_up_to(int highest);

/// A score as called, with its scale; both or neither.
struct MobilitySaid {
  std::optional<MobilityScale> scale;
  std::optional<std::int32_t> score;

  [[nodiscard]] bool said() const { return scale.has_value() && score.has_value(); }

  friend bool operator==(const MobilitySaid&, const MobilitySaid&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("scale", &MobilitySaid::scale, "the scale it was scored on");
    visit("score", &MobilitySaid::score, "the score, never converted");
  }
};

}  // namespace evenclaw
