#include "core/trade/action.hpp"

namespace evenclaw {

std::optional<Day> day_meant(const TimeSaid& said, Day visit_day) {
  // What the call line reads at most; a log may hold any number, and the calendar ends.
  constexpr std::int32_t longest_days = 99'999;
  if (said.days && (*said.days < 0 || *said.days > longest_days)) return std::nullopt;
  if (said.days) return visit_day + *said.days;
  if (said.weekday) return next_weekday(visit_day, *said.weekday);
  return said.date;
}

}  // namespace evenclaw
