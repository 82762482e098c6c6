// Shares of a count and how sure they are: Wilson's interval, Newcombe's for a difference.
// docs/method/proportion.md works an example of each by hand.
#pragma once

#include <cstdint>
#include <optional>

namespace evenclaw {

/// k of n: 24 of 41 cows. 0 <= k <= n.
struct Proportion {
  std::int64_t k = 0;
  std::int64_t n = 0;
};

/// From low to high, as parts of 1.
struct Interval {
  double low = 0.0;
  double high = 0.0;
};

/// Two-sided 95 % of the normal distribution.
inline constexpr double z_of_95 = 1.959963984540054;

/// k/n. Nothing of no cows.
std::optional<double> share_of(const Proportion& counts);

/// Wilson 1927 (score interval, without continuity correction), with p = k/n:
/// (p + z^2/2n -+ z sqrt(p(1-p)/n + z^2/4n^2)) / (1 + z^2/n). Lies within 0 and 1, also for 0 of n
/// and n of n. It takes the n for independent. Nothing of no cows.
std::optional<Interval> wilson_interval(const Proportion& counts, double z = z_of_95);

/// p_now - p_then, each p with its Wilson limits l and u (Newcombe 1998, Stat Med 17:873, method
/// 10): d - sqrt((p_now - l_now)^2 + (u_then - p_then)^2) to
/// d + sqrt((u_now - p_now)^2 + (p_then - l_then)^2). For two groups that have nothing to do with
/// each other; where many of both are the same and tend to stay as they were it is too wide.
/// Nothing when either is of no cows.
std::optional<Interval> difference_interval(const Proportion& now, const Proportion& then,
                                            double z = z_of_95);

}  // namespace evenclaw
