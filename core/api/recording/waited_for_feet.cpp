// "Rest fine" said before anybody said which feet are lifted today waits for that, and is filled in
// when it is said.
#include <string>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/end_reasons.hpp"
#include "core/api/recording/settled_turn.hpp"
#include "core/api/recording/state.hpp"
#include "core/api/recording/turn_body.hpp"
#include "core/trade/call_line/offered.hpp"

namespace evenclaw {

/// Each of them is corrected: the feet of which nothing was said are fine, but for those of which a
/// line was not understood.
Outcome RecordingState::fill_what_waited() {
  std::optional<InCrush> stands_there = std::exchange(crush_.cow, std::nullopt);
  const std::optional<EntryId> last_turn = turns_.last().turn;
  std::optional<EntryId> last_turn_now = last_turn;
  std::string filled;
  for (const RecordedTurn& waiting : book_.before.that_say_rest_fine()) {
    auto past = past_of(book_, waiting.body.cow, &waiting);
    if (!past) return past.faults();
    InCrush her;
    her.cow = waiting.body.cow;
    her.past = *std::move(past);
    her.draft.turn = waiting.body.turn;
    her.draft.words = waiting.body.words;
    her.called_first = waiting.body.called_first;
    her.warnings = WarningLedger(waiting.body.warnings, waiting.body.words);
    for (const std::string& line : lines_not_understood(waiting.body.turn)) {
      her.refused.emplace_back(line, FootSet{}, book_.language);
    }
    her.by = {waiting.by.caller, book_.by.writer};
    her.first_answer = book_.answers.count();
    if (as_settled(book_, her) == waiting.body.turn) continue;
    crush_.cow = std::move(her);
    checks_.check_her(true, {});
    const EntryId entry = book_.journal.fresh_id();
    TurnRecorded body = body_of(book_, *crush_.cow, entry, &waiting);
    const SaidBy by = crush_.cow->by;
    crush_.cow.reset();
    const Outcome recorded = turns_.record(entry, std::move(body), by, &waiting);
    if (!recorded) return recorded;
    if (last_turn == waiting.entry) last_turn_now = entry;
    filled += (filled.empty() ? "" : ", ") + said_as(waiting.body.turn.cow, book_.language);
  }
  if (!filled.empty()) {
    book_.answers.add(ReplyKind::told, '"' + std::string(book_.language.say(TermKind::rest_fine)) +
                                           "\" now speaks of these feet of " + filled);
  }
  turns_.now_last(last_turn_now);
  crush_.cow = std::move(stands_there);
  return crush_.cow && crush_.cow->earlier ? look_again_at_past(book_, *crush_.cow)
                                           : Outcome(Done{});
}

Outcome RecordingState::todays_feet(const FootSet& feet) {
  if (feet == book_.visit.todays_feet) return Done{};
  VisitCorrected body;
  body.visit = book_.visit.visit;
  body.todays_feet = feet;
  const Outcome added =
      book_.journal.add(body, {book_.journal.fresh_id(), {book_.visit.visit.value}, book_.by, {}});
  if (!added) return added;
  const bool are_first_said = book_.visit.todays_feet.empty();
  book_.visit.todays_feet = feet;
  book_.answers.add(ReplyKind::told, "today's feet: " + offered_feet(feet, book_.language));
  return are_first_said ? fill_what_waited() : Outcome(Done{});
}

}  // namespace evenclaw
