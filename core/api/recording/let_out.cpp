// A cow is let out: her turn is settled, checked a last time, and becomes one entry.
#include <algorithm>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/recording/end_reasons.hpp"
#include "core/api/recording/reader.hpp"
#include "core/api/recording/state.hpp"
#include "core/api/recording/walks_by.hpp"
#include "core/trade/follow_up.hpp"

namespace evenclaw {

namespace {

/// A "go ahead" that answered something: somebody stood there and decided.
bool was_answered(const std::vector<WarningShown>& warnings) {
  return std::any_of(warnings.begin(), warnings.end(),
                     [](const WarningShown& shown) { return shown.decision == went_ahead; });
}

std::vector<Warning> stops_of(const std::vector<Warning>& warnings) {
  std::vector<Warning> stops;
  std::copy_if(warnings.begin(), warnings.end(), std::back_inserter(stops),
               [](const Warning& warning) { return warning.rank == Rank::stop; });
  return stops;
}

}  // namespace

void RecordingState::end_turn(LetOutBy why) {
  Turn& turn = crush_.cow->draft.turn;
  const bool nothing_said =
      says_nothing(turn) && !was_answered(ledger_of(book_, *crush_.cow).shown());
  const bool was_ended = why == LetOutBy::done || crush_.cow->done_said;
  const std::string unread = not_understood(crush_.cow->refused);
  if (!unread.empty()) {
    add_end_reason(turn, unread);
    if (book_.typed)
      book_.answers.add(ReplyKind::mark, unread + ", nor said again").cow =
          cow_in_crush(book_, crush_);
  } else if (nothing_said && !(was_ended && crush_.cow->earlier)) {
    add_end_reason(turn, nothing_was_said);
  } else if (why != LetOutBy::done && says_nothing_of_her_feet(turn)) {
    add_end_reason(turn, "nothing was said of her feet");
  }
  if (crush_.cow->done_said || turn.end != TurnEnd::done) return;
  switch (why) {
    case LetOutBy::next_cow:
    case LetOutBy::done:
      return;
    case LetOutBy::end_of_visit:
      if (crush_.cow->broke_off && !looks_finished(book_, *crush_.cow))
        add_end_reason(turn, "the recording broke off");
      return;
    case LetOutBy::end_of_input:
      if (only_answers_what_was_asked()) return;
      return add_end_reason(turn, "the input ended");
    case LetOutBy::other_visit:
      return add_end_reason(turn, "another visit was taken up");
  }
}

/// A file given once more calls her a second time again, and by that nothing changes.
bool RecordingState::says_it_again(const TurnRecorded& body, const RecordedTurn* superseded) const {
  if (book_.typed || superseded == nullptr) return false;
  const TurnRecorded& then = superseded->body;
  return body.cow == then.cow && body.turn == then.turn &&
         std::all_of(crush_.cow->draft.words.begin(), crush_.cow->draft.words.end(),
                     [&](const std::string& line) {
                       return std::find(then.words.begin(), then.words.end(), line) !=
                              then.words.end();
                     });
}

/// She was called to the end before, and this call fills in what was missing then.
bool RecordingState::only_answers_what_was_asked() const {
  return crush_.cow->earlier && crush_.cow->earlier->turn.body.turn.end == TurnEnd::done &&
         whole_turn(book_, *crush_.cow).has_value();
}

/// The cow that "no, 421" names.
std::optional<CowSaid> RecordingState::put_right_in(std::string_view text) const {
  const auto line = read_in_herd(book_, text, after_let_out(book_));
  if (!line || line->clauses.size() != 1) return std::nullopt;
  const auto* said = std::get_if<TurnClause>(&line->clauses.front());
  const auto* right = said == nullptr ? nullptr : std::get_if<CowCorrected>(said);
  return right == nullptr ? std::nullopt : std::optional(right->cow);
}

/// The turn in the store that says the same. Unsure cows that are typed in are always new ones.
const RecordedTurn* RecordingState::there_already() {
  const Turn& turn = crush_.cow->draft.turn;
  if (book_.typed && turn.cow.known != CowKnown::numbered) return nullptr;
  const RecordedTurn* same = book_.before.same(
      {turn.cow, crush_.cow->draft.words, !book_.typed, put_right_in(next_line_)});
  return same != nullptr ? same : book_.before.gone_on(turn.cow, crush_.cow->draft.words);
}

/// She stood there once more only to have mended what was called of her before, and that is on
/// record.
bool RecordingState::was_only_mended(LetOutBy why) const {
  const bool goes_on = why == LetOutBy::done && crush_.cow->earlier;
  return crush_.cow->mended_before && !goes_on && crush_.cow->refused.empty() &&
         says_nothing(crush_.cow->draft.turn);
}

/// The turn that this one takes the place of: one that broke off and is said again from its
/// beginning, or one in which something was open.
const RecordedTurn* RecordingState::gone_on_with() {
  if (whole_turn(book_, *crush_.cow)) return book_.before.find(crush_.cow->earlier->turn.entry);
  const CowSaid& said = crush_.cow->draft.turn.cow;
  const bool is_another = crush_.cow->earlier && said.known == CowKnown::doubtful;
  if (is_another) crush_.cow->cow = book_.finder.find(said).cow;
  crush_.cow->earlier.reset();
  return book_.before.begun(crush_.cow->draft.turn.cow, crush_.cow->draft.words);
}

Outcome RecordingState::answer_there_already(const RecordedTurn& same) {
  forget_answers_about_her(book_, crush_);
  book_.answers.add_there_already(cow_in_crush(book_, crush_), same.entry);
  turns_.now_last(same.entry);
  const Outcome stands = stand_as_recorded(book_, *crush_.cow, same);
  keep_last_out(same.entry);
  return stands;
}

Outcome RecordingState::let_out(LetOutBy why) {
  if (was_only_mended(why)) {
    take_out(book_, crush_);
    return Done{};
  }
  crush_.cow->called_to_the_end = why == LetOutBy::done;
  if (walked_by(why)) return tell_that_she_walked_by();
  if (const RecordedTurn* same = there_already()) return answer_there_already(*same);
  end_turn(why);
  checks_.check_her(true, {});
  if (book_.typed && why == LetOutBy::next_cow) {
    std::vector<Warning> stops = stops_of(ledger_of(book_, *crush_.cow).unanswered());
    std::erase_if(stops, [&](const Warning& stop) {
      return book_.answers.shows(stop, cow_in_crush(book_, crush_));
    });
    book_.answers.show(stops, cow_in_crush(book_, crush_));
  }
  const RecordedTurn* superseded = gone_on_with();
  if (superseded != nullptr) crush_.cow->cow = superseded->body.cow;
  // Of a turn that is gone on with, the past holds the first call: by it is known of which feet
  // "rest fine" does not speak.
  if (superseded != nullptr && !crush_.cow->earlier) {
    auto past = past_of(book_, crush_.cow->cow, superseded);
    if (!past) return past.faults();
    crush_.cow->past = *std::move(past);
  }
  const EntryId entry = book_.journal.fresh_id();
  TurnRecorded body = body_of(book_, *crush_.cow, entry, superseded);
  if (says_it_again(body, superseded)) return answer_there_already(*superseded);
  const SaidBy by = crush_.cow->by;
  keep_last_out(entry);
  return turns_.record(entry, std::move(body), by, superseded);
}

void RecordingState::keep_last_out(EntryId entry) {
  turns_.keep(*std::move(crush_.cow), entry);
  crush_.clear();
}

}  // namespace evenclaw
