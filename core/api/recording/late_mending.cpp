#include "core/api/recording/late_mending.hpp"

#include <algorithm>
#include <utility>

#include "core/trade/call_line/nothing_found.hpp"
#include "core/trade/call_line/recalled.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

template <class T>
bool is_a(const TurnClause& clause) {
  return std::holds_alternative<T>(clause);
}

bool mends_the_score(const TurnClause& clause) {
  const auto* told = std::get_if<MobilityTold>(&clause);
  return told != nullptr && told->is_correction;
}

bool mends_the_walk(const TurnClause& clause) {
  const auto* said = std::get_if<ReasonSaid>(&clause);
  return said != nullptr && said->is_correction;
}

/// "No, no paste; paste with bluemix": of what is taken back, the right one is said at once.
bool takes_the_place(const LateMending& mending, const TurnClause& said) {
  if (mending.corrections.empty()) return false;
  const TurnClause& before = mending.corrections.back();
  return (is_a<ActTakenBack>(before) && is_a<ActionSaid>(said)) ||
         (is_a<FindingTakenBack>(before) && is_a<FindingSaid>(said)) ||
         (is_a<MeasureTakenBack>(before) && is_a<MeasureSaid>(said));
}

template <class T>
bool says(const LateMending& mending) {
  return std::any_of(mending.corrections.begin(), mending.corrections.end(), is_a<T>);
}

bool has_something(const FootCall& call) {
  return !call.findings.empty() || !call.actions.empty() || !call.measures.empty() ||
         !call.note.empty();
}

/// Whether this may be the foot that is spoken of. "Nothing after all" is said of a finding, and
/// what belongs to another foot is what was called there: "nothing found" only where nothing more
/// was called of her.
bool may_be_meant(const FootCall& call, const Turn& turn, const LateMending& mending) {
  if (says<NothingAfterAll>(mending)) return !call.findings.empty();
  if (!says<FootCorrected>(mending) || has_something(call)) return true;
  return !turn.rest_fine && std::none_of(turn.feet.begin(), turn.feet.end(), has_something);
}

/// One reading of "no, 5d", which names no act.
struct TimeMeant {
  LateMending mending;
  std::optional<Action> act;
};

bool names_no_act(const TurnClause& clause) {
  const auto* time = std::get_if<TimeCorrected>(&clause);
  return time != nullptr && !time->act;
}

/// A reading for every act of that foot, or of her, that has a time; the mending as it is when it
/// is of no time or names its act.
std::vector<TimeMeant> times_meant(const Turn& turn, std::optional<Foot> foot,
                                   const LateMending& mending) {
  if (std::none_of(mending.corrections.begin(), mending.corrections.end(), names_no_act))
    return {{mending, std::nullopt}};
  const FootCall* call = foot ? find_foot(turn, *foot) : nullptr;
  const std::vector<Action>& acts = call == nullptr ? turn.actions : call->actions;
  std::vector<TimeMeant> meant;
  for (const Action& act : acts) {
    if (!act.when.said()) continue;
    TimeMeant one{mending, act};
    for (TurnClause& clause : one.mending.corrections) {
      auto* time = std::get_if<TimeCorrected>(&clause);
      if (time == nullptr || time->act) continue;
      time->act = act.kind;
      if (is_called(act.claw)) time->claw = act.claw;
    }
    meant.push_back(std::move(one));
  }
  return meant;
}

/// "LH no, right hind DD raw" names the foot anew, and mends nothing that was called before.
bool is_name_put_right(const LateMending& mending) {
  return std::any_of(mending.corrections.begin(), mending.corrections.end(),
                     [](const TurnClause& clause) {
                       const auto* foot = std::get_if<FootCorrected>(&clause);
                       return foot != nullptr && foot->slip == FootSlip::name;
                     });
}

/// "No, only LH" of both hinds is of LH, where something was called there.
std::optional<Foot> only_foot_meant(const Turn& turn, const LateMending& mending) {
  for (const TurnClause& clause : mending.corrections) {
    const auto* right = std::get_if<FootCorrected>(&clause);
    if (right == nullptr || !right->only) continue;
    const FootCall* call = find_foot(turn, right->foot);
    if (call != nullptr && !call->findings.empty()) return right->foot;
  }
  return std::nullopt;
}

bool is_called_on(const FootCall& call, Lesion lesion) {
  return std::any_of(call.findings.begin(), call.findings.end(),
                     [&](const Finding& found) { return found.lesion == lesion; });
}

/// "No, outside sole ulcer": the feet on which a sole ulcer was called; none for anything else.
FootSet feet_with_that_lesion(const Turn& turn, const LateMending& mending) {
  FootSet feet;
  for (const TurnClause& clause : mending.corrections) {
    const auto* right = std::get_if<FindingSaid>(&clause);
    if (right == nullptr || !right->instead || !is_called(right->finding.claw)) continue;
    for (const FootCall& call : turn.feet) {
      if (is_called_on(call, right->finding.lesion)) feet.add(FootSet{call.foot});
    }
  }
  return feet;
}

std::optional<TurnDraft> mended(const Turn& turn, std::optional<Foot> foot,
                                const LateMending& mending) {
  TurnDraft draft = recalled(turn, foot);
  for (const TurnClause& clause : mending.corrections) {
    // What takes the place of something is done on this very foot, whatever was found there.
    if (foot && is_a<ActionSaid>(clause)) (void)add_clause(draft, FeetNamed{FootSet{*foot}});
    if (!add_clause(draft, clause)) return std::nullopt;
  }
  if (draft.turn == turn) return std::nullopt;
  for (const TurnClause& clause : mending.more) {
    if (!add_clause(draft, clause)) return std::nullopt;
  }
  return draft;
}

/// "No, wrap off 5d".
bool puts_right_a_named_time(const LateMending& mending) {
  return says<TimeCorrected>(mending) &&
         std::none_of(mending.corrections.begin(), mending.corrections.end(), names_no_act);
}

std::vector<WayToMend> ways_on(const Turn& turn, std::optional<Foot> foot,
                               const LateMending& mending) {
  std::vector<WayToMend> ways;
  for (TimeMeant& meant : times_meant(turn, foot, mending)) {
    std::optional<TurnDraft> draft = mended(turn, foot, meant.mending);
    if (draft) ways.push_back({foot, *std::move(draft), std::move(meant.act)});
  }
  return ways;
}

/// Every way gives another turn.
std::vector<WayToMend> with_new_ones(std::vector<WayToMend> ways, std::vector<WayToMend> more) {
  for (WayToMend& way : more) {
    const bool is_new = std::none_of(ways.begin(), ways.end(), [&](const WayToMend& before) {
      return before.draft.turn == way.draft.turn;
    });
    if (is_new) ways.push_back(std::move(way));
  }
  return ways;
}

}  // namespace

bool mends_or_takes_back(const TurnClause& clause) {
  return mends_the_score(clause) || mends_the_walk(clause) || finds_instead(clause) ||
         is_a<FootCorrected>(clause) || is_a<ClawCorrected>(clause) ||
         is_a<DetailCorrected>(clause) || is_a<TimeCorrected>(clause) ||
         is_a<FindingTakenBack>(clause) || is_a<ActTakenBack>(clause) ||
         is_a<MeasureTakenBack>(clause) || is_a<ReasonTakenBack>(clause) ||
         is_a<NothingAfterAll>(clause);
}

std::optional<LateMending> late_mending(const Line& line) {
  const auto* named = line.clauses.empty() ? nullptr : std::get_if<CowNamed>(&line.clauses.front());
  const bool has_one_number = named != nullptr && named->cow.known != CowKnown::unnumbered &&
                              named->cow.alternatives.empty();
  if (!has_one_number) return std::nullopt;
  return mending_of(named->cow, line);
}

std::optional<LateMending> mending_of(const CowSaid& cow, const Line& line) {
  LateMending mending;
  mending.cow = cow;
  const bool is_named =
      !line.clauses.empty() && std::holds_alternative<CowNamed>(line.clauses.front());
  const std::size_t first = is_named ? 1 : 0;
  for (std::size_t at = first; at < line.clauses.size(); ++at) {
    const auto* said = std::get_if<TurnClause>(&line.clauses[at]);
    if (said == nullptr) return std::nullopt;
    const auto* feet = std::get_if<FeetNamed>(said);
    const bool is_foot_first = feet != nullptr && at == first && feet->feet.count() == 1;
    if (is_foot_first) {
      mending.feet = feet->feet;
    } else if (mending.more.empty() &&
               (mends_or_takes_back(*said) || takes_the_place(mending, *said))) {
      mending.corrections.push_back(*said);
    } else if (mending.corrections.empty() || is_a<CowCorrected>(*said)) {
      return std::nullopt;
    } else {
      mending.more.push_back(*said);
    }
  }
  const bool is_called_anew = is_name_put_right(mending) || completes_only(mending);
  if (mending.corrections.empty() || (!mending.more.empty() && is_called_anew)) return std::nullopt;
  return mending;
}

bool takes_back_only(const LateMending& mending) {
  return mending.more.empty() && std::all_of(mending.corrections.begin(), mending.corrections.end(),
                                             [](const TurnClause& clause) {
                                               return is_a<FindingTakenBack>(clause) ||
                                                      is_a<ActTakenBack>(clause) ||
                                                      is_a<MeasureTakenBack>(clause);
                                             });
}

bool completes_only(const LateMending& mending) {
  return std::all_of(mending.corrections.begin(), mending.corrections.end(),
                     [](const TurnClause& clause) {
                       const auto* detail = std::get_if<DetailCorrected>(&clause);
                       return detail != nullptr && detail->completes;
                     });
}

bool is_a_call_of_its_own(const LateMending& mending) {
  TurnDraft fresh;
  fresh.turn.cow = mending.cow;
  if (!mending.feet.empty() && !add_clause(fresh, FeetNamed{mending.feet})) return false;
  const auto can_be_added = [&](const TurnClause& clause) {
    return add_clause(fresh, clause).ok();
  };
  return std::all_of(mending.corrections.begin(), mending.corrections.end(), can_be_added) &&
         std::all_of(mending.more.begin(), mending.more.end(), can_be_added);
}

std::vector<WayToMend> ways_to_mend(const Turn& turn, const LateMending& mending) {
  std::vector<WayToMend> ways;
  const auto add = [&](std::optional<Foot> foot) {
    ways = with_new_ones(std::move(ways), ways_on(turn, foot, mending));
  };
  const std::optional<Foot> only = only_foot_meant(turn, mending);
  const FootSet with_it = feet_with_that_lesion(turn, mending);
  for (const FootCall& call : turn.feet) {
    const bool may_be_named = with_it.empty() || with_it.has(call.foot);
    const bool is_named = mending.feet.empty() ? may_be_named : mending.feet.has(call.foot);
    if (only && *only != call.foot) continue;
    if (is_named && may_be_meant(call, turn, mending)) add(call.foot);
  }
  // The leg she is lame on is what "no, right hind" means only when nothing was called of a foot.
  // A time of an act that is named, and that can be of a foot, is of that foot.
  const bool of_feet_only =
      (says<FootCorrected>(mending) || puts_right_a_named_time(mending)) && !ways.empty();
  if (mending.feet.empty() && !of_feet_only) add(std::nullopt);
  return ways;
}

std::optional<Fault> why_no_more(const Turn& turn, const LateMending& mending) {
  LateMending alone = mending;
  alone.more.clear();
  const std::vector<WayToMend> ways = ways_to_mend(turn, alone);
  if (ways.empty()) return std::nullopt;
  TurnDraft draft = ways.front().draft;
  for (const TurnClause& clause : mending.more) {
    const Outcome added = add_clause(draft, clause);
    if (!added) return added.faults().front();
  }
  return std::nullopt;
}

}  // namespace evenclaw
