#include <algorithm>
#include <optional>
#include <string>
#include <utility>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/denied.hpp"
#include "core/trade/call_line/detail_corrected.hpp"
#include "core/trade/call_line/done_where_fine.hpp"
#include "core/trade/call_line/foot_corrected.hpp"
#include "core/trade/call_line/not_done.hpp"
#include "core/trade/call_line/nothing_found.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/other_foot.hpp"
#include "core/trade/call_line/possible.hpp"
#include "core/trade/call_line/put_instead.hpp"
#include "core/trade/call_line/reason_taken_back.hpp"
#include "core/trade/call_line/recalled.hpp"
#include "core/trade/call_line/refitted_today.hpp"
#include "core/trade/call_line/said_again.hpp"
#include "core/trade/call_line/said_of_her.hpp"
#include "core/trade/call_line/time_corrected.hpp"
#include "core/trade/call_line/turn_clause.hpp"
#include "core/trade/lame_score.hpp"

namespace evenclaw {

namespace {

using Why = std::optional<Refusal>;

std::string told(Foot foot) {
  return std::string(word_of(foot));
}

std::string told(Lesion lesion) {
  return std::string(facts_of(lesion).name);
}

template <class T>
std::size_t count_of_same(const std::vector<T>& all, const T& said) {
  return static_cast<std::size_t>(std::count_if(
      all.begin(), all.end(), [&said](const T& each) { return are_one(each, said); }));
}

template <class T, class Said>
std::size_t count_taken_back(const std::vector<T>& all, const Said& said) {
  return static_cast<std::size_t>(std::count_if(
      all.begin(), all.end(), [&said](const T& each) { return takes_back(said, each); }));
}

template <class T, class Said>
void take_back(std::vector<T>& all, const Said& said) {
  all.erase(std::remove_if(all.begin(), all.end(),
                           [&said](const T& each) { return takes_back(said, each); }),
            all.end());
}

template <class T>
void add_or_complete(std::vector<T>& all, const T& said) {
  const auto same =
      std::find_if(all.begin(), all.end(), [&said](const T& each) { return are_one(each, said); });
  if (same == all.end()) {
    all.push_back(said);
  } else {
    complete(*same, said);
  }
}

Refusal no_foot(std::string_view what, FootSet lame = {}) {
  const std::string again = "say the line again with \"; {" + to_text(lame) + "}\" before that";
  return impossible("no foot is named for " + std::string(what),
                    lame.empty() ? "say the foot first: {LF, RF, LH, RH}" : again);
}

Refusal stayed_down(Foot foot) {
  return impossible(told(foot) + " was not lifted, so nothing can be found or done there");
}

// Why a clause cannot be added to the draft as it stands.
class Objection {
 public:
  explicit Objection(const TurnDraft& draft) : draft_(draft), turn_(draft.turn) {}

  Why operator()(const ReasonSaid&) const { return std::nullopt; }

  Why operator()(const FeetNamed&) const { return std::nullopt; }

  Why operator()(const FootStateSaid& said) const {
    const bool is_fine = said.state == FootState::nothing_found;
    if (draft_.feet_named.empty() && !is_fine) return no_foot("\"{not lifted}\"");
    return on_each_foot([&said, is_fine](const FootCall& call) -> Why {
      if (Why refusal = is_fine ? why_not_fine(call) : std::nullopt) return refusal;
      if (is_fine && call.state == FootState::not_lifted) return stayed_down(call.foot);
      if (said.state == FootState::not_lifted && was_lifted(call)) {
        return impossible("something was found or done on " + told(call.foot) + " already");
      }
      return std::nullopt;
    });
  }

  Why operator()(const TrimmedSaid& said) const {
    if (draft_.feet_named.empty()) return no_foot("trimming");
    return on_each_foot([&said](const FootCall& call) -> Why {
      const bool is_down = call.state == FootState::not_lifted;
      if (said.trimmed == Trimmed::yes && is_down) return stayed_down(call.foot);
      if (call.trimmed == Trimmed::not_called || call.trimmed == said.trimmed) return std::nullopt;
      return impossible("the opposite was said of " + told(call.foot) + " already");
    });
  }

  Why operator()(const FindingSaid& said) const {
    if (auto why = why_impossible(said.finding)) return impossible(*why);
    if (draft_.feet_named.empty()) return no_foot(told(said.finding.lesion), turn_.lame);
    return on_each_foot([&](const FootCall& call) -> Why {
      if (call.state == FootState::not_lifted) return stayed_down(call.foot);
      if (Why refusal = why_not_found(turn_, call, said)) return refusal;
      return unclear_which(count_of_same(call.findings, said.finding), call.foot);
    });
  }

  Why operator()(const ActionSaid& said) const {
    const ActFacts& facts = facts_of(said.action.kind);
    if (said.action.kind == ActionKind::watch_her_walk && !said.action.when.said()) {
      return impossible("nobody said by when she is to be watched", "say such as {14d} or {Thu}");
    }
    if (facts.said_as == TermKind::withheld_act && !said.action.when.said()) {
      return impossible("nobody said till when it is held back", "say such as {till Thu} or {4d}");
    }
    const bool of_cow = said.whole_cow || draft_.feet_named.empty();
    if (of_cow && !facts.on_whole_cow) return no_foot("what was done");
    if (of_cow) return unclear_which(count_of_same_of_her(turn_.actions, said.action), {});
    return on_each_foot([&](const FootCall& call) -> Why {
      if (facts.needs_lifting && call.state == FootState::not_lifted) return stayed_down(call.foot);
      if (Why refusal = why_not_done(draft_, call, said.action)) return refusal;
      if (Why refusal = why_not_refitted(call, said.action)) return refusal;
      return unclear_which(count_of_same(call.actions, said.action), call.foot);
    });
  }

  Why operator()(const MeasureSaid&) const {
    if (draft_.feet_named.empty()) return no_foot("the measure");
    return on_each_foot([](const FootCall& call) -> Why {
      if (call.state == FootState::not_lifted) return stayed_down(call.foot);
      return std::nullopt;
    });
  }

  Why operator()(const RestFineSaid&) const { return why_no_rest(turn_); }

  Why operator()(const WalksSoundSaid&) const { return std::nullopt; }

  Why operator()(const MobilityTold& said) const {
    const MobilitySaid& known = turn_.mobility;
    if (said.is_correction && !known.said()) return impossible("no mobility score was said");
    if (said.is_correction || !known.said() || known == said.mobility) return std::nullopt;
    const MobilitySaid& now = said.mobility;
    return impossible("another mobility score was said already",
                      "if that was wrong, say \"{no, mobility " + std::to_string(*now.score) +
                          " of " + std::to_string(facts_of(*now.scale).highest) + "}\"");
  }

  Why operator()(const NoteSaid& said) const { return why_not_denied(turn_, said); }

  Why operator()(const EndSaid& said) const {
    if (turn_.end != TurnEnd::done && turn_.end != said.end) {
      return impossible("another end of her turn was said already");
    }
    const bool was_worked_on = std::any_of(turn_.feet.begin(), turn_.feet.end(), was_lifted);
    if (said.end != TurnEnd::not_done || !was_worked_on) return std::nullopt;
    return impossible("feet were done already", "say \"{unfinished}\" and why");
  }

  // Of a foot that is named it is carried out elsewhere; this is the leg she is lame on.
  Why operator()(const FootCorrected& said) const {
    if (turn_.lame.empty()) return impossible("no foot was named that could be corrected");
    if (turn_.lame == FootSet{said.foot}) return foot_is_what_was_said(turn_, said.foot);
    return std::nullopt;
  }

  Why operator()(const ClawCorrected&) const { return std::nullopt; }

  Why operator()(const DetailCorrected&) const { return std::nullopt; }

  Why operator()(const TimeCorrected&) const { return std::nullopt; }

  Why operator()(const FindingTakenBack& said) const {
    const std::string what = told(said.finding.lesion);
    if (draft_.feet_named.empty()) return no_foot(what);
    return why_not_taken_back(what, [&said](const FootCall& call) {
      return count_taken_back(call.findings, said.finding);
    });
  }

  Why operator()(const ActTakenBack& said) const {
    const auto count = [&said](const std::vector<Action>& actions) {
      return count_taken_back(actions, said.action);
    };
    if (!draft_.feet_named.empty() && !is_always_of_the_cow(said.action.kind)) {
      return why_not_taken_back("that", [&](const FootCall& call) { return count(call.actions); });
    }
    if (count(turn_.actions) == 0) return impossible("that was not said of her");
    return unclear_which(count(turn_.actions), std::nullopt);
  }

  Why operator()(const MeasureTakenBack& said) const {
    if (draft_.feet_named.empty()) return no_foot("the measure");
    return why_not_taken_back("that measure", [&said](const FootCall& call) {
      return count_taken_back(call.measures, said);
    });
  }

  Why operator()(const ReasonTakenBack& said) const {
    return evenclaw::why_not_taken_back(turn_, said);
  }

  Why operator()(const NothingAfterAll&) const {
    if (draft_.feet_named.empty()) return no_foot("\"{nothing after all}\"");
    return on_each_foot([](const FootCall& call) -> Why {
      if (call.state == FootState::not_lifted) return stayed_down(call.foot);
      return std::nullopt;
    });
  }

  Why operator()(const KnownSaid& said) const {
    return impossible("\"" + said.words + "\" needs what is known of her, and nothing is",
                      "say the foot and what was found or done");
  }

  Why operator()(const OtherFootNamed& said) const { return unclear_feet(said); }

  Why operator()(const BothFeetNamed& said) const { return unclear_feet(said); }

  Why operator()(const CowCorrected& said) const {
    if (turn_.cow != said.cow) return std::nullopt;
    return impossible(said.cow.number + " is what was said");
  }

 private:
  template <class F>
  Why on_each_foot(F why) const {
    for (const Foot foot : all_feet) {
      if (!draft_.feet_named.has(foot)) continue;
      FootCall fresh;
      fresh.foot = foot;
      const FootCall* call = find_foot(turn_, foot);
      if (Why refusal = why(call == nullptr ? fresh : *call)) return refusal;
    }
    return std::nullopt;
  }

  // On one of the feet named it has been said, and on none of them twice.
  template <class F>
  Why why_not_taken_back(const std::string& what, F count_on) const {
    std::size_t total = 0;
    const Why unclear = on_each_foot([&](const FootCall& call) {
      const std::size_t count = count_on(call);
      total += count;
      return unclear_which(count, call.foot);
    });
    if (unclear || total > 0) return unclear;
    return impossible(what + " was not called on " + to_text(draft_.feet_named));
  }

  static Why unclear_which(std::size_t same, std::optional<Foot> foot) {
    if (same < 2) return std::nullopt;
    const std::string where = foot ? " on " + told(*foot) : "";
    return impossible("it could be either of two said before" + where,
                      "say claw and place as well");
  }

  const TurnDraft& draft_;
  const Turn& turn_;
};

// Adds a clause nothing speaks against.
class Addition {
 public:
  explicit Addition(TurnDraft& draft) : draft_(draft), turn_(draft.turn) {}

  void operator()(const ReasonSaid& said) const {
    add_reason(turn_, said);
    if (!said.words.empty()) append(turn_.reason_words, said.words);
  }

  void operator()(const FeetNamed& said) const {
    draft_.before_naming = turn_;
    draft_.since_naming.clear();
    draft_.feet_named = said.feet;
    draft_.last_named = said.feet;
    for (const Foot foot : all_feet) {
      if (said.feet.has(foot)) call_of(foot);
    }
  }

  void operator()(const FootStateSaid& said) const {
    if (draft_.feet_named.empty()) {
      turn_.rest_fine = true;
      return;
    }
    on_each_foot([&said](FootCall& call) {
      if (call.findings.empty()) call.state = said.state;
    });
  }

  void operator()(const TrimmedSaid& said) const {
    on_each_foot([&said](FootCall& call) { call.trimmed = said.trimmed; });
  }

  void operator()(const FindingSaid& said) const {
    on_each_foot([&said](FootCall& call) {
      call.state = FootState::finding;
      add_or_complete(call.findings, said.finding);
    });
  }

  void operator()(const ActionSaid& said) const {
    if (said.whole_cow || draft_.feet_named.empty()) {
      add_or_complete_of_her(turn_.actions, said.action);
      return;
    }
    on_each_foot([&said](FootCall& call) { add_or_complete(call.actions, said.action); });
  }

  void operator()(const MeasureSaid& said) const {
    on_each_foot([&said](FootCall& call) { add_or_complete(call.measures, said.measure); });
  }

  void operator()(const RestFineSaid&) const { turn_.rest_fine = true; }

  void operator()(const WalksSoundSaid&) const { turn_.walks_sound = true; }

  // "No, mobility 3 of 3": then she does not walk sound.
  void operator()(const MobilityTold& said) const {
    turn_.mobility = said.mobility;
    if (said.is_correction && is_lame_score(said.mobility)) turn_.walks_sound = false;
  }

  // After "rest fine" nobody speaks of the foot named last any more.
  void operator()(const NoteSaid& said) const {
    const std::vector<TurnClause>& since = draft_.since_naming;
    const bool rest_is_fine = std::any_of(since.begin(), since.end(), [](const TurnClause& clause) {
      return std::holds_alternative<RestFineSaid>(clause);
    });
    if (draft_.feet_named.empty() || rest_is_fine || said.denies) {
      append(turn_.note, said.words);
    } else {
      on_each_foot([&said](FootCall& call) { append(call.note, said.words); });
    }
  }

  void operator()(const EndSaid& said) const {
    turn_.end = said.end;
    if (!said.reason.empty()) append(turn_.end_reason, said.reason);
  }

  // Corrections of foot, claw, details and time are carried out elsewhere; this is what is left.
  void operator()(const FootCorrected& said) const { turn_.lame = FootSet{said.foot}; }

  void operator()(const ClawCorrected&) const {}

  void operator()(const DetailCorrected&) const {}

  void operator()(const TimeCorrected&) const {}

  void operator()(const CowCorrected& said) const { turn_.cow = said.cow; }

  void operator()(const FindingTakenBack& said) const {
    on_each_foot([&said](FootCall& call) {
      take_back(call.findings, said.finding);
      const bool nothing_is_left = call.findings.empty() && call.state == FootState::finding;
      if (nothing_is_left) call.state = FootState::unsaid;
    });
  }

  void operator()(const ActTakenBack& said) const {
    const bool of_cow = draft_.feet_named.empty() || is_always_of_the_cow(said.action.kind);
    if (of_cow) return take_back(turn_.actions, said.action);
    on_each_foot([&said](FootCall& call) { take_back(call.actions, said.action); });
  }

  void operator()(const MeasureTakenBack& said) const {
    on_each_foot([&said](FootCall& call) { take_back(call.measures, said); });
  }

  void operator()(const ReasonTakenBack& said) const { take_back_reason(turn_, said); }

  void operator()(const KnownSaid&) const {}  // always refused

  // Added as the feet they mean.
  void operator()(const OtherFootNamed&) const {}

  void operator()(const BothFeetNamed&) const {}

  void operator()(const NothingAfterAll&) const {
    on_each_foot([](FootCall& call) {
      call.findings.clear();
      call.state = FootState::nothing_found;
    });
  }

 private:
  static void append(std::string& text, const std::string& more) {
    if (!text.empty()) text += "; ";
    text += more;
  }

  FootCall& call_of(Foot foot) const {
    if (FootCall* call = find_foot(turn_, foot)) return *call;
    FootCall call;
    call.foot = foot;
    turn_.feet.push_back(std::move(call));
    return turn_.feet.back();
  }

  template <class F>
  void on_each_foot(F apply) const {
    for (const Foot foot : all_feet) {
      if (draft_.feet_named.has(foot)) apply(call_of(foot));
    }
    draft_.last_named = draft_.feet_named;
  }

  TurnDraft& draft_;
  Turn& turn_;
};

Outcome add_plainly(TurnDraft& draft, const TurnClause& clause) {
  if (const Why refusal = why_not_behind_not_done(draft.turn, clause)) return fault_of(*refusal);
  if (const Why refusal = std::visit(Objection(draft), clause)) return fault_of(*refusal);
  std::visit(Addition(draft), clause);
  remember(draft.since_naming, clause);
  return Done{};
}

}  // namespace

Outcome add_clause(TurnDraft& draft, const TurnClause& clause) {
  if (const auto* foot = std::get_if<FootCorrected>(&clause)) {
    return draft.feet_named.empty() ? add_plainly(draft, clause) : correct_foot(draft, *foot);
  }
  if (const auto* claw = std::get_if<ClawCorrected>(&clause)) return correct_claw(draft, *claw);
  if (const auto* detail = std::get_if<DetailCorrected>(&clause)) {
    return correct_detail(draft, *detail);
  }
  if (const auto* time = std::get_if<TimeCorrected>(&clause)) return correct_time(draft, *time);
  if (const auto feet = feet_meant(draft, clause)) return name_feet_meant(draft, *feet, clause);
  if (const auto put = put_instead(draft, clause)) return *put;
  return add_plainly(draft, clause);
}

}  // namespace evenclaw
