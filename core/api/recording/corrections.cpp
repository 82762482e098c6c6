// What is put right after she was let out: her number, an answer to a warning.
#include <algorithm>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/recording/state.hpp"
#include "core/base/text.hpp"
#include "core/trade/follow_up.hpp"

namespace evenclaw {

/// The turn stays as it was said; only the cow it is held against changes, and with her the checks
/// and the tasks.
Outcome RecordingState::correct_last_cow(const CowSaid& cow, std::string_view text) {
  const RecordedTurn* last = before_.find(*last_turn_);
  if (const RecordedTurn* done = before_.correction(*last_turn_, cow)) {
    ReplyItem& item = answer(ReplyKind::there_already, "");
    item.cow = said_as(cow);
    item.entry = done->entry;
    last_turn_ = done->entry;
    return Done{};
  }
  const RecordedTurn wrong = *last;
  const Outcome opened = open_cow(cow);
  if (!opened) return opened;
  in_crush_->draft.turn = wrong.body.turn;
  in_crush_->draft.turn.cow = cow;
  in_crush_->draft.words = wrong.body.words;
  in_crush_->draft.words.emplace_back(trimmed(text));
  in_crush_->warnings = WarningLedger(wrong.body.warnings);
  check_her(true, text);
  const EntryId entry = journal_.fresh_id();
  TurnRecorded body = body_of(*in_crush_, entry);
  in_crush_.reset();
  return record(entry, std::move(body), &wrong);
}

/// "go ahead" said when she is out already.
Outcome RecordingState::answer_last_turn(std::string_view text) {
  const RecordedTurn* last = last_turn_ ? before_.find(*last_turn_) : nullptr;
  if (last == nullptr) {
    answer(ReplyKind::mark, "there is nothing to answer");
    return Done{};
  }
  const RecordedTurn before = *last;
  TurnRecorded body = before.body;
  bool answered = false;
  for (WarningShown& shown : body.warnings) {
    if (!shown.decision.empty()) continue;
    shown.decision = "go ahead";
    answered = true;
  }
  if (!answered) {
    answer(ReplyKind::mark, "there is nothing to answer");
    return Done{};
  }
  body.words.emplace_back(trimmed(text));
  return record(journal_.fresh_id(), std::move(body), &before);
}

}  // namespace evenclaw
