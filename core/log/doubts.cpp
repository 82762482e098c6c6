#include "core/log/doubts.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <string>

#include "core/trade/lesion.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

std::string about(std::string_view what, const std::string& reason) {
  std::string words(what);
  if (!reason.empty()) words += ": " + reason;
  return words;
}

std::string numbers_in_doubt(const CowSaid& cow) {
  std::string words = "Which is her number: " + cow.number;
  for (const std::string& other : cow.alternatives) words += " or " + other;
  return words + "?";
}

std::string foot_and_lesion(Foot foot, Lesion lesion) {
  return sentence(std::string(spoken(foot))) + ", " + std::string(facts_of(lesion).name);
}

bool place_is_open(const Finding& finding) {
  const LesionFacts& facts = facts_of(finding.lesion);
  const bool sits_at_one_place = facts.nowhere_else && facts.usual_places.size() == 1;
  return finding.place == Place::not_called && !sits_at_one_place;
}

bool claw_is_open(const Finding& finding) {
  return finding.claw == Claw::not_called && facts_of(finding.lesion).kept_on == KeptOn::claw;
}

class DoubtsOfTurn {
 public:
  DoubtsOfTurn(const CowStory& story, const CowRow& cow, const Told<TurnRecorded>& turn)
      : story_(story), cow_(cow), told_(turn), turn_(turn.body.turn) {}

  std::vector<DoubtRow> all(const std::vector<CalledTwice>& twice) && {
    ask_who_she_is();
    if (turn_.end == TurnEnd::unfinished) {
      add(DoubtKind::unfinished, {}, about("Her turn was not finished", turn_.end_reason));
    }
    if (turn_.end == TurnEnd::not_done) {
      add(DoubtKind::not_done, {}, about("She was not done", turn_.end_reason));
    }
    ask_which_call_holds(twice);
    ask_what_was_found();
    ask_about_findings();
    for (const WarningShown& shown : told_.body.warnings) {
      const bool wants_answer = shown.warning.rank != Rank::note && shown.decision.empty();
      if (wants_answer) add(DoubtKind::unanswered, shown.warning.foot, shown.warning.words);
    }
    if (std::binary_search(story_.in_two_versions.begin(), story_.in_two_versions.end(),
                           told_.entry->envelope.id)) {
      add(DoubtKind::two_versions, {},
          "Her turn reached this store in two versions; one of them is shown.");
    }
    return std::move(rows_);
  }

 private:
  void add(DoubtKind kind, std::optional<Foot> foot, std::string words) {
    DoubtRow row;
    row.herd = story_.herd;
    row.cow = story_.cow;
    row.turn = told_.entry->envelope.id;
    row.position = static_cast<std::int32_t>(rows_.size()) + 1;
    row.visit = told_.body.visit;
    row.day = told_.moment.day;
    row.kind = kind;
    row.foot = foot;
    row.words = std::move(words);
    rows_.push_back(std::move(row));
  }

  void ask_who_she_is() {
    if (cow_.known == CowKnown::numbered) return;
    if (turn_.cow.known == CowKnown::unnumbered) {
      add(DoubtKind::unnumbered, {}, about("Which number has she", turn_.cow.looks) + "?");
    }
    if (turn_.cow.known == CowKnown::doubtful) {
      add(DoubtKind::doubtful_number, {}, numbers_in_doubt(turn_.cow));
    }
  }

  void ask_which_call_holds(const std::vector<CalledTwice>& twice) {
    for (const CalledTwice& called : twice) {
      const bool calls_again = std::find(called.turns.begin() + 1, called.turns.end(),
                                         told_.entry->envelope.id) != called.turns.end();
      if (!calls_again) continue;
      add(DoubtKind::called_twice, called.foot,
          sentence(std::string(spoken(called.foot))) +
              " was called twice in this visit. Do both calls hold?");
    }
  }

  void ask_what_was_found() {
    for (const FootCall& call : turn_.feet) {
      if (call.state != FootState::unsaid) continue;
      add(DoubtKind::lifted_not_called, call.foot,
          sentence(std::string(spoken(call.foot))) + ": what was found?");
    }
  }

  void ask_about_findings() {
    for_each_finding([&](Foot foot, const Finding& finding) {
      const bool place = place_is_open(finding);
      const bool claw = claw_is_open(finding);
      if (!place && !claw) return;
      const std::string_view question =
          !place ? ": on which claw?" : (claw ? ": where, and on which claw?" : ": where?");
      add(DoubtKind::place_not_called, foot,
          foot_and_lesion(foot, finding.lesion) + std::string(question));
    });
    for_each_finding([&](Foot foot, const Finding& finding) {
      if (finding.lesion == Lesion::dd || finding.degree != Degree::not_called) return;
      add(DoubtKind::degree_not_called, foot, foot_and_lesion(foot, finding.lesion) + ": how bad?");
    });
    for_each_finding([&](Foot foot, const Finding& finding) {
      if (finding.lesion != Lesion::dd || finding.stage != DdStage::not_called) return;
      add(DoubtKind::stage_not_called, foot,
          foot_and_lesion(foot, finding.lesion) + ": at which stage?");
    });
  }

  template <class F>
  void for_each_finding(F&& f) {
    for (const FootCall& call : turn_.feet) {
      for (const Finding& finding : call.findings) {
        if (finding.lesion != Lesion::other) f(call.foot, finding);
      }
    }
  }

  const CowStory& story_;
  const CowRow& cow_;
  const Told<TurnRecorded>& told_;
  const Turn& turn_;
  std::vector<DoubtRow> rows_;
};

}  // namespace

bool was_lifted(const FootCall& call) {
  switch (call.state) {
    case FootState::not_lifted:
      return false;
    case FootState::nothing_found:
    case FootState::finding:
      return true;
    case FootState::unsaid:
      return !call.actions.empty() || !call.measures.empty() || call.trimmed == Trimmed::yes;
  }
  return false;
}

std::vector<CalledTwice> called_twice(const CowStory& story) {
  std::vector<CalledTwice> all;
  for (const auto& visit : by_visit(story)) {
    std::map<Foot, std::vector<EntryId>> by_foot;
    for (const Told<TurnRecorded>* turn : visit) {
      for (const FootCall& call : turn->body.turn.feet) {
        if (was_lifted(call)) by_foot[call.foot].push_back(turn->entry->envelope.id);
      }
    }
    for (const auto& [foot, turns] : by_foot) {
      if (turns.size() > 1) all.push_back({visit.front()->body.visit, foot, turns});
    }
  }
  return all;
}

std::vector<DoubtRow> doubts_of(const CowStory& story, const CowRow& cow) {
  const std::vector<CalledTwice> twice = called_twice(story);
  std::vector<DoubtRow> doubts;
  for (const Told<TurnRecorded>& turn : story.turns) {
    for (DoubtRow& row : DoubtsOfTurn(story, cow, turn).all(twice)) {
      doubts.push_back(std::move(row));
    }
  }
  return doubts;
}

}  // namespace evenclaw
