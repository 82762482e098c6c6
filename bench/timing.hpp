// How the benchmarks measure: wall time over repeats, and the most memory the process ever held.
#pragma once

#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string>
#include <utility>
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

/// One row of a Markdown table.
struct Row {
  std::string what;
  double figure = 0;
  const char* unit = "";
  double least = 0;
  double most = 0;
  std::string note;  // repeats and conditions
};

inline void print_row(const Row& row) {
  std::printf("| %s | %.4g %s | %.4g - %.4g | %s |\n", row.what.c_str(), row.figure, row.unit,
              row.least, row.most, row.note.c_str());
}

/// How many of `items` were done per second, from the sorted seconds of the repeats.
inline Row rate_of(std::string what, const char* unit, double items,
                   const std::vector<double>& seconds) {
  return {
      std::move(what),        items / median(seconds), unit,
      items / seconds.back(), items / seconds.front(), std::to_string(seconds.size()) + " repeats"};
}

}  // namespace evenclaw::bench
