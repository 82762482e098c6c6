#include "core/api/recording/marks.hpp"

#include <algorithm>
#include <cstddef>

#include "core/trade/lesion.hpp"
#include "core/trade/not_called.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

void add_missing(std::string& missing, std::string_view what) {
  if (!missing.empty()) missing += ", ";
  missing += what;
}

std::string missing_of(const Finding& finding) {
  std::string missing;
  if (claw_is_missing(finding)) add_missing(missing, "claw");
  if (place_is_missing(finding)) add_missing(missing, "place");
  if (stage_is_missing(finding)) add_missing(missing, "stage");
  if (degree_is_missing(finding)) add_missing(missing, "degree");
  return missing;
}

}  // namespace

std::vector<Mark> marks_of(const Turn& turn) {
  std::vector<Mark> marks;
  for (const FootCall& call : turn.feet) {
    for (const Finding& finding : call.findings) {
      const std::string missing = missing_of(finding);
      if (missing.empty() || is_named_by_words(finding.lesion)) continue;
      marks.push_back({call.foot, finding.lesion, missing});
    }
  }
  return marks;
}

std::vector<std::string> told_of(const std::vector<Mark>& marks) {
  std::vector<std::string> told;
  for (std::size_t i = 0; i < marks.size(); ++i) {
    const auto same_thing = [&](const Mark& mark) {
      return mark.lesion == marks[i].lesion && mark.missing == marks[i].missing;
    };
    if (std::any_of(marks.begin(), marks.begin() + static_cast<std::ptrdiff_t>(i), same_thing)) {
      continue;
    }
    FootSet feet;
    for (const Mark& mark : marks) {
      if (same_thing(mark)) feet.add(mark.foot);
    }
    told.push_back(marks[i].missing + " not called (" + spoken(feet) + " " +
                   std::string(facts_of(marks[i].lesion).name) + ")");
  }
  return told;
}

}  // namespace evenclaw
