// One line: read whole or refused whole, then clause by clause.
#include <algorithm>
#include <iterator>
#include <optional>
#include <utility>
#include <variant>

#include "core/api/cow_names.hpp"
#include "core/api/recording/answer_in_short.hpp"
#include "core/api/recording/behind_news.hpp"
#include "core/api/recording/call_of_her.hpp"
#include "core/api/recording/called_before.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/foot_in_doubt.hpp"
#include "core/api/recording/held_back.hpp"
#include "core/api/recording/last_time_anew.hpp"
#include "core/api/recording/late_mending.hpp"
#include "core/api/recording/lifted_before.hpp"
#include "core/api/recording/near_cows.hpp"
#include "core/api/recording/new_one_off.hpp"
#include "core/api/recording/news_in_doubt.hpp"
#include "core/api/recording/open_questions.hpp"
#include "core/api/recording/reader.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/api/recording/refused_of_her.hpp"
#include "core/api/recording/settled_turn.hpp"
#include "core/api/recording/state.hpp"
#include "core/api/recording/told_of_one_out.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/free_text.hpp"
#include "core/trade/call_line/gone_on.hpp"
#include "core/trade/call_line/quoted_words.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

template <class... Cases>
struct Overloaded : Cases... {
  using Cases::operator()...;
};
template <class... Cases>
Overloaded(Cases...) -> Overloaded<Cases...>;

Fault no_cow_in_crush(int line_number) {
  return {.slug = "call-impossible",
          .message = "No cow is in the crush, so there is nobody this could be said of.",
          .line = line_number,
          .remedy = "Say her number first."};
}

/// `called` was let out last.
Fault whose_is_not_clear(const std::string& called) {
  return {.slug = "call-impossible",
          .message = "Something else was said since " + called +
                     " was let out, so it is not clear what was wrong.",
          .remedy = "Of " + called + ": say it again now. Else the number and what holds."};
}

bool is_correction(const Clause& clause) {
  const auto* said = std::get_if<TurnClause>(&clause);
  return said != nullptr && mends_or_takes_back(*said);
}

bool corrects_the_number(const Line& line) {
  if (line.clauses.size() != 1) return false;
  const auto* said = std::get_if<TurnClause>(&line.clauses.front());
  return said != nullptr && std::holds_alternative<CowCorrected>(*said);
}

/// "No, right hind", "LH no, chronic", without her number.
bool corrects_her_feet(const Line& line) {
  const bool is_named =
      !line.clauses.empty() && std::holds_alternative<CowNamed>(line.clauses.front());
  return !is_named && mending_of(CowSaid{}, line).has_value();
}

bool answers_only(const Line& line) {
  return !line.clauses.empty() &&
         std::all_of(line.clauses.begin(), line.clauses.end(), [](const Clause& clause) {
           return std::holds_alternative<GoAheadSaid>(clause);
         });
}

bool names_a_cow(const Line& line) {
  return std::any_of(line.clauses.begin(), line.clauses.end(),
                     [](const Clause& clause) { return std::holds_alternative<CowNamed>(clause); });
}

bool says_something_of_her(const Clause& clause) {
  return std::holds_alternative<TurnClause>(clause) || std::holds_alternative<GoAheadSaid>(clause);
}

/// An act that has no foot yet is pointed at by its own words.
Fault in_words_said(Fault fault, const TurnClause& said, bool no_foot, const Language& language) {
  const auto* act = std::get_if<ActionSaid>(&said);
  if (act != nullptr && no_foot) {
    const ActionKind kind = act->action.kind;
    fault.token = language.say(facts_of(kind).said_as, kind);
  }
  fault.message = with_quoted_words(fault.message, language);
  fault.remedy = with_quoted_words(fault.remedy, language);
  return fault;
}

/// "No, 421", "no, right hind" or "go ahead" and nothing else, said when she is out already.
bool corrects_last_turn(const VisitBook& book, const LastTurn& last, std::string_view text) {
  if (!last.turn) return false;
  const auto line = read_in_herd(book, text, after_let_out(book));
  if (!line) return false;
  const bool knows_her_feet = last.out && last.out->turn == *last.turn;
  return corrects_the_number(*line) || answers_only(*line) ||
         (knows_her_feet && corrects_her_feet(*line));
}

/// Of a correction it was asked whose it is: said once more it is of her who was let out last, and
/// any other one is asked about too. Nothing was asked when `asked` is empty.
bool is_that_once_more(const VisitBook& book, const std::string& asked, const Line& now) {
  if (asked.empty()) return true;
  const auto line = read_in_herd(book, asked, after_let_out(book));
  return line && line->clauses == now.clauses;
}

/// "Done" behind news, or said once more: nobody is in the crush, and nothing is lost by it.
bool ends_nothing(const VisitBook& book, std::string_view text) {
  const auto line = read_in_herd(book, text, after_let_out(book));
  return line && line->clauses.size() == 1 &&
         std::holds_alternative<TurnEnded>(line->clauses.front());
}

/// What speaks against a line, as long as nothing else does.
void add_first(Faults& faults, std::optional<Fault> why) {
  if (why && faults.empty()) faults.push_back(*std::move(why));
}

}  // namespace

Outcome RecordingState::take_line(std::string_view text) {
  book_.answers.next_line();
  const std::optional<std::string> answered = answer_with_foot(text);
  this_line_ = {};
  if (!answered) return take_said(text);
  this_line_.learned = {"taken as: " + told_in_full(*answered, book_.language)};
  return take_said(*answered);
}

/// What is not understood without its foot may get it with the next line.
Outcome RecordingState::refuse_for(std::string_view text, const Faults& faults) {
  this_line_.learned.clear();
  return refused_line(text, await_foot(text, with_foot_offered(faults, text)));
}

/// What the line before did is known to this one, and forgotten for the next.
Outcome RecordingState::take_said(std::string_view text) {
  if (is_given_again(text)) return Done{};
  const LastLine before = std::exchange(book_.last_line, {});
  auto line = read_in_herd(book_, text, context());
  const auto in_between = said_in_between(line, text, before);
  if (!in_between) return in_between.faults();
  if (*in_between) return Done{};
  if (!line && !crush_.cow && corrects_last_turn(book_, turns_.last(), text)) {
    line = read_in_herd(book_, text, after_let_out(book_));
    if (!before.let_out || !is_that_once_more(book_, before.whose, *line))
      return ask_whose_was_wrong(*line, text);
  }
  if (!line && !crush_.cow && ends_nothing(book_, text)) {
    book_.last_line.keep_called(before);
    book_.answers.add(ReplyKind::mark, "no cow is in the crush");
    return Done{};
  }
  if (!line) {
    const auto sure = ask_of_news_in_doubt(book_, crush_, text, context());
    if (!sure) return sure.faults();
    if (*sure) return (*sure)->empty() ? Outcome(Done{}) : take_said(**sure);
    return refuse_for(text, line.faults());
  }
  return take_understood(*std::move(line), text);
}

/// Said again at once it is of her who was let out last; else it is asked when the visit closes.
Outcome RecordingState::ask_whose_was_wrong(const Line& line, std::string_view text) {
  const CowSaid& cow = book_.before.find(*turns_.last().turn)->body.turn.cow;
  const std::string called = said_as(cow, book_.language);
  Fault fault = whose_is_not_clear(called);
  fault.line = book_.answers.line();
  book_.last_line.let_out = true;
  book_.last_line.whose = trimmed(text);
  if (answers_only(line)) {
    refuse(book_, crush_, text, {std::move(fault)});
    return Done{};
  }
  const std::string number = only_number(cow);
  return refuse_mending(book_, crush_, number.empty() ? called : number, std::move(fault), text);
}

/// True when nothing is called by the line: it drops or puts right what was said, or says nothing.
Result<bool> RecordingState::said_in_between(const Result<Line>& line, std::string_view text,
                                             const LastLine& before) {
  auto taken = drops_what_was_refused(text, before.refused);
  if (!taken) return taken;
  if (*taken) {
    book_.last_line.keep_but_refused(before);
    return true;
  }
  taken = news_.is_mended_by(text, before.told_of);
  if (taken && !*taken) taken = line && line->clauses.empty();
  if (taken && !*taken) taken = counted_.is_mended_by(text, before.counted);
  if (taken && *taken) book_.last_line.keep_called(before);
  return taken;
}

Outcome RecordingState::take_understood(Line line, std::string_view text) {
  auto told = as_news_of_one_out(book_, crush_, std::move(line), text);
  if (!told) return told.faults();
  auto plain = beside_her_past(*std::move(told));
  if (!plain) return refuse_for(text, plain.faults());
  line = std::move(plain->line);
  const FootSet lifted = lifted_at_this_visit(book_, crush_, line);
  line = with_lifted_kept(std::move(line), text, lifted, book_.language);
  if (!tells_news(line)) news_.forget_mistaken_number();
  const auto counted = counted_together(line, text);
  if (!counted) return counted.faults();
  if (*counted) return Done{};
  const auto mended = mended_later(line, text);
  if (!mended) return mended.faults();
  if (*mended) return Done{};
  const auto asked = asked_who_walks(line, text);
  if (!asked) return asked.faults();
  if (*asked) return Done{};
  let_go_held_back(book_, crush_, line, text);
  if (crush_.cow) {
    answer_which_of_two(*crush_.cow, line, text, book_.language);
    if (may_be_of_her_told_of(*crush_.cow, line))
      return ask_of_which_of_two(book_, crush_, line, text);
    crush_.cow->told_of.clear();
  }
  this_line_.unnamed = plain->unnamed;
  this_line_.learned.insert(this_line_.learned.end(), plain->learned.begin(), plain->learned.end());
  return holds_back(crush_, line, text) ? take_held_back(line, text) : take_read(line, text);
}

/// A line before it that nobody could read may have named another cow.
Outcome RecordingState::take_held_back(const Line& line, std::string_view text) {
  const bool corrects = corrects_her_feet(line) || corrects_the_number(line);
  if (corrects || only_goes_on(line)) return refuse_held_back(book_, crush_, line, text);
  const Outcome stands = stand_for_whoever();
  if (!stands) return stands;
  if (book_.typed) return refuse_held_back(book_, crush_, line, text);
  book_.answers.add(ReplyKind::question, "Whose is this? A line before it was not understood.")
      .token = shortened(text, 60);
  return take_read(line, text);
}

/// A line that could be read and belongs to the cow it seems to belong to.
Outcome RecordingState::take_read(const Line& line, std::string_view text) {
  this_line_.calls_her_anew =
      is_called_anew(line) || names_the_next_without_name(book_, crush_, line, text);
  Faults faults = not_applicable(line);
  if (crush_.cow) add_first(faults, why_foot_is_in_doubt(*crush_.cow, line, text, book_.language));
  add_first(faults, scored_otherwise_before(book_, crush_, line, text));
  if (!this_line_.calls_her_anew) add_first(faults, new_one_off_in_crush(book_, crush_, line));
  if (!faults.empty() && takes_back_what_was_refused(line)) return Done{};
  if (!faults.empty()) return refuse_for(text, faults);
  if (!crush_.cow && corrects_her_feet(line)) return correct_last_feet(line, text);
  if (crush_.cow) crush_.cow->broke_off = false;
  // Behind a line that nobody could read, it may be that line said again.
  const bool is_clear = crush_.cow && crush_.cow->refused.empty() && !names_a_cow(line);
  const auto stood = crush_.cow ? std::optional(crush_.cow->draft.turn) : std::nullopt;
  const std::optional<Turn> before = is_clear ? stood : std::nullopt;
  const Outcome dropped = settle_news_said_again(book_, who_is_meant(crush_, turns_), text);
  if (!dropped) return dropped;
  const Outcome settled = settle_misread(line, text);
  if (!settled) return settled;
  for (const Clause& clause : line.clauses) {
    const Outcome applied = apply(clause, text);
    if (!applied) return applied;
  }
  const Outcome fits =
      crush_.cow ? go_on_with_the_call_that_fits(book_, *crush_.cow) : Outcome(Done{});
  if (!fits) return fits;
  if (before && crush_.cow) checks_.tell_found_where_fine(*before);
  if (crush_.cow) checks_.tell_times_said_anew(stood.value_or(Turn{}), line);
  if (!line.clauses.empty()) after_line(line, text);
  return Done{};
}

/// Tries the line on a copy of the draft, so that it is taken whole or not at all.
Faults RecordingState::not_applicable(const Line& line) const {
  TurnDraft trial = crush_.cow ? crush_.cow->draft : TurnDraft{};
  bool cow_open = crush_.cow.has_value();
  if (!cow_open && turns_.last().out && corrects_her_feet(line)) {
    trial = turns_.last().out->cow.draft;
    cow_open = true;
  }
  Faults faults;
  for (const Clause& clause : line.clauses) {
    if (const auto* named = std::get_if<CowNamed>(&clause)) {
      if (!goes_on(named->cow) && !is_certain_now(named->cow)) trial = {};
      trial.turn.cow = named->cow;
      cow_open = true;
    }
    if (std::holds_alternative<TurnEnded>(clause)) cow_open = false;
    const auto* said = std::get_if<TurnClause>(&clause);
    if (said == nullptr) continue;
    if (!cow_open && std::holds_alternative<CowCorrected>(*said) && turns_.last().turn) continue;
    if (!cow_open) {
      faults.push_back(no_cow_in_crush(book_.answers.line()));
      break;
    }
    const Outcome added = add_clause(trial, *said);
    if (added) continue;
    for (const Fault& fault : added.faults()) {
      faults.push_back(in_words_said(fault, *said, trial.feet_named.empty(), book_.language));
    }
  }
  return faults;
}

Outcome RecordingState::apply(const Clause& clause, std::string_view text) {
  const Outcome applied =
      std::visit(Overloaded{
                     [&](const CowNamed& named) { return name_cow(named.cow, text); },
                     [&](const TurnClause& said) { return say_of_her(said, text); },
                     [&](const TurnEnded&) { return done_said(text); },
                     [&](const TodaysFeetSaid& said) { return todays_feet(said.feet); },
                     [&](const CallerSaid& said) { return people_.caller(said.name); },
                     [&](const WriterSaid& said) { return people_.writer(said.name); },
                     [&](const GoAheadSaid&) { return go_ahead(text); },
                     [&](const NewsSaid& news) { return news_.tell(news, text); },
                     [&](const BatchSaid& said) { return record_batch(said, text); },
                 },
                 clause);
  if (applied && says_something_of_her(clause)) add_words(text);
  if (applied && std::holds_alternative<CowNamed>(clause)) add_words(text);
  return applied;
}

/// The cow in the crush has been called to the end, and this line calls her by her number once more
/// and contradicts that. It is a second call, as if she had been let out between.
bool RecordingState::is_called_anew(const Line& line) const {
  const auto* named = line.clauses.empty() ? nullptr : std::get_if<CowNamed>(&line.clauses.front());
  if (named == nullptr || !crush_.cow || named->cow.known != CowKnown::numbered) return false;
  if (!same_said(crush_.cow->draft.turn.cow, named->cow) || !looks_finished(book_, *crush_.cow))
    return false;
  TurnDraft again;
  again.turn.cow = named->cow;
  for (const Clause& clause : line.clauses) {
    const auto* said = std::get_if<TurnClause>(&clause);
    if (said == nullptr) continue;
    // A correction says itself that it contradicts.
    if (is_correction(clause) || !add_clause(again, *said)) return false;
  }
  const Turn before = as_settled(book_, *crush_.cow);
  return !gone_on(before, settled(again.turn, {})) ||
         tells_the_new_one_off(whole_turn(book_, *crush_.cow).value_or(before), again.turn);
}

/// The cow in the crush, unless this line begins a second call of her.
bool RecordingState::goes_on(const CowSaid& cow) const {
  return !this_line_.calls_her_anew && stands_there(book_, crush_, cow);
}

Outcome RecordingState::name_cow(const CowSaid& cow, std::string_view text) {
  if (goes_on(cow)) {
    crush_.cow->done_said = false;
    return Done{};
  }
  const bool is_next_nameless =
      std::exchange(this_line_.calls_her_anew, false) && cow.known == CowKnown::unnumbered;
  if (is_certain_now(cow)) return hold_against(cow);
  if (crush_.cow) {
    const Outcome out = let_out(LetOutBy::next_cow);
    if (!out) return out;
  }
  const Outcome opened = open_cow(cow);
  if (opened && is_next_nameless)
    checks_.show_mark("taken as the next one; the cow before her has no number either");
  if (opened) checks_.tell_who_was_read(text);
  return opened;
}

Outcome RecordingState::open_cow(const CowSaid& cow) {
  CowFound found = book_.finder.find(cow);
  const auto in_doubt = left_in_doubt(book_, cow);
  if (!in_doubt) return in_doubt.faults();
  if (*in_doubt) found.cow = **in_doubt;
  auto past = past_of(book_, found.cow);
  if (!past) return past.faults();
  auto earlier = left_open_earlier(book_, *past);
  if (!earlier) return earlier.faults();
  auto near = near_cows(book_, cow, *past);
  if (!near) return near.faults();
  InCrush next;
  next.cow = found.cow;
  next.near = *std::move(near);
  next.past = *std::move(past);
  next.earlier = *std::move(earlier);
  next.draft.turn.cow = cow;
  next.first_answer = book_.answers.count();
  next.by = book_.by;
  if (book_.typed && !book_.visit.from_paper) next.began = book_.ports.clock.now();
  crush_.cow = std::move(next);
  if (!found.question.empty()) {
    book_.answers.add(ReplyKind::question, found.question).cow = said_as(cow, book_.language);
  }
  if (*in_doubt) checks_.show_mark("taken for the one who was called so before");
  checks_.warn_of_her();
  return Done{};
}

Outcome RecordingState::say_of_her(const TurnClause& clause, std::string_view text) {
  const auto* other_cow = std::get_if<CowCorrected>(&clause);
  if (other_cow != nullptr && !crush_.cow) return correct_last_cow(other_cow->cow, text);
  const std::string called = cow_in_crush(book_, crush_);
  const Outcome added = add_to(book_, *crush_.cow, clause);
  if (!added) return added;
  crush_.cow->done_said = false;
  const auto* note = std::get_if<NoteSaid>(&clause);
  if (note != nullptr && may_tell_of_a_finding(note->words, book_.language)) {
    checks_.show_mark("kept as a note; what was found or done is said before \"" +
                      std::string(book_.language.say(TermKind::note)) +
                      "\" or on a line of its own");
  }
  if (const auto* ended = std::get_if<EndSaid>(&clause)) checks_.offer_to_warn(ended->reason);
  if (other_cow == nullptr) return Done{};
  const CowSaid right = crush_.cow->draft.turn.cow;
  const Outcome held = hold_against(right);
  if (held && book_.typed)
    checks_.show_mark("put right: all that was called of " + called + " is hers");
  return held;
}

/// The lines stay; the cow they are held against is another one now.
Outcome RecordingState::hold_against(const CowSaid& cow) {
  InCrush before = *std::move(crush_.cow);
  const CowSaid& called = before.draft.turn.cow;
  // "No, 231" keeps by itself what she was called first.
  const bool is_another = called.known == CowKnown::numbered && !same_said(called, cow);
  const bool was_in_doubt_twice = before.earlier &&
                                  before.earlier->turn.body.turn.cow.known == CowKnown::doubtful &&
                                  whole_turn(book_, before).has_value();
  if (is_another) before.called_first.push_back(recorded_as(called));
  const Outcome opened = open_cow(cow);
  if (!opened) return opened;
  TakenAnew anew = for_the_right_cow(
      std::move(before.draft), {before.past.rows, book_.visit.visit, book_.visit.day},
      {crush_.cow->past.rows, book_.visit.visit, book_.visit.day}, book_.language);
  crush_.cow->draft = std::move(anew.draft);
  crush_.cow->taken_anew = std::move(anew.told);
  crush_.cow->draft.turn.cow = cow;
  crush_.cow->called_first = std::move(before.called_first);
  crush_.cow->warnings = std::move(before.warnings);
  crush_.cow->began = before.began;
  crush_.cow->marks = std::move(before.marks);
  crush_.cow->fine_before_named = before.fine_before_named;
  crush_.cow->refused = std::move(before.refused);
  if (!was_in_doubt_twice) return Done{};
  // What was called of her under the doubtful number goes to the right one with the rest.
  return go_on_with(book_, *crush_.cow, before.earlier->turn);
}

Outcome RecordingState::go_ahead(std::string_view text) {
  if (!crush_.cow) return turns_.answer_last_turn(text);
  if (ledger_of(book_, *crush_.cow).go_ahead() > 0) return Done{};
  // "Rest fine; go ahead": what fires by the words before it is answered in the same breath.
  checks_.check_her(looks_finished(book_, *crush_.cow), text);
  if (ledger_of(book_, *crush_.cow).go_ahead() == 0)
    book_.answers.add(ReplyKind::mark, "there is nothing to answer");
  return Done{};
}

void RecordingState::add_words(std::string_view text) {
  if (!crush_.cow) return;
  std::vector<std::string>& words = crush_.cow->draft.words;
  crush_.cow->by = book_.by;
  // Several clauses of one line are one line as said.
  const std::string said(trimmed(text));
  if (std::exchange(this_line_.has_words_kept, true) && !words.empty()) return;
  words.push_back(said);
}

void RecordingState::after_line(const Line& line, std::string_view text) {
  if (!crush_.cow) return this_line_.learned.clear();
  crush_.cow->fine_before_named.add(std::exchange(this_line_.unnamed, {}));
  settle_refused(*crush_.cow, line, text, book_.language);
  checks_.show_learned(this_line_);
  checks_.show_marks();
  if (crush_.cow->done_said) return;
  const bool finished = looks_finished(book_, *crush_.cow);
  crush_.cow->plan_awaited = finished && !std::exchange(crush_.cow->was_finished, finished);
  checks_.check_her(finished, text);
}

}  // namespace evenclaw
