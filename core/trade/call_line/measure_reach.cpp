#include "core/trade/call_line/measure_reach.hpp"

#include <cassert>
#include <cstddef>
#include <string>

namespace evenclaw {

namespace {

constexpr MeasureReach reach_table[] = {
    {MeasureKind::toe_length, Length{400}, Length{2000},
     "means of 72.5 to 89 mm: Ouweltjes 2009, Fjeldaas 2007; long toes grow to twice that: from "
     "memory"},
    {MeasureKind::heel_height, Length{100}, Length{900},
     "35 to 45 mm is good: DLG; means of 46 to 49.3 mm: Ouweltjes 2009"},
    {MeasureKind::sole_thickness, Length{10}, Length{250},
     "3.8 to 7 mm under the tip: Tsuka 2014, 800 hind claws in a scanner"}};

bool is_within(const MeasureReach& reach, Length length) {
  return reach.least <= length && length <= reach.most;
}

// The words of the call line for a measure, which with_quoted_words() turns into those of the
// language.
std::string_view words_for(MeasureKind kind) {
  switch (kind) {
    case MeasureKind::toe_length:
      return "length";
    case MeasureKind::heel_height:
      return "heel height";
    case MeasureKind::sole_thickness:
      return "sole thickness";
  }
  return {};
}

std::string remedy_for(const MeasureReach& reach, Length length) {
  constexpr std::int32_t slip = 10;
  const Length ten_times{length.tenths_mm * slip};
  const Length a_tenth{length.tenths_mm / slip};
  const bool is_whole = length.tenths_mm % slip == 0;
  if (is_whole && is_within(reach, a_tenth)) return "was {" + to_text(a_tenth) + "} meant?";
  if (is_within(reach, ten_times)) return "was {" + to_text(ten_times) + "} meant?";
  return "say it again";
}

}  // namespace

const MeasureReach& reach_of(MeasureKind kind) {
  const MeasureReach& reach = reach_table[static_cast<std::size_t>(kind)];
  assert(reach.kind == kind);
  return reach;
}

std::optional<Refusal> out_of_reach(MeasureKind kind, Length length) {
  const MeasureReach& reach = reach_of(kind);
  if (is_within(reach, length)) return std::nullopt;
  return impossible("no {" + std::string(words_for(kind)) + "} is " + to_text(length) +
                        "; it lies between " + to_text(reach.least) + " and " + to_text(reach.most),
                    remedy_for(reach, length));
}

}  // namespace evenclaw
