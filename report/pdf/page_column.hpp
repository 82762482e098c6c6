// The column of text on a page, and lines across it.
#pragma once

#include "report/pdf/pages.hpp"
#include "report/pdf/typesetter.hpp"

namespace evenclaw {

inline constexpr Across whole_column{0, column_width};

/// A straight line from left to right at the height `y`.
inline Path rule(const Across& across, double y, double width, Ink ink) {
  return line({across.left, y}, {across.left + across.width, y}, {ink, width, Dash::solid});
}

/// A strip with nothing on it but a rule at its lower edge.
inline Strip rule_below(const Across& across, double gap, double width, Ink ink) {
  Strip strip;
  strip.height = gap + width;
  strip.pieces.emplace_back(rule(across, gap + width / 2, width, ink));
  return strip;
}

/// A rule above the first strip with so much room between.
inline Strips ruled(Strips strips, const Across& across, double width, double gap) {
  if (strips.empty()) return strips;
  strips = padded(std::move(strips), width + gap, 0);
  strips.front().pieces.emplace_back(rule(across, width / 2, width, Ink::black));
  return strips;
}

inline Strips with_gaps(Strips strips, double before, double after) {
  if (strips.empty()) return strips;
  strips.front().gap_before = before;
  strips.back().gap_after = after;
  return strips;
}

}  // namespace evenclaw
