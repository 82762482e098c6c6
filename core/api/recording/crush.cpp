#include "core/api/recording/crush.hpp"

#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/recording/answer_in_short.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/reader.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/api/recording/settled_turn.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

namespace {

/// "Yes" may have been meant as the answer to what was asked.
Faults with_answers_offered(Faults faults, const Language& language) {
  if (faults.empty()) return faults;
  faults.front().remedy = "right as it was called: \"" +
                          std::string(language.say(TermKind::go_ahead)) + "\"; not so: \"" +
                          std::string(language.say(TermKind::correction)) +
                          ", ...\" with what holds.";
  return faults;
}

/// "2d" while more than one medicine waits for its withdrawal.
Faults with_longest_asked_for(Faults faults, InCrush& cow, const VisitBook& book,
                              std::string_view text) {
  const auto line =
      withdrawal_of_all(text, ledger_of(book, cow).unanswered(), book.language,
                        withdrawal_told(whole_turn(book, cow).value_or(cow.draft.turn)));
  if (!line || faults.empty()) return faults;
  faults.resize(1);
  faults.front().message = "It is asked of more than one medicine, and not clear of which that is.";
  faults.front().remedy = "The longest of all, for milk and meat: \"" + *line + "\".";
  return faults;
}

/// Of which nobody said yet what was given.
const Action* last_without_name(const Turn& turn) {
  const Action* last = nullptr;
  const auto look_at = [&](const Action& action) {
    const bool may_have_one = facts_of(action.kind).said_as == TermKind::product_act;
    if (may_have_one && action.product.empty()) last = &action;
  };
  for (const FootCall& call : turn.feet) {
    for (const Action& action : call.actions) look_at(action);
  }
  for (const Action& action : turn.actions) look_at(action);
  return last;
}

/// "Painfree" while it is asked with what she was injected.
Faults with_medicine_offered(Faults faults, const InCrush& cow, const VisitBook& book,
                             std::string_view text) {
  const Action* act = last_without_name(cow.draft.turn);
  const bool starts_unknown =
      !faults.empty() && faults.front().column == 1 && faults.front().slug == "call-not-understood";
  if (act == nullptr || !starts_unknown) return faults;
  const std::string line = std::string(book.language.say(TermKind::product_act, act->kind)) + ' ' +
                           std::string(book.language.say(TermKind::with)) + ' ' +
                           std::string(trimmed(text));
  const auto said = read_in_herd(book, line, after_let_out(book));
  if (!said || said->clauses.size() != 1) return faults;
  faults.resize(1);
  faults.front().remedy = "If that was given: \"" + line + "\".";
  return faults;
}

/// "Dry cows" by itself.
Faults with_heading_offered(Faults faults, std::string_view text) {
  if (faults.empty()) return faults;
  const std::string said(trimmed(text));
  faults.front().remedy =
      "nobody is named: as a heading say \"# " + said + "\"; to count them say how many before it";
  return faults;
}

}  // namespace

std::string cow_in_crush(const VisitBook& book, const Crush& crush) {
  return crush.cow ? said_as(crush.cow->draft.turn.cow, book.language) : std::string();
}

bool stands_there(const VisitBook& book, const Crush& crush, const CowSaid& cow) {
  if (!crush.cow || !same_said(crush.cow->draft.turn.cow, cow)) return false;
  return cow.known == CowKnown::numbered || read_in(cow) || !looks_finished(book, *crush.cow);
}

void forget_answers_about_her(VisitBook& book, const Crush& crush) {
  book.answers.forget_of(cow_in_crush(book, crush), crush.cow->first_answer);
}

void take_out(VisitBook& book, Crush& crush) {
  forget_answers_about_her(book, crush);
  crush.clear();
}

void refuse(VisitBook& book, Crush& crush, std::string_view text, const Faults& refused) {
  book.last_line.refused = trimmed(text);
  const bool is_asked = crush.cow && !ledger_of(book, *crush.cow).unanswered().empty();
  const bool may_answer = is_asked && is_an_aside(text, book.language);
  Faults faults = may_answer ? with_answers_offered(refused, book.language) : refused;
  if (is_asked) faults = with_longest_asked_for(std::move(faults), *crush.cow, book, text);
  if (is_asked) faults = with_medicine_offered(std::move(faults), *crush.cow, book, text);
  if (is_a_heading(text, book.language)) faults = with_heading_offered(std::move(faults), text);
  for (const Fault& fault : faults) {
    ReplyItem& item = book.answers.add(ReplyKind::refused, fault.message);
    item.slug = fault.slug;
    item.column = fault.column;
    item.token = fault.token.empty() ? shortened(text, 60) : fault.token;
    item.remedy = fault.remedy;
  }
}

}  // namespace evenclaw
