// A line that was asked about with "?" before it was whole.
#pragma once

#include <string>

namespace evenclaw::cli {

/// What was typed before a "?" stands before the next line, so that nobody has to type it again and
/// a cow that was named in it is not lost.
class HalfLine {
 public:
  /// True when the line only asks what may follow, which a "?" at its end does, alone or behind a
  /// space; kept() is then what it asks about.
  bool asks(const std::string& typed);

  /// It was asked with "??": for all that may follow, not the likeliest alone.
  [[nodiscard]] bool wants_all() const { return wants_all_; }

  [[nodiscard]] const std::string& kept() const { return kept_; }

  /// The line that is meant: what was kept with this behind it, or this alone when it begins with
  /// what was kept again. An empty one drops what was kept. Keeps nothing from then on.
  std::string completed(const std::string& typed);

 private:
  std::string kept_;
  bool wants_all_ = false;
};

}  // namespace evenclaw::cli
