// What nobody has to answer and the sheet should keep before the farmer's eyes: a block that stays
// on, a sore that came back, a sole that bears no more cutting, a walk that tells little yet.
#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// When a block is looked at at the latest.
constexpr int block_is_looked_at_days = 28;
/// Our judgement: within a week a treated sore has had no time, after two months it is a new one.
constexpr int earliest_return_days = 7;
constexpr int latest_return_days = 60;

bool stays_on(const Action& action) {
  const std::optional<FixtureSaid> said = fixture_said(action.kind);
  const bool is_kept = action.kind == ActionKind::block_still_on ||
                       action.kind == ActionKind::block_stacked ||
                       action.kind == ActionKind::block_refitted;
  return said && said->fixture == Fixture::block && is_kept;
}

/// The block from before that stays on after a time in which it should have been enough.
std::optional<OnFootRow> block_kept_on(const Situation& situation, const FootCall& call) {
  const auto kept = std::find_if(call.actions.begin(), call.actions.end(), stays_on);
  if (kept == call.actions.end()) return std::nullopt;
  for (const OnFootRow& row : fixtures_left(situation.past.rows, call.foot, Fixture::block)) {
    const bool is_old = situation.today - row.since >= block_is_looked_at_days;
    if (is_old && claws_agree(row.claw, kept->claw)) return row;
  }
  return std::nullopt;
}

bool is_raw(const Finding& finding) {
  return finding.stage == DdStage::raw || finding.stage == DdStage::m1 ||
         finding.stage == DdStage::m2;
}

std::optional<Day> treated_on(const Situation& situation, Foot foot) {
  std::optional<Day> latest;
  for (const ActionRow& row : situation.past.rows.actions) {
    const int days = situation.today - row.day;
    const bool is_treatment = takes_product(row.action) || row.action == ActionKind::wrap_on;
    const bool may_return = days >= earliest_return_days && days <= latest_return_days;
    if (!is_treatment || row.foot != foot || !may_return) continue;
    latest = latest ? std::max(*latest, row.day) : row.day;
  }
  return latest;
}

bool had_dd(const Situation& situation, Foot foot) {
  const std::vector<CaseRow>& cases = situation.past.rows.cases;
  return std::any_of(cases.begin(), cases.end(), [foot](const CaseRow& known) {
    return known.foot == foot && known.family == Lesion::dd;
  });
}

bool looked_at_again(const Turn& turn) {
  return was_called(turn, ActionKind::see_again);
}

Firing note(const FootCall& call, About about, std::string words) {
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.words = std::move(words);
  firing.causes = {{call.foot, about}};
  return firing;
}

/// "Watch her walk" with a day in which she still walks as one that was trimmed.
const Action* watched_early(const Situation& situation) {
  const std::vector<Action>& acts = situation.turn.actions;
  const auto found = std::find_if(acts.begin(), acts.end(), [&](const Action& action) {
    const std::optional<Day> day = day_meant(action.when, situation.today);
    return action.kind == ActionKind::watch_her_walk && day &&
           *day < situation.today + walks_worse_after_trim_days;
  });
  return found == acts.end() ? nullptr : &*found;
}

/// What the note of a warning may hold at most, as its test in check_test.cpp asks.
constexpr std::size_t longest_note = 90;

/// By their letters where the words of the note would be too long for the names.
std::string thin_sole_words(const FootSet& thin) {
  const auto words_of = [](const std::string& feet) {
    return "Thin sole (" + feet + "): nothing more comes off there; soft ground, short ways.";
  };
  std::string words = words_of(spoken(thin));
  if (words.size() <= longest_note) return words;
  std::string letters;
  for (const Foot foot : all_feet) {
    if (thin.has(foot)) letters += (letters.empty() ? "" : " ") + std::string(word_of(foot));
  }
  return words_of(letters);
}

}  // namespace

std::vector<Firing> block_past_four_weeks(const Situation& situation) {
  std::vector<Firing> firings;
  if (!situation.finished) return firings;
  for (const FootCall& call : situation.turn.feet) {
    const std::optional<OnFootRow> row = block_kept_on(situation, call);
    if (!row) continue;
    firings.push_back(note(call, About::block,
                           "Block on " + std::string(spoken(call.foot)) + " since " +
                               spoken(row->since) + " (" +
                               std::to_string(situation.today - row->since) +
                               " d), and one stays on: worth another look."));
  }
  return firings;
}

std::vector<Firing> raw_again(const Situation& situation) {
  std::vector<Firing> firings;
  if (!situation.finished || looked_at_again(situation.turn)) return firings;
  for (const FootCall& call : situation.turn.feet) {
    const bool raw = std::any_of(call.findings.begin(), call.findings.end(), is_raw);
    const std::optional<Day> treated = treated_on(situation, call.foot);
    if (!raw || !treated || !had_dd(situation, call.foot)) continue;
    firings.push_back(note(call, About::not_healing,
                           "Raw on " + std::string(spoken(call.foot)) + ", treated there on " +
                               spoken(*treated) + ": plan another look."));
  }
  return firings;
}

std::vector<Firing> thin_sole(const Situation& situation) {
  const FootCall* first = nullptr;
  FootSet thin;
  for (const FootCall& call : situation.turn.feet) {
    const bool is_thin =
        std::any_of(call.findings.begin(), call.findings.end(),
                    [](const Finding& finding) { return finding.lesion == Lesion::ts; });
    if (!is_thin) continue;
    if (first == nullptr) first = &call;
    thin.add(call.foot);
  }
  if (!situation.finished || first == nullptr) return {};
  Firing firing = note(*first, About::thin_sole, thin_sole_words(thin));
  firing.causes.push_back({std::nullopt, About::thin_sole});
  return {firing};
}

std::vector<Firing> walk_watched_early(const Situation& situation) {
  // One that hardly walks is watched every day.
  if (!situation.finished || walks_worst(situation)) return {};
  const Action* watched = watched_early(situation);
  if (watched == nullptr) return {};
  Firing firing;
  firing.warning.words = "Watched by " + spoken(*day_meant(watched->when, situation.today)) +
                         ": cows walk worse just after a trim; look again later.";
  firing.causes = {{std::nullopt, About::how_she_walks}};
  return {firing};
}

}  // namespace evenclaw
