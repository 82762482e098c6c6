// Why a cow came into the crush, and sets of such reasons.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

#include "core/base/enum_words.hpp"

namespace evenclaw {

enum class Reason { not_called, routine, lame, recheck, dry_off, heifer, fresh, other };

template <>
struct EnumWords<Reason> {
  static constexpr EnumWord<Reason> table[] = {
      {Reason::not_called, "not_called"}, {Reason::routine, "routine"}, {Reason::lame, "lame"},
      {Reason::recheck, "recheck"},       {Reason::dry_off, "dry_off"}, {Reason::heifer, "heifer"},
      {Reason::fresh, "fresh"},           {Reason::other, "other"}};
};

/// Any number of reasons; text form "lame dry_off" in the order of Reason, "" when empty.
class ReasonSet {
 public:
  constexpr ReasonSet() = default;

  constexpr ReasonSet(std::initializer_list<Reason> reasons) {
    for (const Reason reason : reasons) add(reason);
  }

  constexpr void add(Reason reason) { bits_ = static_cast<std::uint16_t>(bits_ | bit(reason)); }

  [[nodiscard]] constexpr bool has(Reason reason) const { return (bits_ & bit(reason)) != 0; }

  [[nodiscard]] constexpr bool empty() const { return bits_ == 0; }

  friend constexpr bool operator==(const ReasonSet&, const ReasonSet&) = default;

 private:
  static constexpr std::uint16_t bit(Reason reason) {
    return static_cast<std::uint16_t>(1U << static_cast<unsigned>(reason));
  }

  std::uint16_t bits_ = 0;
};

std::string to_text(const ReasonSet& reasons);
std::optional<ReasonSet> value_from_text(std::string_view text, std::type_identity<ReasonSet>);

}  // namespace evenclaw
