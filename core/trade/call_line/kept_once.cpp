#include "core/trade/call_line/kept_once.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include "core/trade/call_line/said_again.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

namespace {

template <class Items, class T>
auto said_alike(Items& all, const T& said) {
  return std::find_if(all.begin(), all.end(),
                      [&said](const T& each) { return are_one(each, said); });
}

/// Takes the words of a correction off one foot, saying by saying.
class TakenOff {
 public:
  /// `right`: what was called of the right foot before; null when nothing was.
  TakenOff(FootCall& wrong, const FootCall* right, bool completes)
      : wrong_(wrong), right_(right), completes_(completes) {}

  void operator()(TurnClause& clause) {
    if (auto* found = std::get_if<FindingSaid>(&clause)) {
      take_off(&FootCall::findings, found->finding);
    }
    auto* act = std::get_if<ActionSaid>(&clause);
    if (act != nullptr && !act->whole_cow) take_off(&FootCall::actions, act->action);
    if (auto* measured = std::get_if<MeasureSaid>(&clause)) {
      take_off(&FootCall::measures, measured->measure);
    }
    if (const auto* state = std::get_if<FootStateSaid>(&clause)) {
      put_back(wrong_.state, state->state, FootState::unsaid);
    }
    if (const auto* trimmed = std::get_if<TrimmedSaid>(&clause)) {
      put_back(wrong_.trimmed, trimmed->trimmed, Trimmed::not_called);
    }
  }

  [[nodiscard]] bool took_any() const { return took_any_; }

 private:
  template <class T>
  void take_off(std::vector<T> FootCall::*items, T& said) {
    std::vector<T>& all = wrong_.*items;
    const auto first = said_alike(all, said);
    if (first == all.end()) return;
    T both = *first;
    complete(both, said);
    const bool is_on_right =
        right_ != nullptr && said_alike(right_->*items, said) != (right_->*items).end();
    if (completes_ && is_on_right && both != *first) return;
    if (completes_) said = std::move(both);
    all.erase(first);
    took_any_ = true;
    const bool nothing_is_left = wrong_.findings.empty() && wrong_.state == FootState::finding;
    if (nothing_is_left) wrong_.state = FootState::unsaid;
  }

  template <class T>
  void put_back(T& called, T said, T not_called) {
    if (called != said) return;
    called = not_called;
    took_any_ = true;
  }

  FootCall& wrong_;
  const FootCall* right_;
  bool completes_;
  bool took_any_ = false;
};

bool is_bare(const FootCall& call) {
  FootCall bare;
  bare.foot = call.foot;
  return call == bare;
}

/// It may be there with the right claw already, and then it completes that one.
template <class T>
void mend_claw(std::vector<T>& all, const T& wrong, Claw right) {
  const auto first = said_alike(all, wrong);
  if (first == all.end()) return;
  T mended = *first;
  mended.claw = right;
  const auto at = all.erase(first);
  const auto there = said_alike(all, mended);
  if (there == all.end()) {
    all.insert(at, std::move(mended));
  } else {
    complete(*there, mended);
  }
}

}  // namespace

TurnDraft without_said_alike(const TurnDraft& draft, Foot right) {
  TurnDraft once = draft;
  const bool moves = draft.feet_named.count() == 1;
  std::vector<FootCall>& feet = once.before_naming.feet;
  const FootCall* of_right = find_foot(once.before_naming, right);
  FootSet left_bare;
  for (FootCall& call : feet) {
    if (call.foot == right || !draft.feet_named.has(call.foot)) continue;
    TakenOff taken(call, of_right, moves);
    for (TurnClause& clause : once.since_naming) taken(clause);
    if (taken.took_any() && is_bare(call)) left_bare.add(FootSet{call.foot});
  }
  std::erase_if(feet, [&](const FootCall& call) { return left_bare.has(call.foot); });
  return once;
}

void mend_claw_said_alike(TurnDraft& draft, const TurnClause& wrong, Claw right) {
  for (FootCall& call : draft.before_naming.feet) {
    if (!draft.feet_named.has(call.foot)) continue;
    if (const auto* found = std::get_if<FindingSaid>(&wrong)) {
      mend_claw(call.findings, found->finding, right);
    }
    if (const auto* act = std::get_if<ActionSaid>(&wrong)) {
      mend_claw(call.actions, act->action, right);
    }
    if (const auto* measured = std::get_if<MeasureSaid>(&wrong)) {
      mend_claw(call.measures, measured->measure, right);
    }
  }
}

}  // namespace evenclaw
