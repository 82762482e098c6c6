// What is put right after she was let out: her number, an answer to a warning.
#include <algorithm>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/recording/call_of_her.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/end_reasons.hpp"
#include "core/api/recording/last_time_anew.hpp"
#include "core/api/recording/open_questions.hpp"
#include "core/api/recording/refused_of_her.hpp"
#include "core/api/recording/state.hpp"
#include "core/api/recording/turn_body.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

void contradicts_earlier(VisitBook& book, const InCrush& cow, std::string_view text) {
  ReplyItem& item = book.answers.add(ReplyKind::refused,
                                     "She was called twice today, and that contradicts "
                                     "the first time.");
  item.cow = said_as(cow.draft.turn.cow, book.language);
  item.slug = "call-impossible";
  item.token = shortened(text, 60);
  item.remedy = "Say her number, the foot and what holds.";
}

}  // namespace

/// The turn stays as it was said; only the cow it is held against changes, and with her the checks
/// and the tasks.
Outcome RecordingState::correct_last_cow(const CowSaid& cow, std::string_view text) {
  const RecordedTurn* last = book_.before.find(*turns_.last().turn);
  if (const RecordedTurn* done = book_.before.correction(*turns_.last().turn, cow)) {
    book_.answers.add_there_already(said_as(cow, book_.language), done->entry);
    turns_.now_last(done->entry);
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

/// "No, right hind" when she is out already: what was said of her feet is mended as it would have
/// been in the crush.
Outcome RecordingState::correct_last_feet(const Line& line, std::string_view text) {
  const RecordedTurn wrong = *book_.before.find(*turns_.last().turn);
  const Outcome settled = settle_news_said_again(book_, who_is_meant(crush_, turns_), text);
  if (!settled) return settled;
  InCrush cow = turns_.last().out->cow;
  cow.draft.words.emplace_back(trimmed(text));
  for (const Clause& clause : line.clauses) {
    const Outcome added = add_to(book_, cow, std::get<TurnClause>(clause));
    if (!added) return added;
  }
  // What kept her from being done came after all that was said of her feet and is not said again.
  cow.draft.turn.end = turns_.last().out->cow.draft.turn.end;
  cow.draft.turn.end_reason = turns_.last().out->cow.draft.turn.end_reason;
  if (cow.earlier && !whole_turn(book_, cow)) {
    contradicts_earlier(book_, turns_.last().out->cow, text);
    return Done{};
  }
  if (const RecordedTurn* done = book_.before.correction(wrong.entry, whole_words(book_, cow))) {
    book_.answers.add_there_already(said_as(cow.draft.turn.cow, book_.language), done->entry);
    turns_.now_last(done->entry);
    turns_.keep(std::move(cow), done->entry);
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
  given_again(*crush_.cow, text, book_.language);
  checks_.show_learned(this_line_);
  if (!tell_its_end(wrong.body.words, book_.visit.day, book_.language)) {
    drop_said_again(crush_.cow->draft.turn, trimmed(text), book_.language);
  }
  checks_.check_her(true, text);
  const EntryId entry = book_.journal.fresh_id();
  TurnRecorded body = body_of(book_, *crush_.cow, entry, &wrong);
  const SaidBy by = crush_.cow->by;
  keep_last_out(entry);
  return turns_.record(entry, std::move(body), by, &wrong);
}

}  // namespace evenclaw
