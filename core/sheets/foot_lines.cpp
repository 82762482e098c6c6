#include "core/sheets/foot_lines.hpp"

#include <algorithm>
#include <utility>

#include "core/trade/lesion.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

/// Parts of a line, each starting with a capital and ending with a full stop.
class Sentences {
 public:
  void add(const std::string& words, Emphasis emphasis) {
    if (words.empty()) return;
    const std::string gap = runs_.empty() ? "" : " ";
    runs_.push_back({gap + as_sentence(words), emphasis});
  }

  Runs take() { return std::move(runs_); }

 private:
  Runs runs_;
};

/// What one of several calls of the foot said.
std::string call_words(const CowSeen& cow, const FootRow& call, const VisitView& view) {
  const Wording& wording = view.wording;
  std::vector<std::string> parts;
  for (const FindingRow* row : cow.findings) {
    if (row->foot == call.foot && row->turn == call.turn) {
      parts.push_back(wording.finding_at_claw(*row));
    }
  }
  if (parts.empty() && call.state != FootState::unsaid) parts.push_back(wording.state(call.state));
  for (const ActionRow* row : cow.actions) {
    if (row->foot == call.foot && row->turn == call.turn) {
      parts.push_back(wording.act(*row, view.input.visit.day));
    }
  }
  if (parts.empty()) parts.push_back(wording.say(Saying::found_not_said));
  return wording.list(parts);
}

/// "Called more than once, all kept: first nothing found; then ..."; "" where it was not.
std::string twice_words(const CowSeen& cow, Foot foot, const VisitView& view) {
  std::string calls;
  for (const FootRow* row : cow.feet) {
    if (row->foot != foot || !row->called_twice) continue;
    const Saying saying = calls.empty() ? Saying::call_first : Saying::call_then;
    calls += (calls.empty() ? "" : "; ") +
             view.wording.say(saying, {{"what", call_words(cow, *row, view)}});
  }
  if (calls.empty()) return calls;
  return view.wording.say(Saying::called_twice, {{"calls", calls}});
}

std::string trimmed_words(const FootRow& row, const Wording& wording) {
  switch (row.trimmed) {
    case Trimmed::not_called:
      return {};
    case Trimmed::yes:
      return wording.say(Saying::trimmed);
    case Trimmed::no:
      return wording.say(Saying::not_trimmed);
  }
  return {};
}

/// Pus, bone or blisters: then nothing is no word for what was found there.
bool was_found_on(const CowSeen& cow, Foot foot) {
  return std::any_of(cow.actions.begin(), cow.actions.end(), [foot](const ActionRow* row) {
    return row->foot == foot && counts_as_found(row->action);
  });
}

/// Something was found today where the case was: what was called then may be part of it.
bool is_something_there(const CowSeen& cow, const CaseRow& row) {
  return std::any_of(cow.findings.begin(), cow.findings.end(), [&](const FindingRow* found) {
    return found->foot == row.foot && claws_agree(found->claw, row.claw);
  });
}

std::string case_words(const CaseRow& row, const CowSeen& cow, const VisitView& view) {
  const Wording& wording = view.wording;
  const Day today = view.input.visit.day;
  const bool needs_claw = facts_of(row.lesion).kept_on == KeptOn::claw;
  const bool left_out = row.claw == Claw::not_called && !needs_claw;
  const std::string claw = left_out ? std::string() : wording.claw(row.claw);
  std::string what = wording.lesion(row.lesion);
  if (!claw.empty()) what = claw + ", " + what;
  if (row.not_found_on == today) {
    const Saying saying =
        is_something_there(cow, row) ? Saying::not_called_again : Saying::no_longer_found;
    return wording.say(saying, {{"what", what}, {"date", wording.date(row.last_day, today)}});
  }
  const bool is_over = row.not_found_on && *row.not_found_on < today;
  if (is_over) return {};
  return wording.say(Saying::before,
                     {{"what", what}, {"date", wording.date(row.first_day, today)}});
}

std::string fixture_words(const OnFootRow& row, const CowSeen& cow, const VisitView& view) {
  const Wording& wording = view.wording;
  const std::string since = wording.date(row.since, view.input.visit.day);
  if (row.only_seen) {
    const std::string what =
        row.fixture == Fixture::wrap
            ? wording.say(Saying::wears_wrap, {{"where", wording.foot(row.foot)}})
            : wording.say(Saying::wears_block, {{"where", wording.claw(row.claw)}});
    const std::string seen = wording.say(Saying::nobody_knew, {{"what", what}, {"date", since}});
    const bool is_told_now = !is_on_in_doubt(row, &cow, view.input.visit.day);
    return is_told_now ? seen : wording.say(Saying::since_unknown, {{"what", seen}});
  }
  const bool is_wrap = row.fixture == Fixture::wrap;
  const bool is_seen = was_seen_on(row, &cow, view.input.visit.day);
  const Saying saying = is_wrap ? (is_seen ? Saying::wrap_since : Saying::wrap_put_on)
                                : (is_seen ? Saying::block_since : Saying::block_put_on);
  const std::string words =
      wording.say(saying, {{"claw", wording.claw(row.claw)}, {"date", since}});
  const bool unknown = is_on_in_doubt(row, &cow, view.input.visit.day);
  if (unknown) return wording.say(Saying::since_unknown, {{"what", words}});
  return is_seen ? words : wording.say(Saying::not_seen_today, {{"what", words}});
}

bool is_found_today(const CaseRow& row, const CowSeen& cow) {
  return std::any_of(cow.findings.begin(), cow.findings.end(),
                     [&](const FindingRow* finding) { return finding->case_id == row.case_id; });
}

/// "since Tue 29 Sep" for a finding that goes on from an earlier day, else "".
std::string since_words(const FindingRow& finding, const CowSeen& cow, const VisitView& view) {
  const Day today = view.input.visit.day;
  for (const CaseRow* row : cow.cases) {
    if (row->case_id != finding.case_id || row->first_day >= today) continue;
    return view.wording.say(Saying::found_since,
                            {{"date", view.wording.date(row->first_day, today)}});
  }
  return {};
}

/// "outside claw missing", said at an earlier visit and not again today; else "".
std::string missing_words(const CowSeen& cow, Foot foot, const VisitView& view) {
  const bool said_today =
      std::any_of(cow.actions.begin(), cow.actions.end(), [&](const ActionRow* row) {
        return row->foot == foot && row->action == ActionKind::claw_missing;
      });
  if (said_today) return {};
  for (const FootRow* row : cow.feet) {
    if (row->foot != foot || row->missing == Claw::none) continue;
    const bool is_told_which = row->missing != Claw::not_called;
    const Wording& wording = view.wording;
    return wording.say(Saying::claw_gone, {{"claw", is_told_which ? wording.claw(row->missing)
                                                                  : wording.say(Saying::a_claw)}});
  }
  return {};
}

void add_past(Sentences& sentences, const CowSeen& cow, Foot foot, const VisitView& view) {
  const Day today = view.input.visit.day;
  sentences.add(missing_words(cow, foot, view), Emphasis::quiet);
  for (const OnFootRow* row : cow.on_feet) {
    if (row->foot != foot || row->since >= today) continue;
    sentences.add(fixture_words(*row, cow, view), Emphasis::quiet);
  }
  for (const CaseRow* row : cow.cases) {
    if (row->foot != foot || row->first_day >= today || is_found_today(*row, cow)) continue;
    sentences.add(case_words(*row, cow, view), Emphasis::quiet);
  }
}

TermLine shared_line(const std::string& state, const FootSet& feet, const Wording& wording) {
  if (feet.count() == 1) return {capitalised(wording.feet(feet)), {plain(as_sentence(state))}};
  const std::string words =
      wording.say(Saying::with_reason, {{"what", state}, {"why", wording.feet(feet)}});
  return {"", {plain(as_sentence(words))}};
}

}  // namespace

std::string state_words(const CowSeen& cow, Foot foot, const Wording& wording) {
  const FootState state = state_of(cow, foot);
  if (state != FootState::unsaid) return wording.state(state);
  if (cow.lifted.has(foot)) return wording.say(Saying::lifted_not_said);
  // Of a foot that was named nobody need say that it was lifted.
  return is_spoken_of(cow, foot) ? wording.say(Saying::found_not_said) : wording.state(state);
}

std::vector<Foot> feet_to_tell(const CowSeen& cow, const FootSet& todays_feet) {
  std::vector<Foot> feet;
  for (const Foot foot : all_feet) {
    if (todays_feet.has(foot) || is_spoken_of(cow, foot) || cow.lame.has(foot)) {
      feet.push_back(foot);
    }
  }
  return feet;
}

TermLine foot_line(const CowSeen& cow, Foot foot, const VisitView& view) {
  const Wording& wording = view.wording;
  Sentences sentences;
  // What was done to a foot nobody judged comes first: it tells why nobody did.
  const bool is_judged = !feet_not_judged(cow).has(foot);
  const bool is_down = state_of(cow, foot) == FootState::not_lifted;
  const bool tells_state = is_judged && (is_down || !was_found_on(cow, foot));
  if (tells_state) sentences.add(state_words(cow, foot, wording), Emphasis::plain);
  for (const FindingRow* row : cow.findings) {
    if (row->foot != foot) continue;
    sentences.add(wording.finding_at_claw(*row), Emphasis::strong);
    sentences.add(since_words(*row, cow, view), Emphasis::quiet);
  }
  for (const ActionRow* row : cow.actions) {
    if (row->foot == foot) {
      sentences.add(wording.act(*row, view.input.visit.day), Emphasis::plain);
    }
  }
  for (const MeasureRow* row : cow.measures) {
    if (row->foot == foot) sentences.add(wording.measure(*row), Emphasis::plain);
  }
  if (!is_judged) sentences.add(state_words(cow, foot, wording), Emphasis::plain);
  for (const FootRow* row : cow.feet) {
    if (row->foot != foot) continue;
    sentences.add(trimmed_words(*row, wording), Emphasis::plain);
    sentences.add(row->note, Emphasis::plain);
  }
  sentences.add(twice_words(cow, foot, view), Emphasis::plain);
  add_past(sentences, cow, foot, view);
  return {capitalised(wording.foot(foot)), sentences.take()};
}

std::vector<TermLine> foot_lines(const CowSeen& cow, const VisitView& view) {
  std::vector<TermLine> lines;
  std::vector<std::pair<std::string, FootSet>> alike;  // what is said, of which feet
  for (const Foot foot : feet_to_tell(cow, view.input.visit.todays_feet)) {
    TermLine line = foot_line(cow, foot, view);
    const std::string state = state_words(cow, foot, view.wording);
    const bool only_state = line.runs.size() == 1 && line.runs.front().text == as_sentence(state);
    if (!only_state) {
      lines.push_back(std::move(line));
      continue;
    }
    const auto known = std::find_if(alike.begin(), alike.end(),
                                    [&](const auto& one) { return one.first == state; });
    if (known != alike.end()) {
      known->second.add(foot);
    } else {
      alike.emplace_back(state, FootSet{foot});
    }
  }
  for (const auto& [state, feet] : alike) lines.push_back(shared_line(state, feet, view.wording));
  return lines;
}

}  // namespace evenclaw
