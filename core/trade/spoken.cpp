#include "core/trade/spoken.hpp"

#include <array>
#include <cstddef>

#include "core/base/ascii.hpp"

namespace evenclaw {

std::string_view spoken(Foot foot) {
  switch (foot) {
    case Foot::lf:
      return "left front";
    case Foot::rf:
      return "right front";
    case Foot::lh:
      return "left hind";
    case Foot::rh:
      return "right hind";
  }
  return {};
}

std::string spoken(const FootSet& feet) {
  if (feet == four_feet) return "all four feet";
  if (feet == hind_feet) return "both hinds";
  if (feet == front_feet) return "both fronts";
  std::string words;
  int left = feet.count();
  for (const Foot foot : all_feet) {
    if (!feet.has(foot)) continue;
    words += spoken(foot);
    --left;
    if (left > 0) words += left == 1 ? " and " : ", ";
  }
  return words;
}

std::string_view spoken(Claw claw) {
  switch (claw) {
    case Claw::outside:
      return "outside";
    case Claw::inside:
      return "inside";
    case Claw::both:
      return "both";
    case Claw::none:
    case Claw::not_called:
      return {};
  }
  return {};
}

std::string spoken(Day day) {
  constexpr std::array<std::string_view, 12> months = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                       "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
  const CivilDate date = civil_of(day);
  return std::to_string(date.day) + ' ' +
         std::string(months[static_cast<std::size_t>(date.month - 1)]);
}

std::string spoken_with_weekday(Day day) {
  constexpr std::size_t letters = 3;
  return sentence(std::string(word_of(weekday_of(day)).substr(0, letters))) + ' ' + spoken(day);
}

std::string sentence(std::string text) {
  if (!text.empty()) text[0] = capital(text[0]);
  return text;
}

}  // namespace evenclaw
