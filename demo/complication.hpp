// What makes the records of a real business hard to read, each of which can be left out.
#pragma once

#include <array>
#include <cstdint>

#include "core/base/enum_words.hpp"

namespace evenclaw::demo {

enum class Complication {
  worse_feet_treated_more,   // a block is put on bad feet more often than on slight ones
  extra_visits_for_lame,     // lame cows are seen between the rounds
  sound_feet_not_written,    // one caller in three leaves "nothing found" unsaid
  caller_drifts,             // one caller sees more of the slight ones every year
  caller_replaced,           // one caller is followed by another who sees otherwise
  treatment_resets,          // a treated lesion starts from another state than it was found in
  changes_after_bad_visits,  // a farm alters something when a visit was bad, else at any time
  correlated_exposures,      // old barns are hard, dirty and without a bath at once
  dd_spreads,                // between cows; else each catches it for herself
  tasks_never_told           // on one farm in three nobody says what was done since
};

}  // namespace evenclaw::demo

namespace evenclaw {

template <>
struct EnumWords<demo::Complication> {
  using C = demo::Complication;
  static constexpr EnumWord<C> table[] = {{C::worse_feet_treated_more, "worse_feet_treated_more"},
                                          {C::extra_visits_for_lame, "extra_visits_for_lame"},
                                          {C::sound_feet_not_written, "sound_feet_not_written"},
                                          {C::caller_drifts, "caller_drifts"},
                                          {C::caller_replaced, "caller_replaced"},
                                          {C::treatment_resets, "treatment_resets"},
                                          {C::changes_after_bad_visits, "changes_after_bad_visits"},
                                          {C::correlated_exposures, "correlated_exposures"},
                                          {C::dd_spreads, "dd_spreads"},
                                          {C::tasks_never_told, "tasks_never_told"}};
};

}  // namespace evenclaw

namespace evenclaw::demo {

/// Which of them hold; all of them unless left out.
class Complications {
 public:
  [[nodiscard]] constexpr bool has(Complication which) const { return (bits_ & bit(which)) != 0; }

  constexpr void leave_out(Complication which) { bits_ &= static_cast<std::uint32_t>(~bit(which)); }

  friend constexpr bool operator==(const Complications&, const Complications&) = default;

 private:
  static constexpr std::uint32_t bit(Complication which) {
    return std::uint32_t{1} << static_cast<unsigned>(which);
  }

  std::uint32_t bits_ = (std::uint32_t{1} << std::size(EnumWords<Complication>::table)) - 1;
};

}  // namespace evenclaw::demo
