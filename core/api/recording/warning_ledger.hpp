// The warnings shown during one turn and what became of each.
#pragma once

#include <string_view>
#include <vector>

#include "core/trade/warning.hpp"

namespace evenclaw {

/// A warning is shown once, when it arises. It is settled by the words that made it vanish or by
/// "go ahead"; one that comes back after words had settled it is shown again.
class WarningLedger {
 public:
  WarningLedger() = default;
  /// As kept with a half-entered turn.
  explicit WarningLedger(const std::vector<WarningShown>& shown);

  /// Takes what fires after `words` were said; gives what has to be shown now.
  std::vector<Warning> update(const std::vector<Warning>& firing, std::string_view words);

  /// "go ahead" answers the stops and asks that are open; gives how many that were. A note asks
  /// nothing.
  int go_ahead();

  /// Stops and asks that fire and nobody has answered.
  [[nodiscard]] std::vector<Warning> unanswered() const;

  /// All of them with what was decided, "" where nobody answered.
  [[nodiscard]] std::vector<WarningShown> shown() const;

 private:
  struct Row {
    WarningShown shown;
    bool firing = true;
  };

  std::vector<Row> rows_;
};

}  // namespace evenclaw
