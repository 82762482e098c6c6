#include "core/base/quotation.hpp"

#include <algorithm>

namespace evenclaw {

std::string quoted(std::string_view text) {
  constexpr char mark = '"';
  const auto marks = std::count(text.begin(), text.end(), mark);
  const bool is_quotation =
      marks == 2 && text.size() > 2 && text.front() == mark && text.back() == mark;
  if (is_quotation) return std::string(text);
  const char around = marks == 0 ? mark : '\'';
  return around + std::string(text) + around;
}

}  // namespace evenclaw
