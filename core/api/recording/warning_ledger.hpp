// The warnings shown during one turn and what became of each.
#pragma once

#include <span>
#include <string>
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
  /// As recorded with a turn in these words. What was told of her wrap or block in other words was
  /// told outside the crush: it holds although the turn itself says nothing of it.
  WarningLedger(const std::vector<WarningShown>& shown, std::span<const std::string> said);

  /// Takes what fires after `words` were said; gives what has to be shown now. What she went ahead
  /// with in a turn recorded before holds until a check of the `finished` turn says otherwise.
  std::vector<Warning> update(const std::vector<Warning>& firing, std::string_view words,
                              bool finished = true);

  /// "go ahead" answers the stops and asks that are open; gives how many that were. A note asks
  /// nothing.
  int go_ahead();

  /// It was shown before.
  [[nodiscard]] bool holds(const Warning& warning) const;

  /// Stops and asks that fire and nobody has answered.
  [[nodiscard]] std::vector<Warning> unanswered() const;

  /// All of them with what was decided, "" where nobody answered.
  [[nodiscard]] std::vector<WarningShown> shown() const;

 private:
  struct Row {
    WarningShown shown;
    bool firing = true;
    bool told_outside = false;  // answered, whatever the turn says
    bool of_before = false;     // kept or recorded
  };

  std::vector<Row> rows_;
};

}  // namespace evenclaw
