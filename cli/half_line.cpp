#include "cli/half_line.hpp"

#include <string_view>
#include <utility>

#include "core/base/text.hpp"

namespace evenclaw::cli {

namespace {

constexpr std::string_view mark = "?";
constexpr std::string_view mark_behind_words = " ?";

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
  if (line == mark) return true;
  if (line.size() < mark_behind_words.size()) return false;
  const std::size_t end = line.size() - mark_behind_words.size();
  if (line.substr(end) != mark_behind_words) return false;
  kept_ = completed(std::string(trimmed(line.substr(0, end))));
  return true;
}

std::string HalfLine::completed(const std::string& typed) {
  const std::string half = std::exchange(kept_, {});
  const std::string_view line = trimmed(typed);
  if (half.empty() || line.empty() || begins_with(line, half)) return typed;
  return joined(half, line);
}

}  // namespace evenclaw::cli
