// Feet, the two claws of a foot, and sets of feet.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

#include "core/base/enum_words.hpp"

namespace evenclaw {

enum class Foot { lf, rf, lh, rh };

template <>
struct EnumWords<Foot> {
  static constexpr EnumWord<Foot> table[] = {
      {Foot::lf, "LF"}, {Foot::rf, "RF"}, {Foot::lh, "LH"}, {Foot::rh, "RH"}};
};

inline constexpr std::array<Foot, 4> all_feet = {Foot::lf, Foot::rf, Foot::lh, Foot::rh};

/// Outside is lateral, inside is medial. `none` where a claw makes no sense (skin between the
/// claws, a wrap); `not_called` where it does but nobody said it.
enum class Claw { none, not_called, outside, inside, both };

template <>
struct EnumWords<Claw> {
  static constexpr EnumWord<Claw> table[] = {{Claw::none, "none"},
                                             {Claw::not_called, "not_called"},
                                             {Claw::outside, "outside"},
                                             {Claw::inside, "inside"},
                                             {Claw::both, "both"}};
};

/// Any number of the four feet; text form "LH RH" in the order LF RF LH RH, "" when empty.
class FootSet {
 public:
  constexpr FootSet() = default;

  constexpr FootSet(std::initializer_list<Foot> feet) {
    for (Foot foot : feet) add(foot);
  }

  constexpr void add(Foot foot) { bits_ |= bit(foot); }

  constexpr void add(const FootSet& feet) { bits_ |= feet.bits_; }

  constexpr void remove(Foot foot) { bits_ &= static_cast<std::uint8_t>(~bit(foot)); }

  [[nodiscard]] constexpr bool has(Foot foot) const { return (bits_ & bit(foot)) != 0; }

  [[nodiscard]] constexpr bool empty() const { return bits_ == 0; }

  [[nodiscard]] constexpr int count() const {
    int n = 0;
    for (Foot foot : all_feet) n += has(foot) ? 1 : 0;
    return n;
  }

  friend constexpr bool operator==(const FootSet&, const FootSet&) = default;

 private:
  static constexpr std::uint8_t bit(Foot foot) {
    return static_cast<std::uint8_t>(1U << static_cast<unsigned>(foot));
  }

  std::uint8_t bits_ = 0;
};

inline constexpr FootSet hind_feet{Foot::lh, Foot::rh};
inline constexpr FootSet front_feet{Foot::lf, Foot::rf};
inline constexpr FootSet four_feet{Foot::lf, Foot::rf, Foot::lh, Foot::rh};

std::string to_text(const FootSet& feet);
std::optional<FootSet> value_from_text(std::string_view text, std::type_identity<FootSet>);

/// Left and right exchanged: LH for RH.
constexpr Foot other_side(Foot foot) {
  switch (foot) {
    case Foot::lf:
      return Foot::rf;
    case Foot::rf:
      return Foot::lf;
    case Foot::lh:
      return Foot::rh;
    case Foot::rh:
      return Foot::lh;
  }
  return foot;
}

/// The partner: inside for outside and the reverse; anything else unchanged.
constexpr Claw partner(Claw claw) {
  if (claw == Claw::outside) return Claw::inside;
  if (claw == Claw::inside) return Claw::outside;
  return claw;
}

}  // namespace evenclaw
