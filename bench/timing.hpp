// How the benchmarks measure: wall and processor time over repeats, and the most memory the process
// ever held.
#pragma once

#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <string>
#include <utility>
#include <vector>

namespace evenclaw::bench {

/// Seconds of each run, sorted. On a machine that others use too, the processor's are the truer.
struct Times {
  std::vector<double> wall;
  std::vector<double> cpu;
};

/// The first run, which warms up, is not counted.
template <class Work>
Times times_of(int repeats, Work&& work) {
  Times times;
  for (int run = 0; run <= repeats; ++run) {
    const auto begin = std::chrono::steady_clock::now();
    const std::clock_t cpu_begin = std::clock();
    work();
    const std::clock_t cpu_end = std::clock();
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
    if (run == 0) continue;
    times.wall.push_back(took.count());
    times.cpu.push_back(static_cast<double>(cpu_end - cpu_begin) / CLOCKS_PER_SEC);
  }
  std::sort(times.wall.begin(), times.wall.end());
  std::sort(times.cpu.begin(), times.cpu.end());
  return times;
}

/// The wall time alone.
template <class Work>
std::vector<double> seconds_of(int repeats, Work&& work) {
  return times_of(repeats, std::forward<Work>(work)).wall;
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

/// The median wall time with its spread; the processor's stands in the note.
inline Row row_in_ms(std::string what, const Times& times, const std::string& note) {
  char cpu[32];
  std::snprintf(cpu, sizeof cpu, "%.4g", median(times.cpu) * 1e3);
  return {std::move(what),
          median(times.wall) * 1e3,
          "ms",
          times.wall.front() * 1e3,
          times.wall.back() * 1e3,
          std::to_string(times.wall.size()) + " repeats, CPU " + cpu + " ms; " + note};
}

/// How many of `items` were done per second, from the sorted seconds of the repeats.
inline Row rate_of(std::string what, const char* unit, double items,
                   const std::vector<double>& seconds) {
  return {
      std::move(what),        items / median(seconds), unit,
      items / seconds.back(), items / seconds.front(), std::to_string(seconds.size()) + " repeats"};
}

}  // namespace evenclaw::bench
