#include "core/trade/past_finding.hpp"

#include <algorithm>
#include <cstddef>
#include <set>
#include <tuple>

namespace evenclaw {

namespace {

constexpr std::string_view between_texts = " / ";

auto facts_told(const PastFinding& told) {
  return std::tuple(told.day, told.foot, told.claw, told.lesion, told.place, told.zone, told.degree,
                    told.stage);
}

void add_parts(std::string_view text, std::set<std::string, std::less<>>& parts) {
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(between_texts), text.size());
    if (end > 0) parts.emplace(text.substr(0, end));
    text.remove_prefix(std::min(end + between_texts.size(), text.size()));
  }
}

}  // namespace

bool is_same_finding(const PastFinding& a, const PastFinding& b) {
  return facts_told(a) == facts_told(b);
}

bool is_told_before(const PastFinding& a, const PastFinding& b) {
  return facts_told(a) < facts_told(b);
}

std::string told_together(std::string_view known, std::string_view more) {
  std::set<std::string, std::less<>> parts;
  add_parts(known, parts);
  add_parts(more, parts);
  std::string all;
  for (const std::string& part : parts) {
    if (!all.empty()) all += between_texts;
    all += part;
  }
  return all;
}

PastFinding finding_of(const PastFindingRow& row) {
  return {row.day,  row.foot,   row.claw,  row.lesion, row.place,
          row.zone, row.degree, row.stage, row.words,  row.remark};
}

}  // namespace evenclaw
