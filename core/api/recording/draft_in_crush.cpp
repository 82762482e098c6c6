#include "core/api/recording/draft_in_crush.hpp"

#include <cstddef>
#include <utility>
#include <variant>

#include "core/api/cow_names.hpp"
#include "core/api/recording/call_of_her.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/end_reasons.hpp"
#include "core/api/recording/her_past.hpp"
#include "core/api/recording/near_cows.hpp"
#include "core/api/recording/refused_of_her.hpp"
#include "core/api/recording/settled_turn.hpp"

namespace evenclaw {

namespace {

/// A line of a half-entered turn, as it was taken before the recording broke off.
void read_again(const VisitBook& book, InCrush& cow, const std::string& text) {
  const auto line = read_in_herd(book, text, {book.visit.day, true, 0});
  cow.draft.words.push_back(text);
  const RefusedLine unread(text, cow.draft.feet_named, book.language);
  if (!line) {
    // Another version of the program took it; the words stay and the turn is asked about.
    cow.refused.push_back(unread);
    return;
  }
  const auto plain = plain_line_of(book, *line, cow.draft, cow.past);
  if (!plain) {
    cow.refused.push_back(unread);
    return;
  }
  cow.fine_before_named.add(plain->unnamed);
  for (const Clause& clause : plain->line.clauses) {
    const auto* said = std::get_if<TurnClause>(&clause);
    const auto* right = said == nullptr ? nullptr : std::get_if<CowCorrected>(said);
    const auto* named = std::get_if<CowNamed>(&clause);
    const bool is_other = named != nullptr && !same_said(cow.draft.turn.cow, named->cow);
    if (is_other) cow.draft.turn.cow = named->cow;
    if (right != nullptr) cow.draft.turn.cow = right->cow;
    if (right != nullptr || named != nullptr) cow.named_in_refused = false;
    // The draft began with the number she has now.
    if (said == nullptr || right != nullptr) continue;
    const Outcome added = add_to(book, cow, *said);
    if (!added) cow.refused.push_back(unread);
  }
}

/// True when anything the next line could be meant for was done before it.
bool keep_last_line(KeptDraft& kept, const VisitBook& book, const TurnsLetOut& turns) {
  kept.caller = book.by.caller;
  kept.writer = book.by.writer;
  const LastLine& last = book.last_line;
  if (!last.refused.empty()) kept.just_refused = last.refused;
  if (!last.lacks_foot.empty()) kept.lacks_foot = last.lacks_foot;
  kept.let_out = last.let_out;
  if (!last.whose.empty()) kept.whose = last.whose;
  kept.counted = last.counted;
  kept.news_of = last.told_of;
  kept.last_turn = turns.last().turn;
  if (kept.last_turn) kept.registered = turns.number_given_with(*kept.last_turn);
  return kept.last_turn || kept.just_refused || kept.counted || !kept.news_of.empty();
}

}  // namespace

std::string draft_text(const VisitBook& book, const Crush& crush, const TurnsLetOut& turns) {
  KeptDraft kept;
  kept.herd = book.visit.herd;
  kept.visit = book.visit.visit;
  const bool leaves_something = keep_last_line(kept, book, turns);
  kept.nobody = !crush.cow;
  if (kept.nobody && !leaves_something) return {};
  if (kept.nobody) return kept_text(kept);
  kept.cow = crush.cow->cow;
  kept.said = crush.cow->draft.turn.cow;
  kept.words = crush.cow->draft.words;
  for (const RefusedLine& line : crush.cow->refused) {
    kept.refused.push_back(line.text);
    kept.spoken_of.push_back(line.spoken_of);
    kept.said_before.push_back(static_cast<std::int32_t>(line.said_before));
  }
  kept.warnings =
      (whole_turn(book, *crush.cow) ? crush.cow->earlier->warnings : crush.cow->warnings).shown();
  kept.done_said = crush.cow->done_said;
  kept.called_first = crush.cow->called_first;
  if (!crush.held_back_by.empty()) kept.held_back_by = crush.held_back_by;
  if (!crush.cow->told_of.empty()) kept.told_of = crush.cow->told_of;
  const std::optional<EarlierTurn>& earlier = crush.cow->earlier;
  if (earlier && earlier->turn.body.cow != crush.cow->cow) kept.in_doubt = earlier->turn.entry;
  if (crush.cow->by.caller != book.by.caller) kept.called_by = crush.cow->by.caller;
  return kept_text(kept);
}

Result<InCrush> taken_up(const VisitBook& book, const KeptDraft& kept) {
  auto past = past_of(book, kept.cow);
  if (!past) return past.faults();
  InCrush cow;
  cow.cow = kept.cow;
  auto earlier = left_open_earlier(book, *past);
  if (!earlier) return earlier.faults();
  cow.past = *std::move(past);
  cow.earlier = *std::move(earlier);
  const RecordedTurn* in_doubt = kept.in_doubt ? book.before.find(*kept.in_doubt) : nullptr;
  if (in_doubt != nullptr) {
    const Outcome first = go_on_with(book, cow, *in_doubt);
    if (!first) return first.faults();
  }
  auto near = near_cows(book, kept.said, cow.past);
  if (!near) return near.faults();
  cow.near = *std::move(near);
  if (cow.earlier) cow.earlier->warnings = WarningLedger(kept.warnings);
  cow.warnings = WarningLedger(kept.warnings);
  cow.done_said = kept.done_said;
  cow.draft.turn.cow = kept.said;
  cow.named_in_refused = true;
  for (const std::string& line : kept.words) read_again(book, cow, line);
  for (std::size_t at = 0; at < kept.refused.size(); ++at) {
    // An older version kept the lines without their feet.
    const bool is_known = at < kept.spoken_of.size();
    cow.refused.emplace_back(kept.refused[at], is_known ? kept.spoken_of[at] : cow.draft.feet_named,
                             book.language);
    const bool is_counted = at < kept.said_before.size();
    cow.refused.back().said_before =
        is_counted ? static_cast<std::size_t>(kept.said_before[at]) : cow.draft.words.size();
  }
  cow.taken_up = cow.draft.words.size();
  cow.taken_anew.clear();  // shown before the recording broke off
  cow.called_first = kept.called_first;
  cow.told_of = kept.told_of.value_or("");
  cow.broke_off = true;
  cow.by = {kept.called_by.value_or(kept.caller), kept.writer};
  return cow;
}

Result<InCrush> called_anew(const VisitBook& book, const RecordedTurn& turn) {
  auto past = past_of(book, turn.body.cow, &turn);
  if (!past) return past.faults();
  auto near = near_cows(book, turn.body.turn.cow, *past);
  if (!near) return near.faults();
  InCrush cow;
  cow.cow = turn.body.cow;
  cow.past = *std::move(past);
  cow.near = *std::move(near);
  cow.draft.turn.cow = turn.body.turn.cow;
  cow.called_first = turn.body.called_first;
  cow.warnings = WarningLedger(turn.body.warnings, turn.body.words);
  cow.by = turn.by;
  return cow;
}

Result<std::optional<InCrush>> stood_there(const VisitBook& book, const RecordedTurn& turn) {
  auto called = called_anew(book, turn);
  if (!called) return called.faults();
  InCrush cow = *std::move(called);
  for (const std::string& line : turn.body.words) read_again(book, cow, line);
  cow.refused.clear();
  for (const std::string& line : lines_not_understood(turn.body.turn)) {
    keep_refused(cow, line, book.language);
  }
  cow.taken_anew.clear();
  cow.draft.turn.cow = turn.body.turn.cow;
  Turn now = as_settled(book, cow);
  now.end = turn.body.turn.end;
  now.end_reason = turn.body.turn.end_reason;
  if (now != turn.body.turn) return std::optional<InCrush>();
  cow.draft.turn.end = turn.body.turn.end;
  cow.draft.turn.end_reason = turn.body.turn.end_reason;
  return std::optional(std::move(cow));
}

}  // namespace evenclaw
