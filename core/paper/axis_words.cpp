#include "core/paper/axis_words.hpp"

#include <algorithm>

#include "core/paper/drawn_words.hpp"

namespace evenclaw {

namespace {

constexpr double between_words = 1;  // mm

bool all_fit(const std::vector<Tick>& ticks, double mm_per_unit, double size) {
  for (std::size_t i = 1; i < ticks.size(); ++i) {
    const double apart = (ticks[i].value - ticks[i - 1].value) * mm_per_unit;
    const double needed =
        (drawn_width(ticks[i - 1].text, size) + drawn_width(ticks[i].text, size)) / 2;
    if (apart < needed + between_words) return false;
  }
  return true;
}

std::vector<Tick> every(std::size_t step, const std::vector<Tick>& ticks) {
  std::vector<Tick> some;
  for (std::size_t i = 0; i < ticks.size(); i += step) some.push_back(ticks[i]);
  return some;
}

double widest(const std::vector<Tick>& ticks, double size) {
  double width = 0;
  for (const Tick& tick : ticks) width = std::max(width, drawn_width(tick.text, size));
  return width;
}

}  // namespace

AxisWordsSet set_below(const std::vector<Tick>& ticks, bool are_names, const Range& range,
                       double width, double size) {
  const double mm_per_unit = width / (range.most - range.least);
  std::vector<Tick> in_order = ticks;
  std::stable_sort(in_order.begin(), in_order.end(),
                   [](const Tick& a, const Tick& b) { return a.value < b.value; });
  if (are_names && !all_fit(in_order, mm_per_unit, size)) {
    return {ticks, true, widest(ticks, size)};
  }
  std::size_t step = 1;
  while (step < in_order.size() && !all_fit(every(step, in_order), mm_per_unit, size)) ++step;
  return {every(step, in_order), false, size};
}

}  // namespace evenclaw
