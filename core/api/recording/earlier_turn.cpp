#include "core/api/recording/earlier_turn.hpp"

#include <algorithm>
#include <utility>

#include "core/api/recording/end_reasons.hpp"
#include "core/api/recording/new_one_off.hpp"
#include "core/api/recording/settled_turn.hpp"
#include "core/log/doubts.hpp"
#include "core/trade/call_line/gone_on.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

namespace {

bool something_is_open(const Rows& rows, EntryId turn) {
  return std::any_of(rows.doubts.begin(), rows.doubts.end(), [&](const DoubtRow& doubt) {
    return doubt.turn == turn && is_answered_by_calling(doubt.kind);
  });
}

bool is_beginning(const std::vector<std::string>& words, const std::vector<std::string>& of) {
  return words.size() <= of.size() && std::equal(words.begin(), words.end(), of.begin());
}

/// The lines of then are said once more, as when a file is given again.
bool repeats(const InCrush& cow) {
  const std::vector<std::string>& then = cow.earlier->turn.body.words;
  const std::vector<std::string>& now = cow.draft.words;
  return !then.empty() && (is_beginning(now, then) || is_beginning(then, now));
}

/// That turn as one of this cow.
Result<EarlierTurn> held_against(const VisitBook& book, const RecordedTurn& turn, CowId cow) {
  auto past = past_of(book, cow, &turn);
  if (!past) return past.faults();
  return EarlierTurn{turn, *std::move(past), WarningLedger(turn.body.warnings, turn.body.words)};
}

/// An earlier turn and what was known of her before it.
Result<std::optional<EarlierTurn>> as_it_was(const VisitBook& book, const RecordedTurn& turn) {
  auto earlier = held_against(book, turn, turn.body.cow);
  if (!earlier) return earlier.faults();
  return std::optional(*std::move(earlier));
}

}  // namespace

Outcome go_on_with(const VisitBook& book, InCrush& cow, const RecordedTurn& first) {
  auto earlier = held_against(book, first, cow.cow);
  if (!earlier) return earlier.faults();
  cow.earlier = *std::move(earlier);
  return Done{};
}

Result<std::optional<EarlierTurn>> left_open_earlier(const VisitBook& book, const CowPast& past) {
  const RecordedTurn* open = nullptr;
  for (const TurnRow& row : past.same_visit) {
    const RecordedTurn* turn = book.before.find(row.turn);
    if (turn != nullptr && something_is_open(past.rows, row.turn)) open = turn;
  }
  if (open == nullptr) return std::optional<EarlierTurn>();
  return as_it_was(book, *open);
}

Outcome stand_as_recorded(const VisitBook& book, InCrush& cow, const RecordedTurn& recorded) {
  cow.earlier.reset();
  const bool goes_on_with = recorded.supersedes && recorded.body.words != cow.draft.words;
  const RecordedTurn* before = goes_on_with ? book.before.find(*recorded.supersedes) : nullptr;
  if (before == nullptr) return Done{};
  auto earlier = as_it_was(book, *before);
  if (!earlier) return earlier.faults();
  cow.earlier = *std::move(earlier);
  return Done{};
}

Outcome look_again_at_past(const VisitBook& book, InCrush& cow) {
  auto past = past_of(book, cow.cow);
  if (!past) return past.faults();
  auto earlier = left_open_earlier(book, *past);
  if (!earlier) return earlier.faults();
  cow.past = *std::move(past);
  cow.earlier = *std::move(earlier);
  return Done{};
}

Outcome go_on_with_the_call_that_fits(const VisitBook& book, InCrush& cow) {
  if (!cow.earlier || whole_turn(book, cow)) return Done{};
  std::optional<EarlierTurn> last = cow.earlier;
  for (const TurnRow& row : cow.past.same_visit) {
    const RecordedTurn* turn = book.before.find(row.turn);
    const bool is_last = turn == nullptr || turn->entry == last->turn.entry;
    if (is_last || !something_is_open(cow.past.rows, row.turn)) continue;
    auto earlier = as_it_was(book, *turn);
    if (!earlier) return earlier.faults();
    cow.earlier = *std::move(earlier);
    if (whole_turn(book, cow)) return Done{};
  }
  cow.earlier = std::move(last);
  return Done{};
}

Result<std::optional<CowId>> left_in_doubt(const VisitBook& book, const CowSaid& cow) {
  if (cow.known != CowKnown::doubtful) return std::optional<CowId>();
  const std::vector<const RecordedTurn*> turns = book.before.turns_called(cow);
  if (turns.size() != 1) return std::optional<CowId>();
  const CowId same = turns.front()->body.cow;
  auto past = past_of(book, same);
  if (!past) return past.faults();
  const auto open = left_open_earlier(book, *past);
  if (!open) return open.faults();
  return *open ? std::optional(same) : std::nullopt;
}

std::optional<Turn> whole_turn(const VisitBook& book, const InCrush& cow) {
  if (!cow.earlier || repeats(cow)) return std::nullopt;
  const Turn& before = cow.earlier->turn.body.turn;
  const Turn more = as_settled(book, cow);
  if (tells_the_new_one_off(before, more)) return std::nullopt;
  std::optional<Turn> whole = gone_on(before, more);
  if (whole) tell_reasons_once(*whole);
  // What the list did not have at the first call it may have now.
  if (whole) whole = with_medicines(*std::move(whole), book.medicine, book.visit.day);
  if (!whole) return whole;
  // Only who says that she is done says that nothing more is to be said again; what was called in
  // such a line and not since is asked about all the same.
  if (cow.called_to_the_end) {
    const std::string left_out =
        left_out_of_what_was_not_understood(before, cow.draft.words, book.language);
    if (!left_out.empty()) add_end_reason(*whole, left_out);
    return whole;
  }
  for (const std::string& reason : still_not_understood(before, cow.draft.words, book.language)) {
    add_end_reason(*whole, reason);
  }
  return whole;
}

std::vector<std::string> whole_words(const VisitBook& book, const InCrush& cow) {
  std::vector<std::string> words;
  if (whole_turn(book, cow)) words = cow.earlier->turn.body.words;
  words.insert(words.end(), cow.draft.words.begin(), cow.draft.words.end());
  return words;
}

WarningLedger& ledger_of(const VisitBook& book, InCrush& cow) {
  return whole_turn(book, cow) ? cow.earlier->warnings : cow.warnings;
}

}  // namespace evenclaw
