#include "core/trade/action.hpp"

namespace evenclaw {

std::optional<Day> day_meant(const TimeSaid& said, Day visit_day) {
  if (said.days) return visit_day + *said.days;
  if (said.weekday) return next_weekday(visit_day, *said.weekday);
  return said.date;
}

}  // namespace evenclaw
