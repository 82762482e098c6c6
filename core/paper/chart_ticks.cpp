#include "core/paper/chart_ticks.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace evenclaw {

namespace {

constexpr double largest = 1e12;
constexpr double closest = 1e-9;
// What may be lost in a division before a number no longer counts as round.
constexpr double rounding = 1e-9;

/// A distance of 1, 2 or 5 times a power of ten, kept as whole numbers so that every target writes
/// the same digits.
struct Distance {
  std::int64_t digit = 1;
  int power = -9;
};

double power_of_ten(int power) {
  double value = 1;
  for (int i = 0; i < power; ++i) value *= 10;
  return value;
}

/// Dividing by an exact power of ten rounds once, multiplying by 0.1 would not.
double value_of(std::int64_t number, int power) {
  const auto value = static_cast<double>(number);
  return power < 0 ? value / power_of_ten(-power) : value * power_of_ten(power);
}

Distance next(Distance distance) {
  if (distance.digit == 1) return {2, distance.power};
  if (distance.digit == 2) return {5, distance.power};
  return {1, distance.power + 1};
}

std::string text_of(std::int64_t number, int power) {
  const bool negative = number < 0;
  std::string digits = std::to_string(negative ? -number : number);
  if (power >= 0) {
    if (number != 0) digits.append(static_cast<std::size_t>(power), '0');
  } else {
    const auto decimals = static_cast<std::size_t>(-power);
    if (digits.size() <= decimals) digits.insert(0, decimals + 1 - digits.size(), '0');
    digits.insert(digits.size() - decimals, ".");
    while (digits.back() == '0') digits.pop_back();
    if (digits.back() == '.') digits.pop_back();
  }
  if (negative) digits.insert(0, "\xe2\x88\x92");  // a minus, as wide as a digit
  return digits;
}

Range usable(Range range) {
  const double least = std::clamp(std::min(range.least, range.most), -largest, largest);
  const double most = std::clamp(std::max(range.least, range.most), -largest, largest);
  const double magnitude = std::max(std::abs(least), std::abs(most));
  const double narrowest = std::max(closest, magnitude * closest);
  if (most - least > narrowest) return {least, most};
  const double widened = std::max(0.5, magnitude / 10);
  return {least - widened, most + widened};
}

}  // namespace

std::vector<Tick> nice_ticks(Range range, int about) {
  const Range used = usable(range);
  const double widest = (used.most - used.least) / std::max(1, about);
  Distance distance;
  while (value_of(distance.digit, distance.power) < widest * (1 - rounding)) {
    distance = next(distance);
  }
  const double step = value_of(distance.digit, distance.power);
  const auto first = static_cast<std::int64_t>(std::floor(used.least / step + rounding));
  const auto last = static_cast<std::int64_t>(std::ceil(used.most / step - rounding));
  std::vector<Tick> ticks;
  for (std::int64_t i = first; i <= std::max(last, first + 1); ++i) {
    const std::int64_t number = i * distance.digit;
    ticks.push_back({value_of(number, distance.power), text_of(number, distance.power)});
  }
  return ticks;
}

}  // namespace evenclaw
