// Sets text: breaks it into lines of a given width and knows how wide and high they are.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/paper/document.hpp"
#include "report/pdf/font_map.hpp"
#include "report/pdf/strip.hpp"

namespace evenclaw {

inline constexpr double mm_per_point = 25.4 / 72;

struct TextStyle {
  double points = 11;
  bool strong = false;      // what is plain is set bold
  bool quiet = false;       // what is plain is set grey
  double quiet_points = 0;  // of what is said quietly; 0 is as large as the rest
  double line = 1.35;       // from baseline to baseline, times the size
  Align align = Align::start;
  int most_lines = 0;  // what is left over ends in dots; 0 leaves nothing over
};

/// Where text stands in the column of the page.
struct Across {
  double left = 0;  // mm
  double width = 0;
};

class Typesetter {
 public:
  /// Faults: "print-failed".
  static Result<Typesetter> with(const std::vector<PrintFont>& fonts, FontReach reach,
                                 const std::string& language);

  /// No lines for no text. A word wider than `width` millimetres is broken.
  std::vector<SetLine> lines(const Runs& runs, const TextStyle& style, double width);

  /// A strip per line, the lines at the side the style says.
  Strips strips(const Runs& runs, const TextStyle& style, const Across& across);

  /// How wide it is on one line, and how wide its widest word.
  double natural_width(const Runs& runs, const TextStyle& style);
  double widest_word(const Runs& runs, const TextStyle& style);

  /// True when a letter was asked for that the fonts do not have.
  [[nodiscard]] bool lacks_letters() const { return lacks_letters_; }

 private:
  explicit Typesetter(std::shared_ptr<void> context) : context_(std::move(context)) {}

  std::shared_ptr<void> context_;  // a PangoContext
  bool lacks_letters_ = false;
};

}  // namespace evenclaw
