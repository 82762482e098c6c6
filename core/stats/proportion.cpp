#include "core/stats/proportion.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace evenclaw {

std::optional<double> share_of(const Proportion& counts) {
  assert(counts.k >= 0 && counts.k <= counts.n);
  if (counts.n <= 0) return std::nullopt;
  return static_cast<double>(counts.k) / static_cast<double>(counts.n);
}

std::optional<Interval> wilson_interval(const Proportion& counts, double z) {
  const std::optional<double> share = share_of(counts);
  if (!share) return std::nullopt;
  const double p = *share;
  const auto n = static_cast<double>(counts.n);
  const double square = z * z;
  const double scale = 1.0 + square / n;
  const double centre = (p + square / (2.0 * n)) / scale;
  const double half = z * std::sqrt(p * (1.0 - p) / n + square / (4.0 * n * n)) / scale;
  return Interval{std::max(0.0, centre - half), std::min(1.0, centre + half)};
}

std::optional<Interval> difference_interval(const Proportion& now, const Proportion& then,
                                            double z) {
  const auto of_now = wilson_interval(now, z);
  const auto of_then = wilson_interval(then, z);
  if (!of_now || !of_then) return std::nullopt;
  const double p_now = *share_of(now);
  const double p_then = *share_of(then);
  const double difference = p_now - p_then;
  return Interval{difference - std::hypot(p_now - of_now->low, of_then->high - p_then),
                  difference + std::hypot(of_now->high - p_now, p_then - of_then->low)};
}

}  // namespace evenclaw
