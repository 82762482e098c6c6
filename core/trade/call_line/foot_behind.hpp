// Feet said behind what belongs to them: "wrap LH" would otherwise go to the foot before.
#pragma once

#include <optional>
#include <string_view>

#include "core/trade/call_line/grammar.hpp"
#include "core/trade/call_line/line_builder.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

/// Follows the steps of one line. A foot waits from when it is named, behind something said in the
/// same line and not parted from it by ";" or a full stop, until something is said of it. It is
/// refused when that does not happen before the next foot or the end of the line, and when it
/// stands right behind what was said and a separator follows ("wrap LH, spray").
/// A foot that opens a line, or follows ";", may stay without anything said of it.
class FootBehind {
 public:
  /// The next step of the line; the fault that shows with it.
  std::optional<PlacedFault> take(const Step& step, const Term& term);

  /// The fault of a line that ends here.
  [[nodiscard]] std::optional<PlacedFault> at_end() const;

 private:
  enum class Gap { none, weak, hard };

  struct Waiting {
    Term feet;
    bool is_glued = false;  // nothing stands between it and what was said before
    bool and_said = false;
  };

  void begin_waiting(const Term& feet);
  std::optional<PlacedFault> go_on_waiting(const Step& step, const Term& term);
  std::optional<PlacedFault> give_up();
  void note_said(const Step& step, const Term& term);

  [[nodiscard]] bool is_in_doubt() const { return waiting_->is_glued || lame_; }

  [[nodiscard]] PlacedFault fault() const;

  std::string_view said_;  // what was said last; "lame" and its feet when that was it
  std::string_view lame_word_;
  bool lame_ = false;
  FootSet lame_feet_;
  Gap gap_ = Gap::none;
  std::optional<Waiting> waiting_;
};

}  // namespace evenclaw
