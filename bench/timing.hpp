// How the benchmarks measure: wall time over repeats, and the most memory the process ever held.
#pragma once

#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

namespace evenclaw::bench {

/// Seconds of each of `repeats` runs, sorted; the first run, which warms up, is not counted.
template <class Work>
std::vector<double> seconds_of(int repeats, Work&& work) {
  std::vector<double> seconds;
  for (int run = 0; run <= repeats; ++run) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
    if (run > 0) seconds.push_back(took.count());
  }
  std::sort(seconds.begin(), seconds.end());
  return seconds;
}

inline double median(const std::vector<double>& sorted) {
  return sorted[sorted.size() / 2];
}

/// Megabytes (10^6 bytes) of the most resident memory so far.
inline double peak_memory_mb() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) * 1024 / 1e6;
}

/// One row of a Markdown table: what, the figure with its unit, the spread, what else to know.
inline void print_row(const char* what, double figure, const char* unit, double least, double most,
                      const char* note) {
  std::printf("| %s | %.4g %s | %.4g - %.4g | %s |\n", what, figure, unit, least, most, note);
}

}  // namespace evenclaw::bench
