#include "cli/half_line.hpp"

#include <string_view>
#include <utility>

#include "core/base/text.hpp"

namespace evenclaw::cli {

namespace {

constexpr char mark = '?';
constexpr std::size_t most_marks = 2;  // "?" and, for all of it, "??"

/// How many marks the line ends with, alone or behind a space; 0 when it asks nothing.
std::size_t marks_at_end(std::string_view line) {
  const std::size_t last = line.find_last_not_of(mark);
  if (last == std::string_view::npos) return line.size() <= most_marks ? line.size() : 0;
  const std::size_t marks = line.size() - last - 1;
  return line[last] == ' ' && marks <= most_marks ? marks : 0;
}

std::string joined(const std::string& half, std::string_view rest) {
  if (half.empty() || rest.empty()) return half + std::string(rest);
  return half + ' ' + std::string(rest);
}

bool begins_with(std::string_view line, std::string_view half) {
  return fold_case(line.substr(0, half.size())) == fold_case(half);
}

}  // namespace

bool HalfLine::asks(const std::string& typed) {
  const std::string_view line = trimmed(typed);
  const std::size_t marks = marks_at_end(line);
  if (marks == 0) return false;
  wants_all_ = marks == most_marks;
  const std::string_view words = trimmed(line.substr(0, line.size() - marks));
  if (words.empty()) return true;
  kept_ = completed(std::string(words));
  return true;
}

std::string HalfLine::completed(const std::string& typed) {
  const std::string half = std::exchange(kept_, {});
  const std::string_view line = trimmed(typed);
  if (half.empty() || line.empty() || begins_with(line, half)) return typed;
  return joined(half, line);
}

}  // namespace evenclaw::cli
