// What is put right after she was let out: her number, an answer to a warning.
#include <algorithm>
#include <utility>

#include "core/api/answered_by_news.hpp"
#include "core/api/cow_names.hpp"
#include "core/api/recording/end_reasons.hpp"
#include "core/api/recording/last_time_anew.hpp"
#include "core/api/recording/state.hpp"
#include "core/base/text.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/foot_rows.hpp"

namespace evenclaw {

/// The turn stays as it was said; only the cow it is held against changes, and with her the checks
/// and the tasks.
Outcome RecordingState::correct_last_cow(const CowSaid& cow, std::string_view text) {
  const RecordedTurn* last = book_.before.find(*last_turn_);
  if (const RecordedTurn* done = book_.before.correction(*last_turn_, cow)) {
    book_.answers.add_there_already(said_as(cow, book_.language), done->entry);
    last_turn_ = done->entry;
    book_.last_line.let_out = true;
    return Done{};
  }
  const RecordedTurn wrong = *last;
  const Outcome opened = open_cow(cow);
  if (!opened) return opened;
  crush_.cow->earlier.reset();
  crush_.cow->called_first = wrong.body.called_first;
  crush_.cow->called_first.push_back(recorded_as(wrong.body.turn.cow));
  crush_.cow->draft.turn = wrong.body.turn;
  if (leans_on_last_time(wrong.body.turn, book_.language)) {
    const auto of_wrong = past_of(book_, wrong.body.cow, &wrong);
    if (!of_wrong) return of_wrong.faults();
    TakenAnew anew = for_the_right_cow(
        std::move(crush_.cow->draft), {of_wrong->rows, book_.visit.visit, book_.visit.day},
        {crush_.cow->past.rows, book_.visit.visit, book_.visit.day}, book_.language);
    crush_.cow->draft = std::move(anew.draft);
    crush_.cow->taken_anew = std::move(anew.told);
  }
  crush_.cow->draft.turn.cow = cow;
  crush_.cow->draft.words = wrong.body.words;
  crush_.cow->draft.words.emplace_back(trimmed(text));
  crush_.cow->warnings = WarningLedger(wrong.body.warnings, wrong.body.words);
  crush_.cow->by.caller = wrong.by.caller;
  return record_corrected(wrong, text);
}

void RecordingState::contradicts_earlier(std::string_view text) {
  ReplyItem& item = book_.answers.add(ReplyKind::refused,
                                      "She was called twice today, and that contradicts "
                                      "the first time.");
  item.cow = said_as(last_out_->cow.draft.turn.cow, book_.language);
  item.slug = "call-impossible";
  item.token = shortened(text, 60);
  item.remedy = "Say her number, the foot and what holds.";
}

/// "No, right hind" when she is out already: what was said of her feet is mended as it would have
/// been in the crush.
Outcome RecordingState::correct_last_feet(const Line& line, std::string_view text) {
  const RecordedTurn wrong = *book_.before.find(*last_turn_);
  const Outcome settled = settle_news_said_again(text);
  if (!settled) return settled;
  InCrush cow = last_out_->cow;
  cow.draft.words.emplace_back(trimmed(text));
  for (const Clause& clause : line.clauses) {
    const Outcome added = add_to(cow, std::get<TurnClause>(clause));
    if (!added) return added;
  }
  // What kept her from being done came after all that was said of her feet and is not said again.
  cow.draft.turn.end = last_out_->cow.draft.turn.end;
  cow.draft.turn.end_reason = last_out_->cow.draft.turn.end_reason;
  if (cow.earlier && !whole_turn(book_, cow)) {
    contradicts_earlier(text);
    return Done{};
  }
  if (const RecordedTurn* done = book_.before.correction(wrong.entry, whole_words(book_, cow))) {
    book_.answers.add_there_already(said_as(cow.draft.turn.cow, book_.language), done->entry);
    last_turn_ = done->entry;
    book_.last_line.let_out = true;
    LastOut out{std::move(cow), done->entry};
    last_out_ = std::move(out);
    return Done{};
  }
  (cow.earlier ? cow.earlier->warnings : cow.warnings) =
      WarningLedger(wrong.body.warnings, wrong.body.words);
  crush_.cow = std::move(cow);
  return record_corrected(wrong, text);
}

/// The corrected turn is in the crush once more, and out again when it is recorded.
Outcome RecordingState::record_corrected(const RecordedTurn& wrong, std::string_view text) {
  auto past = past_of(book_, crush_.cow->cow, &wrong);
  if (!past) return past.faults();
  (crush_.cow->earlier ? crush_.cow->earlier->past : crush_.cow->past) = *std::move(past);
  given_again(text);
  show_learned();
  if (!tell_its_end(wrong.body.words, book_.visit.day, book_.language)) {
    drop_said_again(crush_.cow->draft.turn, trimmed(text), book_.language);
  }
  check_her(true, text);
  const EntryId entry = book_.journal.fresh_id();
  TurnRecorded body = body_of(*crush_.cow, entry, &wrong);
  const SaidBy by = crush_.cow->by;
  keep_last_out(entry);
  return record(entry, std::move(body), by, &wrong);
}

/// "go ahead" said when she is out already.
Outcome RecordingState::answer_last_turn(std::string_view text) {
  const RecordedTurn* last = last_turn_ ? book_.before.find(*last_turn_) : nullptr;
  if (last == nullptr) {
    book_.answers.add(ReplyKind::mark, "there is nothing to answer");
    return Done{};
  }
  const RecordedTurn before = *last;
  TurnRecorded body = before.body;
  bool answered = false;
  for (WarningShown& shown : body.warnings) {
    if (!shown.decision.empty()) continue;
    shown.decision = went_ahead;
    answered = true;
  }
  if (!answered) {
    book_.answers.add(ReplyKind::mark, "there is nothing to answer");
    return Done{};
  }
  if (!tell_its_end(body.words, book_.visit.day, book_.language)) {
    drop_end_reason(body.turn, nothing_was_said);
  }
  body.words.emplace_back(trimmed(text));
  book_.last_line.let_out = true;
  const SaidBy by{before.by.caller, book_.by.writer};
  return record(book_.journal.fresh_id(), std::move(body), by, &before);
}

/// What is told of a wrap or block right after she was let out answers the question she left with.
Outcome RecordingState::answer_by_news(CowId cow, const NewsSaid& news, std::string_view text) {
  const RecordedTurn* last = book_.before.last_of(cow);
  if (last == nullptr) return Done{};
  const RecordedTurn before = *last;
  TurnRecorded body = before.body;
  if (!answer_warnings(body.warnings, news, text)) return Done{};
  const std::optional<EntryId> last_turn = last_turn_;
  const EntryId entry = book_.journal.fresh_id();
  const SaidBy by{before.by.caller, book_.by.writer};
  const Outcome recorded = record(entry, std::move(body), by, &before);
  if (last_turn != before.entry) last_turn_ = last_turn;
  return recorded;
}

}  // namespace evenclaw
