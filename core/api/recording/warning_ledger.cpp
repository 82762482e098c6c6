#include "core/api/recording/warning_ledger.hpp"

#include <algorithm>

#include "core/base/text.hpp"
#include "core/trade/check.hpp"

namespace evenclaw {

namespace {

bool same_warning(const Warning& a, const Warning& b) {
  return a.rule == b.rule && a.foot == b.foot && a.claw == b.claw;
}

bool is_among(const Warning& warning, const std::vector<Warning>& warnings) {
  return std::any_of(warnings.begin(), warnings.end(),
                     [&](const Warning& other) { return same_warning(other, warning); });
}

/// Her milk was told of since, and her meat is asked about.
const Warning* asked_otherwise(const WarningShown& shown, const std::vector<Warning>& firing) {
  if (shown.warning.rule != withdrawal_missing_rule || !shown.decision.empty()) return nullptr;
  const auto now = std::find_if(firing.begin(), firing.end(), [&](const Warning& warning) {
    return same_warning(warning, shown.warning) && warning.words != shown.warning.words;
  });
  return now == firing.end() ? nullptr : &*now;
}

}  // namespace

WarningLedger::WarningLedger(const std::vector<WarningShown>& shown) {
  for (const WarningShown& one : shown) {
    const bool firing = one.decision.empty() || one.decision == went_ahead;
    rows_.push_back({one, firing, false, true});
  }
}

WarningLedger::WarningLedger(const std::vector<WarningShown>& shown,
                             std::span<const std::string> said)
    : WarningLedger(shown) {
  for (Row& row : rows_) {
    const std::string& decision = row.shown.decision;
    const bool was_said = std::find(said.begin(), said.end(), decision) != said.end();
    row.told_outside = !decision.empty() && decision != went_ahead && !was_said &&
                       fixture_asked_about(row.shown.warning).has_value();
  }
}

std::vector<Warning> WarningLedger::update(const std::vector<Warning>& firing,
                                           std::string_view words, bool finished) {
  std::vector<Warning> to_show;
  for (Row& row : rows_) {
    const bool fires = is_among(row.shown.warning, firing);
    if (row.firing && !fires && row.shown.decision.empty()) row.shown.decision = trimmed(words);
    if (!row.firing && fires && !row.told_outside) {
      row.shown.decision.clear();
      to_show.push_back(row.shown.warning);
    }
    if (const Warning* now = row.firing ? asked_otherwise(row.shown, firing) : nullptr) {
      row.shown.warning = *now;
      to_show.push_back(*now);
    }
    const bool may_fire = !finished && row.of_before && row.shown.decision == went_ahead;
    row.firing = fires || (row.firing && may_fire);
  }
  for (const Warning& warning : firing) {
    const bool known = std::any_of(rows_.begin(), rows_.end(), [&](const Row& row) {
      return same_warning(row.shown.warning, warning);
    });
    if (known) continue;
    rows_.push_back({{warning, {}}, true});
    to_show.push_back(warning);
  }
  return to_show;
}

bool WarningLedger::holds(const Warning& warning) const {
  return std::any_of(rows_.begin(), rows_.end(),
                     [&](const Row& row) { return same_warning(row.shown.warning, warning); });
}

int WarningLedger::go_ahead() {
  int answered = 0;
  for (Row& row : rows_) {
    const bool asks = row.shown.warning.rank != Rank::note;
    if (!asks || !row.firing || !row.shown.decision.empty()) continue;
    row.shown.decision = went_ahead;
    ++answered;
  }
  return answered;
}

std::vector<Warning> WarningLedger::unanswered() const {
  std::vector<Warning> open;
  for (const Row& row : rows_) {
    const Warning& warning = row.shown.warning;
    if (row.firing && row.shown.decision.empty() && warning.rank != Rank::note) {
      open.push_back(warning);
    }
  }
  return open;
}

std::vector<WarningShown> WarningLedger::shown() const {
  std::vector<WarningShown> all;
  for (const Row& row : rows_) all.push_back(row.shown);
  return all;
}

}  // namespace evenclaw
