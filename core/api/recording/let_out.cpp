// A cow is let out: her turn is settled, checked a last time, and becomes one entry.
#include <algorithm>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/end_reasons.hpp"
#include "core/api/recording/reader.hpp"
#include "core/api/recording/settled_turn.hpp"
#include "core/api/recording/state.hpp"
#include "core/api/recording/turn_body.hpp"
#include "core/api/recording/walks_by.hpp"
#include "core/trade/call_line/act_facts.hpp"

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

/// She was called to the end before, and this call fills in what was missing then.
bool only_answers_what_was_asked(const VisitBook& book, const InCrush& cow) {
  return cow.earlier && cow.earlier->turn.body.turn.end == TurnEnd::done &&
         whole_turn(book, cow).has_value();
}

void end_turn(VisitBook& book, InCrush& cow, LetOutBy why) {
  Turn& turn = cow.draft.turn;
  const bool nothing_said = says_nothing(turn) && !was_answered(ledger_of(book, cow).shown());
  const bool was_ended = why == LetOutBy::done || cow.done_said;
  const std::string unread = not_understood(cow.refused);
  if (!unread.empty()) {
    add_end_reason(turn, unread);
    if (book.typed) {
      book.answers.add(ReplyKind::mark, unread + ", nor said again").cow =
          said_as(cow.draft.turn.cow, book.language);
    }
  } else if (nothing_said && !(was_ended && cow.earlier)) {
    add_end_reason(turn, nothing_was_said);
  } else if (why != LetOutBy::done && says_nothing_of_her_feet(turn)) {
    add_end_reason(turn, "nothing was said of her feet");
  }
  if (cow.done_said || turn.end != TurnEnd::done) return;
  switch (why) {
    case LetOutBy::next_cow:
    case LetOutBy::done:
      return;
    case LetOutBy::end_of_visit:
      if (cow.broke_off && !looks_finished(book, cow))
        add_end_reason(turn, "the recording broke off");
      return;
    case LetOutBy::end_of_input:
      if (only_answers_what_was_asked(book, cow)) return;
      return add_end_reason(turn, "the input ended");
    case LetOutBy::other_visit:
      return add_end_reason(turn, "another visit was taken up");
  }
}

/// A file given once more calls her a second time again, and by that nothing changes.
bool says_it_again(const VisitBook& book, const InCrush& cow, const TurnRecorded& body,
                   const RecordedTurn* superseded) {
  if (book.typed || superseded == nullptr) return false;
  const TurnRecorded& then = superseded->body;
  return body.cow == then.cow && body.turn == then.turn &&
         std::all_of(cow.draft.words.begin(), cow.draft.words.end(), [&](const std::string& line) {
           return std::find(then.words.begin(), then.words.end(), line) != then.words.end();
         });
}

/// The cow that "no, 421" names.
std::optional<CowSaid> put_right_in(const VisitBook& book, std::string_view text) {
  const auto line = read_in_herd(book, text, after_let_out(book));
  if (!line || line->clauses.size() != 1) return std::nullopt;
  const auto* said = std::get_if<TurnClause>(&line->clauses.front());
  const auto* right = said == nullptr ? nullptr : std::get_if<CowCorrected>(said);
  return right == nullptr ? std::nullopt : std::optional(right->cow);
}

/// The first call was of another number until it was put right, and that cow is not her.
bool was_held_against_her(const InCrush& cow, const RecordedTurn& turn) {
  const std::string called = recorded_as(turn.body.turn.cow);
  const std::vector<std::string>& first = cow.called_first;
  return cow.earlier && std::find(first.begin(), first.end(), called) != first.end();
}

/// She stood there once more only to have mended what was called of her before, and that is on
/// record.
bool was_only_mended(const InCrush& cow, LetOutBy why) {
  const bool goes_on = why == LetOutBy::done && cow.earlier;
  return cow.mended_before && !goes_on && cow.refused.empty() && says_nothing(cow.draft.turn);
}

/// A second call that contradicts the first one elsewhere tells all the same what was asked there
/// of a wrap or block.
Outcome answer_first_call(TurnsLetOut& turns, const TurnRecorded& body, const Language& language) {
  for (const FootCall& call : body.turn.feet) {
    for (const Action& act : call.actions) {
      const std::optional<News> fate = fate_told_by(act);
      if (!fate) continue;
      const std::string words = std::string(language.say(TermKind::foot, call.foot)) + ' ' +
                                std::string(language.say(facts_of(act.kind).said_as, act.kind));
      const NewsSaid news{body.turn.cow.number, *fate, {call.foot}, false};
      const Outcome answered = turns.answer_by_news(body.cow, news, words);
      if (!answered) return answered;
    }
  }
  return Done{};
}

}  // namespace

/// The turn in the store that says the same. Unsure cows that are typed in are always new ones.
const RecordedTurn* RecordingState::there_already() {
  const Turn& turn = crush_.cow->draft.turn;
  if (book_.typed && turn.cow.known != CowKnown::numbered) return nullptr;
  const RecordedTurn* same = book_.before.same(
      {turn.cow, crush_.cow->draft.words, !book_.typed, put_right_in(book_, next_line_)});
  return same != nullptr ? same : book_.before.gone_on(turn.cow, crush_.cow->draft.words);
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
  if (was_only_mended(*crush_.cow, why)) {
    take_out(book_, crush_);
    return Done{};
  }
  crush_.cow->called_to_the_end = why == LetOutBy::done;
  if (walked_by(book_, *crush_.cow, why)) return tell_that_she_walked_by();
  if (const RecordedTurn* same = there_already()) return answer_there_already(*same);
  end_turn(book_, *crush_.cow, why);
  checks_.check_her(true, {});
  // "Done" has told of them again already.
  if (book_.typed && why == LetOutBy::next_cow && !crush_.cow->done_said) {
    std::vector<Warning> stops = stops_of(ledger_of(book_, *crush_.cow).unanswered());
    std::erase_if(stops, [&](const Warning& stop) {
      return book_.answers.shows(stop, cow_in_crush(book_, crush_));
    });
    book_.answers.show(stops, cow_in_crush(book_, crush_));
  }
  const RecordedTurn* superseded = gone_on_with();
  if (superseded != nullptr && !was_held_against_her(*crush_.cow, *superseded))
    crush_.cow->cow = superseded->body.cow;
  // Of a turn that is gone on with, the past holds the first call: by it is known of which feet
  // "rest fine" does not speak.
  if (superseded != nullptr && !crush_.cow->earlier) {
    auto past = past_of(book_, crush_.cow->cow, superseded);
    if (!past) return past.faults();
    crush_.cow->past = *std::move(past);
  }
  const EntryId entry = book_.journal.fresh_id();
  TurnRecorded body = body_of(book_, *crush_.cow, entry, superseded);
  if (says_it_again(book_, *crush_.cow, body, superseded)) return answer_there_already(*superseded);
  const SaidBy by = crush_.cow->by;
  if (superseded == nullptr) {
    const Outcome answered = answer_first_call(turns_, body, book_.language);
    if (!answered) return answered;
  }
  keep_last_out(entry);
  return turns_.record(entry, std::move(body), by, superseded);
}

/// With a warning open she stays in: the one moment at which it can still be put right.
Outcome RecordingState::done_said(std::string_view text) {
  if (!crush_.cow) {
    book_.answers.add(ReplyKind::mark, "no cow is in the crush");
    return Done{};
  }
  if (crush_.cow->done_said) return let_out(LetOutBy::done);
  const std::vector<Warning> before = ledger_of(book_, *crush_.cow).unanswered();
  checks_.check_her(true, text);
  const std::vector<Warning> open = ledger_of(book_, *crush_.cow).unanswered();
  if (open.empty()) return let_out(LetOutBy::done);
  std::vector<Warning> again;
  std::copy_if(open.begin(), open.end(), std::back_inserter(again), [&](const Warning& warning) {
    return std::find(before.begin(), before.end(), warning) != before.end() &&
           !book_.answers.shows(warning, cow_in_crush(book_, crush_));
  });
  book_.answers.show(again, cow_in_crush(book_, crush_));
  crush_.cow->done_said = true;
  return Done{};
}

void RecordingState::keep_last_out(EntryId entry) {
  turns_.keep(*std::move(crush_.cow), entry);
  crush_.clear();
}

}  // namespace evenclaw
