// What the lines of a recording remember of each other: one line, and the one right behind it.
#pragma once

#include <string>
#include <vector>

#include "core/trade/foot.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

/// The line that is being taken; it begins empty, and nothing of it outlives the line.
struct ThisLine {
  bool calls_her_anew = false;       // her number begins a second call of her in the crush
  bool has_words_kept = false;       // as said, with the cow in the crush
  FootSet unnamed;                   // the feet it speaks of without naming them
  std::vector<std::string> learned;  // of her past; not shown yet
};

/// What a line did for which the next one may be meant: "no, 421" is of her who was let out with
/// it, "never mind" of what was refused. It is remembered for one line. What is said in between (a
/// blank line, "never mind", news put right) may keep it for one more.
struct LastLine {
  std::string refused;               // itself, when it was refused
  std::string lacks_foot;            // itself, when nothing but the foot was missing
  std::vector<std::string> told_of;  // the numbers of whom it told news, in order
  std::vector<std::string> left;     // the numbers of whom it told that she left, each time
  bool counted = false;              // animals together
  bool let_out = false;              // a cow was let out with it, or put right after that
  std::string whose;                 // itself, when it was asked whose is put right by it
  std::vector<Warning> asked;        // of her in the crush

  /// "Never mind": nothing waits any more of what was refused, and all else is as it was.
  void keep_but_refused(const LastLine& before);

  /// Nothing was called: a count or a cow let out before is still the last one.
  void keep_called(const LastLine& before);
};

}  // namespace evenclaw
