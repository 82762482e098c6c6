#include "core/log/doubts.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/not_called.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

std::string about(std::string_view what, const std::string& reason) {
  std::string words(what);
  if (!reason.empty()) words += ": " + reason;
  return words;
}

std::string numbers_in_doubt(const CowSaid& cow) {
  if (cow.alternatives.empty()) return "Is her number " + cow.number + "?";
  return "Which is her number: " + called_as(cow) + "?";
}

std::optional<Foot> only_foot(const FootSet& feet) {
  if (feet.count() != 1) return std::nullopt;
  for (const Foot foot : all_feet) {
    if (feet.has(foot)) return foot;
  }
  return std::nullopt;
}

class DoubtsOfTurn {
 public:
  DoubtsOfTurn(const CowStory& story, const CowRow& cow, const Told<TurnRecorded>& turn)
      : story_(story), cow_(cow), told_(turn), turn_(turn.body.turn) {}

  std::vector<DoubtRow> all(const std::vector<CalledTwice>& twice) && {
    ask_who_she_is();
    ask_whether_she_is_here();
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

  /// Asked once, of her first turn after it; told gone again after her turn, she is gone.
  void ask_whether_she_is_here() {
    if (!was_there(told_) || was_settled_since()) return;
    const Told<CowLeft>* before = nullptr;
    for (const Told<CowLeft>& left : story_.left) {
      if (!is_here_after(story_, told_, left)) return;
      if (left.moment.day == told_.moment.day) before = &left;
    }
    const bool is_first =
        before != nullptr &&
        std::none_of(story_.turns.begin(), story_.turns.end(), [&](const Told<TurnRecorded>& turn) {
          return was_there(turn) && is_here_after(story_, turn, *before) &&
                 turn.moment.day == told_.moment.day && turn.moment < told_.moment;
        });
    if (!is_first) return;
    add(DoubtKind::told_gone, {}, "Said to be gone today, and in the crush: is she still here?");
  }

  void ask_which_call_holds(const std::vector<CalledTwice>& twice) {
    if (was_settled_since()) return;
    for (const CalledTwice& called : twice) {
      const bool calls_again = std::find(called.turns.begin() + 1, called.turns.end(),
                                         told_.entry->envelope.id) != called.turns.end();
      if (!calls_again) continue;
      add(DoubtKind::called_twice, called.foot,
          sentence(std::string(spoken(called.foot))) +
              " was called twice in this visit. Do both calls hold?");
    }
  }

  [[nodiscard]] bool was_settled_since() const {
    return std::any_of(story_.settled.begin(), story_.settled.end(),
                       [&](const Told<QuestionSettled>& settled) {
                         return !settled.body.about && settled.body.visit == told_.body.visit &&
                                told_.moment.nth < settled.moment.nth;
                       });
  }

  void ask_what_was_found() {
    for (const FootCall& call : turn_.feet) {
      if (call.state != FootState::unsaid) continue;
      add(DoubtKind::lifted_not_called, call.foot,
          sentence(std::string(spoken(call.foot))) + ": what was found?");
    }
  }

  void ask_about_findings() {
    ask_of_findings(DoubtKind::place_not_called, [](const Finding& finding) -> std::string {
      const bool place = place_is_missing(finding);
      const bool claw = claw_is_missing(finding);
      if (place) return claw ? "where, and on which claw?" : "where?";
      return claw ? "on which claw?" : "";
    });
    ask_of_findings(DoubtKind::degree_not_called, [](const Finding& finding) -> std::string {
      return degree_is_missing(finding) ? "how bad?" : "";
    });
    ask_of_findings(DoubtKind::stage_not_called, [](const Finding& finding) -> std::string {
      return stage_is_missing(finding) ? "at which stage?" : "";
    });
  }

  // The same question about the same lesion is asked once for all feet it was called on.
  template <class F>
  void ask_of_findings(DoubtKind kind, F question_about) {
    struct Question {
      Lesion lesion;
      std::string words;
      FootSet feet;
    };

    std::vector<Question> questions;
    for_each_finding([&](Foot foot, const Finding& finding) {
      const std::string words = question_about(finding);
      if (words.empty()) return;
      const auto same = std::find_if(questions.begin(), questions.end(), [&](const Question& one) {
        return one.lesion == finding.lesion && one.words == words && !one.feet.has(foot);
      });
      if (same != questions.end()) {
        same->feet.add(foot);
      } else {
        questions.push_back({finding.lesion, words, FootSet{foot}});
      }
    });
    for (const Question& one : questions) {
      const std::string lesion(facts_of(one.lesion).name);
      add(kind, only_foot(one.feet), sentence(spoken(one.feet)) + ", " + lesion + ": " + one.words);
    }
  }

  template <class F>
  void for_each_finding(F&& f) {
    for (const FootCall& call : turn_.feet) {
      for (const Finding& finding : call.findings) {
        if (!is_named_by_words(finding.lesion)) f(call.foot, finding);
      }
    }
  }

  const CowStory& story_;
  const CowRow& cow_;
  const Told<TurnRecorded>& told_;
  const Turn& turn_;
  std::vector<DoubtRow> rows_;
};

/// The calls of one foot in a visit, with the turns that hold them.
struct CallsOfFoot {
  std::vector<EntryId> turns;
  std::set<DeviceId> devices;
  std::vector<const FootCall*> calls;
};

/// Under each foot that was lifted.
std::map<Foot, CallsOfFoot> calls_by_foot(const std::vector<const Told<TurnRecorded>*>& visit) {
  std::map<Foot, CallsOfFoot> by_foot;
  for (const Told<TurnRecorded>* turn : visit) {
    for (const FootCall& call : turn->body.turn.feet) {
      if (!was_lifted(call)) continue;
      CallsOfFoot& of_foot = by_foot[call.foot];
      of_foot.turns.push_back(turn->entry->envelope.id);
      of_foot.devices.insert(turn->entry->envelope.device);
      of_foot.calls.push_back(&call);
    }
  }
  return by_foot;
}

/// Each device wrote it down once, as found fine and with nothing done to it: the same was heard
/// twice. Said twice on one device the second call may be of another cow.
bool is_heard_alike(const CallsOfFoot& of_foot) {
  if (of_foot.devices.size() != of_foot.turns.size()) return false;
  const Trimmed trimmed = of_foot.calls.front()->trimmed;
  return std::all_of(of_foot.calls.begin(), of_foot.calls.end(), [&](const FootCall* call) {
    return call->state == FootState::nothing_found && call->actions.empty() &&
           call->measures.empty() && call->trimmed == trimmed;
  });
}

}  // namespace

std::vector<CalledTwice> called_twice(const CowStory& story) {
  std::vector<CalledTwice> all;
  for (const auto& visit : by_visit(story)) {
    for (const auto& [foot, called] : calls_by_foot(visit)) {
      if (called.turns.size() < 2 || is_heard_alike(called)) continue;
      all.push_back({visit.front()->body.visit, foot, called.turns});
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

bool is_answered_by_calling(DoubtKind kind) {
  switch (kind) {
    case DoubtKind::unfinished:
    case DoubtKind::not_done:
    case DoubtKind::lifted_not_called:
    case DoubtKind::place_not_called:
    case DoubtKind::degree_not_called:
    case DoubtKind::stage_not_called:
    case DoubtKind::unanswered:
      return true;
    case DoubtKind::unnumbered:
    case DoubtKind::doubtful_number:
    case DoubtKind::told_gone:
    case DoubtKind::called_twice:
    case DoubtKind::number_given_twice:
    case DoubtKind::two_versions:
      return false;
  }
  return false;
}

}  // namespace evenclaw
