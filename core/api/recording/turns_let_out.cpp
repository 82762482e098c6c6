#include "core/api/recording/turns_let_out.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include "core/api/answered_by_news.hpp"
#include "core/api/cow_names.hpp"
#include "core/api/recording/end_reasons.hpp"
#include "core/api/recording/reader.hpp"
#include "core/api/recording/refused_feet.hpp"
#include "core/base/text.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// Feet that were only named in lines nobody could read: with these nothing is left of them. What
/// "rest fine" spoke of were the others.
FootSet drop_feet_of_refused(TurnRecorded& body, const Language& language) {
  FootSet named;
  for (const std::string& line : body.words) named.add(feet_in_refused(line, language).named);
  FootSet dropped;
  for (const FootCall& call : body.turn.feet) {
    FootCall bare;
    bare.foot = call.foot;
    if (call == bare && !named.has(call.foot)) dropped.add(call.foot);
  }
  std::erase_if(body.turn.feet, [&](const FootCall& call) { return dropped.has(call.foot); });
  return dropped;
}

}  // namespace

void TurnsLetOut::keep(InCrush cow, EntryId entry) {
  LastOut out{std::move(cow), entry};
  last_.out = std::move(out);
  book_.last_line.let_out = true;
}

std::optional<EntryId> TurnsLetOut::number_given_with(EntryId turn) const {
  const RecordedTurn* recorded = book_.before.find(turn);
  if (recorded == nullptr) return std::nullopt;
  const auto given = registered_.find(recorded->body.cow);
  return given == registered_.end() ? std::nullopt : std::optional(given->second);
}

void TurnsLetOut::take_up(EntryId turn, std::optional<InCrush> cow,
                          std::optional<EntryId> registered) {
  last_.turn = turn;
  if (cow && registered) registered_[cow->cow] = *registered;
  if (cow) last_.out = LastOut{*std::move(cow), turn};
}

Outcome TurnsLetOut::record(EntryId entry, TurnRecorded body, SaidBy by,
                            const RecordedTurn* superseded) {
  EntryFacts facts{entry, {}, by, {}};
  if (superseded != nullptr) {
    facts.supersedes = superseded->entry;
    facts.subjects = {superseded->body.cow.value, superseded->body.visit.value};
  }
  const Outcome registered = register_cow(body, superseded);
  if (!registered) return registered;
  const Outcome added = book_.journal.add(body, facts);
  if (!added) return added;
  book_.finder.now_known(body.cow, body.turn.cow);
  const bool is_of_last_out =
      superseded != nullptr && last_.out && last_.out->turn == superseded->entry;
  if (is_of_last_out) last_.out->turn = entry;
  last_.turn = entry;
  ReplyItem& item = book_.answers.add(ReplyKind::saved, "");
  item.cow = said_as(body.turn.cow, book_.language);
  item.entry = entry;
  book_.before.add({entry, facts.supersedes, by, std::move(body), false});
  return Done{};
}

/// A cow seen for the first time carries her number from this visit on, herd number or electronic.
/// When the turn before was held against a wrong number that nobody knew, that registration is
/// taken over.
Outcome TurnsLetOut::register_cow(const TurnRecorded& body, const RecordedTurn* superseded) {
  const CowSaid& said = body.turn.cow;
  const std::optional<std::string> electronic = read_in(said);
  const bool is_new_tag = electronic && !book_.finder.carrier_of_tag(*electronic);
  if (said.known != CowKnown::numbered && !is_new_tag) return Done{};
  EntryFacts facts{book_.journal.fresh_id(), {}, book_.by, {}};
  if (superseded != nullptr && superseded->body.cow != body.cow) {
    const auto wrong = registered_.find(superseded->body.cow);
    if (wrong != registered_.end() && book_.before.turns_of(superseded->body.cow) == 1) {
      facts.supersedes = wrong->second;
      facts.subjects = {superseded->body.cow.value};
      book_.finder.forget(superseded->body.cow);
      registered_.erase(wrong);
    }
  }
  if (!electronic && book_.finder.carries(body.cow, said.number) && !facts.supersedes)
    return Done{};
  registered_[body.cow] = facts.id;
  CowRegistered registered{body.cow, said.number, book_.visit.day};
  registered.electronic = electronic;
  return book_.journal.add(registered, facts);
}

Outcome TurnsLetOut::answer_last_turn(std::string_view text) {
  const RecordedTurn* last = last_.turn ? book_.before.find(*last_.turn) : nullptr;
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

Outcome TurnsLetOut::answer_by_news(CowId cow, const NewsSaid& news, std::string_view text) {
  const RecordedTurn* last = book_.before.last_of(cow);
  if (last == nullptr) return Done{};
  const RecordedTurn before = *last;
  TurnRecorded body = before.body;
  if (!answer_warnings(body.warnings, news, text)) return Done{};
  const std::optional<EntryId> last_turn = last_.turn;
  const EntryId entry = book_.journal.fresh_id();
  const SaidBy by{before.by.caller, book_.by.writer};
  const Outcome recorded = record(entry, std::move(body), by, &before);
  if (last_turn != before.entry) last_.turn = last_turn;
  return recorded;
}

Result<bool> TurnsLetOut::drop_of_all_let_out(const std::string& number, std::string_view text) {
  bool any = false;
  std::vector<RecordedTurn> turns;
  for (const RecordedTurn* turn : book_.before.turns_called_by(number)) turns.push_back(*turn);
  for (const RecordedTurn& turn : turns) {
    auto of_turn = drop_of_let_out(turn, text);
    if (!of_turn) return of_turn;
    any = any || *of_turn;
  }
  return any;
}

/// Of whom nothing is left it is asked whether she was there at all.
Result<bool> TurnsLetOut::drop_of_let_out(const RecordedTurn& turn, std::string_view text) {
  TurnRecorded body = turn.body;
  drop_not_understood(body.turn);
  if (body.turn == turn.body.turn) return false;
  const FootSet feet = drop_feet_of_refused(body, book_.language);
  if (!feet.empty()) {
    book_.answers.add(ReplyKind::mark, "nothing is on record of " + spoken(feet) + " now").cow =
        said_as(body.turn.cow, book_.language);
  }
  if (says_nothing(body.turn)) add_end_reason(body.turn, nothing_was_said);
  body.words.emplace_back(trimmed(text));
  const std::optional<EntryId> last_turn = last_.turn;
  const SaidBy by{turn.by.caller, book_.by.writer};
  const Outcome recorded = record(book_.journal.fresh_id(), std::move(body), by, &turn);
  if (!recorded) return recorded.faults();
  if (last_turn && *last_turn != turn.entry) last_.turn = last_turn;
  return true;
}

WhoIsMeant who_is_meant(const Crush& crush, const TurnsLetOut& turns) {
  const std::optional<LastOut>& out = turns.last().out;
  return {crush.cow ? &crush.cow->draft.turn.cow : nullptr,
          out ? &out->cow.draft.turn.cow : nullptr};
}

}  // namespace evenclaw
