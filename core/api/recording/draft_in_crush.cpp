#include "core/api/recording/draft_in_crush.hpp"

#include <cstddef>
#include <utility>
#include <variant>

#include "core/api/cow_names.hpp"
#include "core/api/recording/call_of_her.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/her_past.hpp"
#include "core/api/recording/near_cows.hpp"

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
  const auto plain = plain_line(*line, cow.draft, {cow.past.rows, book.visit.visit, book.visit.day},
                                book.language);
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

}  // namespace

std::string draft_text(const VisitBook& book, const Crush& crush) {
  if (!crush.cow) return {};
  KeptDraft kept;
  kept.herd = book.visit.herd;
  kept.visit = book.visit.visit;
  kept.cow = crush.cow->cow;
  kept.said = crush.cow->draft.turn.cow;
  kept.caller = book.by.caller;
  kept.writer = book.by.writer;
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
  if (!book.last_line.refused.empty()) kept.just_refused = book.last_line.refused;
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

}  // namespace evenclaw
