#include "cli/line_source.hpp"

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <system_error>

#include "core/base/text.hpp"

namespace evenclaw::cli {
namespace {

constexpr std::size_t longest_line = 4096;

std::optional<Fault> fault_in(const std::string& line, int number) {
  if (line.size() > longest_line) {
    return Fault{"line-too-long",
                 "this line is longer than a called line can be",
                 "",
                 number,
                 0,
                 "Break it in two, or check that the file holds called lines."};
  }
  if (line.find('\0') != std::string::npos || !is_utf8(line)) {
    return Fault{"file-unreadable",
                 "this line is not text in UTF-8",
                 "",
                 number,
                 0,
                 "Save the file as text in UTF-8 and give it again."};
  }
  return std::nullopt;
}

void drop_line_ending(std::string& line) {
  if (!line.empty() && line.back() == '\r') line.pop_back();
}

std::optional<Fault> fault_of_file(const std::string& path) {
  std::error_code error;
  const auto status = std::filesystem::status(path, error);
  if (!std::filesystem::exists(status)) {
    return Fault{"file-not-found", "there is no file " + path, path, 0, 0, ""};
  }
  if (std::filesystem::is_directory(status)) {
    return Fault{"file-unreadable", path + " is a folder", path, 0, 0, "Name a file of calls."};
  }
  if (std::filesystem::is_regular_file(status) &&
      static_cast<std::int64_t>(std::filesystem::file_size(path, error)) > largest_call_file) {
    return Fault{
        "file-too-large", path + " is over 64 MB, which is no day's calls", path, 0, 0, ""};
  }
  return std::nullopt;
}

}  // namespace

Result<std::optional<std::string>> next_line(std::istream& stream, int line_number) {
  std::string line;
  if (!std::getline(stream, line)) return std::optional<std::string>();
  drop_line_ending(line);
  if (auto fault = fault_in(line, line_number)) return *fault;
  return std::optional<std::string>(std::move(line));
}

Result<std::vector<std::string>> lines_of_file(const std::string& path) {
  if (auto fault = fault_of_file(path)) return *fault;
  std::ifstream stream(path, std::ios::binary);
  if (!stream) {
    return Fault{"file-unreadable", path + " cannot be opened: " + std::strerror(errno), path};
  }
  std::vector<std::string> lines;
  Faults faults;
  constexpr std::size_t enough_faults = 20;  // junk would give one for every line
  int number = 0;
  while (faults.size() < enough_faults) {
    auto line = next_line(stream, ++number);
    if (!line) {
      faults.insert(faults.end(), line.faults().begin(), line.faults().end());
    } else if (!line->has_value()) {
      break;
    } else {
      lines.push_back(std::move(**line));
    }
  }
  if (stream.bad()) {
    return Fault{"disk-failed", path + " could not be read to its end", path};
  }
  if (!faults.empty()) return faults;
  return lines;
}

}  // namespace evenclaw::cli
