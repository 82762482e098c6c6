// A cow that was let out earlier in this visit is mended by her number and a correction. She does
// not come back into the crush for it: whoever stands there stays.
#include <algorithm>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/recording/late_mending.hpp"
#include "core/api/recording/said_again.hpp"
#include "core/api/recording/state.hpp"
#include "core/base/text.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

/// A turn of hers and one way to mend it.
struct Choice {
  const RecordedTurn* turn;
  WayToMend way;
};

std::string on_record(const Turn& turn, const Language& language) {
  std::string words;
  for (const std::string& line : print_turn(turn, language)) {
    words += (words.empty() ? "" : " / ") + line;
  }
  return words;
}

Fault not_here(const std::string& number) {
  return {.slug = "call-impossible",
          .message = number +
                     " was not in the crush at this visit, so nothing of hers is there to "
                     "mend.",
          .remedy = "Say the number that is meant; or call her: " + number +
                    ", the foot and what was found."};
}

Fault fits_nothing(const std::string& number, const Turn& turn, const Language& language) {
  return {.slug = "call-impossible",
          .message = "That mends nothing that was called of " + number + ".",
          .remedy = "On record: " + on_record(turn, language) + "."};
}

/// "412 LH no, chronic" of "412 no, chronic".
std::string with_foot(std::string_view text, const std::string& foot) {
  const std::string_view said = trimmed(text);
  const std::size_t end = std::min(said.find_first_not_of("0123456789"), said.size());
  return std::string(said.substr(0, end)) + " " + foot + std::string(said.substr(end));
}

Fault could_be_several(const std::string& number, const std::vector<Choice>& choices,
                       std::string_view text) {
  std::vector<std::string> feet;
  for (const Choice& choice : choices) {
    const std::string foot =
        choice.way.foot ? std::string(word_of(*choice.way.foot)) : std::string("the whole cow");
    if (std::find(feet.begin(), feet.end(), foot) == feet.end()) feet.push_back(foot);
  }
  if (feet.size() < choices.size()) {
    return {.slug = "call-impossible",
            .message = number +
                       " was called twice at this visit, and it is not clear which call "
                       "is meant.",
            .remedy = "Both are kept; say which holds when the visit is ended."};
  }
  std::string all;
  for (const std::string& foot : feet) all += (all.empty() ? "" : " or ") + foot;
  return {.slug = "call-impossible",
          .message = "Of " + number + " that could mean " + all + ".",
          .remedy = "Say the foot behind her number: " + with_foot(text, feet.front()) + "."};
}

/// The feet "rest fine" had filled, so that it fills no more of them than it did.
FootSet filled_then(const Turn& turn, const FootSet& todays_feet) {
  FootSet feet;
  for (const FootCall& call : turn.feet) {
    const bool is_filled = call.state == FootState::nothing_found || todays_feet.has(call.foot);
    if (is_filled) feet.add(call.foot);
  }
  return feet;
}

}  // namespace

/// Her number stood in a line nobody could read and this one says it again: she was not in the
/// crush, only spoken of.
void RecordingState::drop_only_spoken_of(std::string_view text) {
  if (!in_crush_ || !in_crush_->named_in_refused || !in_crush_->draft.words.empty()) return;
  const bool all_said_again = std::all_of(
      in_crush_->refused.begin(), in_crush_->refused.end(), [&](const RefusedLine& refused) {
        return is_said_again(refused.text, trimmed(text), *language_);
      });
  if (!all_said_again) return;
  forget_answers_about_her();
  in_crush_.reset();
  held_back_by_.clear();
}

/// Kept for the end of the visit: somebody's record was to be mended and is not.
Outcome RecordingState::refuse_mending(const std::string& number, Fault fault,
                                       std::string_view text) {
  const std::string asked = fault.message + " What holds?";
  refuse(text, {std::move(fault)});
  return keep_as_unread({number, std::string(trimmed(text))}, asked);
}

Result<bool> RecordingState::mended_later(const Line& line, std::string_view text) {
  const std::optional<LateMending> mending = late_mending(line);
  if (!mending || goes_on(mending->cow)) return false;
  const std::string number = plain_number(mending->cow.number);
  if (const RecordedTurn* done = typed_ ? nullptr : before_.mended(mending->cow, trimmed(text))) {
    ReplyItem& item = answer(ReplyKind::there_already, "");
    item.cow = number;
    item.entry = done->entry;
    if (!in_crush_) last_turn_ = done->entry;
    return true;
  }
  const std::vector<const RecordedTurn*> turns = before_.turns_called(mending->cow);
  std::vector<Choice> choices;
  for (const RecordedTurn* turn : turns) {
    for (WayToMend& way : ways_to_mend(turn->body.turn, *mending)) {
      choices.push_back({turn, std::move(way)});
    }
  }
  if (choices.empty() && is_a_call_of_its_own(*mending)) return false;
  Outcome taken = Done{};
  if (choices.size() == 1) {
    drop_only_spoken_of(text);
    taken = settle_news_said_again(text);
    if (taken) {
      taken =
          record_mended_later(*choices.front().turn, std::move(choices.front().way.draft), text);
    }
  } else if (turns.empty()) {
    // She may be the next cow: she stands in the crush, as after any refused line that names one.
    taken = refused_line(text, {not_here(number)});
  } else if (choices.empty()) {
    taken = refuse_mending(number, fits_nothing(number, turns.back()->body.turn, *language_), text);
  } else {
    taken = refuse_mending(number, could_be_several(number, choices, text), text);
  }
  if (!taken) return taken.faults();
  return true;
}

/// She is put in the crush as she stood there, and out again when it is recorded.
Outcome RecordingState::record_mended_later(const RecordedTurn& wrong, TurnDraft draft,
                                            std::string_view text) {
  auto past = past_of(wrong.body.cow, &wrong);
  if (!past) return past.faults();
  auto near = near_cows(wrong.body.turn.cow, *past);
  if (!near) return near.faults();
  InCrush her;
  her.cow = wrong.body.cow;
  her.near = *std::move(near);
  her.past = *std::move(past);
  her.draft = std::move(draft);
  her.draft.words = wrong.body.words;
  her.draft.words.emplace_back(trimmed(text));
  her.called_first = wrong.body.called_first;
  her.warnings = WarningLedger(wrong.body.warnings);
  her.filled_then = filled_then(wrong.body.turn, visit_.todays_feet);
  her.by = {wrong.by.caller, by_.writer};
  her.first_answer = items_.size();
  const bool was_last = last_turn_ == wrong.entry;
  const std::optional<EntryId> last_turn = last_turn_;
  std::optional<LastOut> last_out = last_out_;
  const std::string held_back_by = held_back_by_;
  std::optional<InCrush> stands_there = std::exchange(in_crush_, std::move(her));
  const Outcome recorded = record_corrected(wrong, text);
  if (!recorded) return recorded;
  ReplyItem& item = answer(ReplyKind::told, "");
  const Turn& now = before_.find(*last_turn_)->body.turn;
  item.cow = said_as(now.cow, *language_);
  item.words = "now reads: " + on_record(now, *language_);
  was_let_out_ = false;
  if (!stands_there) return Done{};
  in_crush_ = std::move(stands_there);
  held_back_by_ = held_back_by;
  if (was_last) return Done{};
  last_turn_ = last_turn;
  last_out_ = std::move(last_out);
  return Done{};
}

}  // namespace evenclaw
