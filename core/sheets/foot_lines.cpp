#include "core/sheets/foot_lines.hpp"

#include <algorithm>

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

std::string state_words(const CowSeen& cow, Foot foot, const Wording& wording) {
  const FootState state = state_of(cow, foot);
  if (state == FootState::unsaid && cow.lifted.has(foot)) {
    return wording.say(Saying::lifted_not_said);
  }
  return wording.state(state);
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

std::string case_words(const CaseRow& row, const VisitView& view) {
  const Wording& wording = view.wording;
  const Day today = view.input.visit.day;
  const std::string claw = wording.claw(row.claw);
  std::string what = wording.lesion(row.lesion);
  if (!claw.empty()) what = claw + ", " + what;
  if (row.not_found_on == today) {
    return wording.say(Saying::no_longer_found,
                       {{"what", what}, {"date", wording.date(row.last_day, today)}});
  }
  const bool is_over = row.not_found_on && *row.not_found_on < today;
  if (is_over) return {};
  return wording.say(Saying::before,
                     {{"what", what}, {"date", wording.date(row.first_day, today)}});
}

std::string fixture_words(const OnFootRow& row, const VisitView& view) {
  const Wording& wording = view.wording;
  const std::string since = wording.date(row.since, view.input.visit.day);
  const std::string words =
      row.fixture == Fixture::wrap
          ? wording.say(Saying::wrap_since, {{"date", since}})
          : wording.say(Saying::block_since, {{"claw", wording.claw(row.claw)}, {"date", since}});
  const bool unknown = row.ended == FixtureEnd::unknown;
  return unknown ? wording.say(Saying::since_unknown, {{"what", words}}) : words;
}

void add_past(Sentences& sentences, const CowSeen& cow, Foot foot, const VisitView& view) {
  const Day today = view.input.visit.day;
  for (const OnFootRow* row : cow.on_feet) {
    if (row->foot != foot || row->since >= today) continue;
    sentences.add(fixture_words(*row, view), Emphasis::quiet);
  }
  for (const CaseRow* row : cow.cases) {
    if (row->foot != foot || row->first_day >= today) continue;
    sentences.add(case_words(*row, view), Emphasis::quiet);
  }
}

}  // namespace

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
  sentences.add(state_words(cow, foot, wording), Emphasis::plain);
  for (const FindingRow* row : cow.findings) {
    if (row->foot == foot) sentences.add(wording.finding_at_claw(*row), Emphasis::strong);
  }
  for (const ActionRow* row : cow.actions) {
    if (row->foot == foot) {
      sentences.add(wording.act(*row, view.input.visit.day), Emphasis::plain);
    }
  }
  bool called_twice = false;
  for (const FootRow* row : cow.feet) {
    if (row->foot != foot) continue;
    sentences.add(trimmed_words(*row, wording), Emphasis::plain);
    sentences.add(row->note, Emphasis::plain);
    called_twice = called_twice || row->called_twice;
  }
  if (called_twice) sentences.add(wording.say(Saying::called_twice), Emphasis::plain);
  add_past(sentences, cow, foot, view);
  return {capitalised(wording.foot(foot)), sentences.take()};
}

}  // namespace evenclaw
