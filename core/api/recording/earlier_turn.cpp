// A cow that is called again in the same visit: what was asked about her is answered so.
#include <algorithm>
#include <utility>

#include "core/api/recording/end_reasons.hpp"
#include "core/api/recording/state.hpp"
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

}  // namespace

Result<std::optional<EarlierTurn>> RecordingState::left_open_earlier(const CowPast& past) {
  const RecordedTurn* open = nullptr;
  for (const TurnRow& row : past.same_visit) {
    const RecordedTurn* turn = book_.before.find(row.turn);
    if (turn != nullptr && something_is_open(past.rows, row.turn)) open = turn;
  }
  if (open == nullptr) return std::optional<EarlierTurn>();
  return as_it_was(*open);
}

/// An earlier turn and what was known of her before it.
Result<std::optional<EarlierTurn>> RecordingState::as_it_was(const RecordedTurn& turn) {
  auto past = past_of(book_, turn.body.cow, &turn);
  if (!past) return past.faults();
  EarlierTurn earlier{turn, *std::move(past), WarningLedger(turn.body.warnings, turn.body.words)};
  return std::optional(std::move(earlier));
}

/// She was recorded so before, as going on with an earlier turn.
Outcome RecordingState::stand_as_recorded(const RecordedTurn& recorded) {
  in_crush_->earlier.reset();
  const bool goes_on_with = recorded.supersedes && recorded.body.words != in_crush_->draft.words;
  const RecordedTurn* before = goes_on_with ? book_.before.find(*recorded.supersedes) : nullptr;
  if (before == nullptr) return Done{};
  auto earlier = as_it_was(*before);
  if (!earlier) return earlier.faults();
  in_crush_->earlier = *std::move(earlier);
  return Done{};
}

/// News of her changed what is known of her, and with it perhaps what is still open.
Outcome RecordingState::look_again_at_past() {
  auto past = past_of(book_, in_crush_->cow);
  if (!past) return past.faults();
  auto earlier = left_open_earlier(*past);
  if (!earlier) return earlier.faults();
  in_crush_->past = *std::move(past);
  in_crush_->earlier = *std::move(earlier);
  return Done{};
}

/// Where something stayed open in several calls of hers, this one goes on with the one it fits.
Outcome RecordingState::go_on_with_the_call_that_fits() {
  if (!in_crush_ || !in_crush_->earlier || whole_turn(*in_crush_)) return Done{};
  std::optional<EarlierTurn> last = in_crush_->earlier;
  for (const TurnRow& row : in_crush_->past.same_visit) {
    const RecordedTurn* turn = book_.before.find(row.turn);
    const bool is_last = turn == nullptr || turn->entry == last->turn.entry;
    if (is_last || !something_is_open(in_crush_->past.rows, row.turn)) continue;
    auto earlier = as_it_was(*turn);
    if (!earlier) return earlier.faults();
    in_crush_->earlier = *std::move(earlier);
    if (whole_turn(*in_crush_)) return Done{};
  }
  in_crush_->earlier = std::move(last);
  return Done{};
}

/// "111 or 117" once more, where one cow was called so at this visit and something of her was left
/// open: it is she, unless she is called in a way that contradicts it. Nothing when she is another.
Result<std::optional<CowId>> RecordingState::left_in_doubt(const CowSaid& cow) {
  if (cow.known != CowKnown::doubtful) return std::optional<CowId>();
  const std::vector<const RecordedTurn*> turns = book_.before.turns_called(cow);
  if (turns.size() != 1) return std::optional<CowId>();
  const CowId same = turns.front()->body.cow;
  auto past = past_of(book_, same);
  if (!past) return past.faults();
  const auto open = left_open_earlier(*past);
  if (!open) return open.faults();
  return *open ? std::optional(same) : std::nullopt;
}

/// What both calls make together; nothing when there was no other, or when they contradict.
std::optional<Turn> RecordingState::whole_turn(const InCrush& cow) const {
  if (!cow.earlier || repeats(cow)) return std::nullopt;
  const Turn& before = cow.earlier->turn.body.turn;
  std::optional<Turn> whole = gone_on(before, as_settled(cow));
  if (whole) tell_reasons_once(*whole);
  // What the list did not have at the first call it may have now.
  if (whole) whole = with_medicines(*std::move(whole), book_.medicine, book_.visit.day);
  // Only who says that she is done says that nothing more is to be said again.
  if (!whole || cow.called_to_the_end) return whole;
  for (const std::string& reason : still_not_understood(before, cow.draft.words, book_.language)) {
    add_end_reason(*whole, reason);
  }
  return whole;
}

std::vector<std::string> RecordingState::whole_words(const InCrush& cow) const {
  std::vector<std::string> words;
  if (whole_turn(cow)) words = cow.earlier->turn.body.words;
  words.insert(words.end(), cow.draft.words.begin(), cow.draft.words.end());
  return words;
}

WarningLedger& RecordingState::warnings() {
  return whole_turn(*in_crush_) ? in_crush_->earlier->warnings : in_crush_->warnings;
}

}  // namespace evenclaw
