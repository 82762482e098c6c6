// The lines of the example visits, as the benchmarks use them.
#pragma once

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace evenclaw::bench {

/// Every line of data/example/*.calls, in order of the files; empty when it is not run from the
/// root of the repository.
inline std::vector<std::string> called_lines() {
  std::vector<std::filesystem::path> files;
  std::error_code fault;
  for (const auto& file : std::filesystem::directory_iterator("data/example", fault)) {
    if (file.path().extension() == ".calls") files.push_back(file.path());
  }
  std::sort(files.begin(), files.end());
  std::vector<std::string> lines;
  for (const auto& file : files) {
    std::ifstream stream(file);
    for (std::string line; std::getline(stream, line);) lines.push_back(line);
  }
  return lines;
}

}  // namespace evenclaw::bench
