#include "core/api/said_day.hpp"

#include <string_view>

#include "core/trade/spoken.hpp"

namespace evenclaw {

std::string said_day(Day day, Day near) {
  constexpr std::size_t letters_of_weekday = 3;
  const std::string_view weekday = word_of(weekday_of(day)).substr(0, letters_of_weekday);
  std::string words = sentence(std::string(weekday)) + ' ' + spoken(day);
  const int year = civil_of(day).year;
  return year == civil_of(near).year ? words : words + ' ' + std::to_string(year);
}

}  // namespace evenclaw
