// A cow that was let out earlier in this visit is mended by her number and a correction. She does
// not come back into the crush for it: whoever stands there stays.
#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

#include "core/api/cow_names.hpp"
#include "core/api/recording/draft_in_crush.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/held_back.hpp"
#include "core/api/recording/last_time_anew.hpp"
#include "core/api/recording/late_mending.hpp"
#include "core/api/recording/open_questions.hpp"
#include "core/api/recording/refused_of_her.hpp"
#include "core/api/recording/said_again.hpp"
#include "core/api/recording/state.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/quoted_words.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// A turn of hers and one way to mend it.
struct Choice {
  const RecordedTurn* turn;
  WayToMend way;
};

std::vector<Choice> choices_of(const std::vector<const RecordedTurn*>& turns,
                               const LateMending& mending) {
  std::vector<Choice> choices;
  for (const RecordedTurn* turn : turns) {
    for (WayToMend& way : ways_to_mend(turn->body.turn, mending)) {
      choices.push_back({turn, std::move(way)});
    }
  }
  return choices;
}

/// "412 no, 421".
struct NumberMended {
  CowSaid called;
  CowSaid right;
};

std::optional<NumberMended> number_mended(const Line& line) {
  if (line.clauses.size() != 2) return std::nullopt;
  const auto* named = std::get_if<CowNamed>(&line.clauses.front());
  const auto* said = std::get_if<TurnClause>(&line.clauses.back());
  const auto* right = said == nullptr ? nullptr : std::get_if<CowCorrected>(said);
  if (named == nullptr || right == nullptr) return std::nullopt;
  if (named->cow.known != CowKnown::numbered) return std::nullopt;
  return NumberMended{named->cow, right->cow};
}

Fault not_mended_so(const std::string& called, const std::string& right) {
  return {.slug = "call-impossible",
          .message = called + " was in the crush at this visit and is let out, so her number is " +
                     "not mended by word of mouth.",
          .remedy = "Call " + right + " with what was found of her, and take that back from " +
                    called + "; if " + right + " is in the crush now, say " + right + " alone."};
}

std::string given_the_number(const CowSaid& called, const std::string& right) {
  const std::string number = plain_number(called.number);
  return "If no other cow is " + number + ": evenclaw cow number " + number + " " + right +
         "; if " + right + " is in the crush now, say " + right + " alone.";
}

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

/// Words in quotes within words in quotes are told with one pair of them.
std::string with_single_quotes(std::string words) {
  for (const std::string_view doubled : {"\"\"\"", "\"\""}) {
    for (std::size_t at = words.find(doubled); at != std::string::npos; at = words.find(doubled)) {
      words.replace(at, doubled.size(), "\"");
    }
  }
  return words;
}

Fault fits_nothing(const std::string& number, const Turn& turn, const Language& language) {
  return {.slug = "call-impossible",
          .message = "That mends nothing that was called of " + number + ".",
          .remedy = "On record: " + with_single_quotes(on_record(turn, language)) + "."};
}

Fault in_language(Fault fault, const Language& language) {
  fault.message = with_quoted_words(fault.message, language);
  fault.remedy = with_quoted_words(fault.remedy, language);
  return fault;
}

/// "412 LH no, chronic" of "412 no, chronic"; "LH no, chronic" of "no, chronic".
std::string with_foot(std::string_view text, const std::string& foot) {
  const std::string_view said = trimmed(text);
  const std::size_t end = std::min(said.find_first_not_of("0123456789"), said.size());
  if (end == 0) return foot + " " + std::string(said);
  return std::string(said.substr(0, end)) + " " + foot + std::string(said.substr(end));
}

/// What stands behind "no,".
std::string_view behind_correction(std::string_view text, const Language& language) {
  const std::vector<Token> tokens = spoken_tokens(text, language);
  bool corrects = false;
  for (std::size_t at = 0; at < tokens.size();) {
    const Language::Match match = language.longest_match(tokens, at);
    if (match.phrase != nullptr && match.phrase->kind == TermKind::correction) {
      corrects = true;
    } else if (corrects && tokens[at].kind != TokenKind::comma) {
      return text.substr(tokens[at].offset);
    }
    at += std::max<std::size_t>(match.word_count, 1);
  }
  return text;
}

std::string told_of_act(const Choice& choice) {
  const std::string where =
      choice.way.foot ? ", " + std::string(spoken(*choice.way.foot)) : std::string();
  return offered_act(std::nullopt, choice.way.act->kind, choice.way.act->claw, english()) + where;
}

/// "410 no, 5d" when a wrap and a look were called with a time.
Fault could_be_several_times(const std::string& number, const std::vector<Choice>& choices,
                             std::string_view text, const Language& language) {
  std::string all;
  for (const Choice& choice : choices) all += (all.empty() ? "" : " or ") + told_of_act(choice);
  const WayToMend& first = choices.front().way;
  const bool comes_off = facts_of(first.act->kind).time == ActTime::comes_off;
  std::string act = offered_act(std::nullopt, first.act->kind, first.act->claw, language);
  if (comes_off) act += ' ' + std::string(language.say(TermKind::off));
  act += ' ' + std::string(behind_correction(trimmed(text), language));
  const std::string foot = first.foot ? std::string(word_of(*first.foot)) + ' ' : std::string();
  return {.slug = "call-impossible",
          .message = "Of " + number + " that could mean " + all + ".",
          .remedy = "Say which: " + number + ' ' + foot + offered_correction(act, language) + "."};
}

Fault could_be_several(const std::string& number, const std::vector<Choice>& choices,
                       std::string_view text, const Language& language) {
  const bool is_of_times = std::all_of(choices.begin(), choices.end(), [](const Choice& choice) {
    return choice.way.act.has_value();
  });
  const bool is_of_one_turn = std::all_of(choices.begin(), choices.end(), [&](const auto& choice) {
    return choice.turn == choices.front().turn;
  });
  if (is_of_times && is_of_one_turn) return could_be_several_times(number, choices, text, language);
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
  const bool is_numbered = trimmed(text).find_first_of("0123456789") == 0;
  const std::string where =
      is_numbered ? "Say the foot behind her number: " : "Say the foot first: ";
  std::string all;
  for (const std::string& foot : feet) all += (all.empty() ? "" : " or ") + foot;
  return {.slug = "call-impossible",
          .message = "Of " + number + " that could mean " + all + ".",
          .remedy = where + with_foot(text, feet.front()) + "."};
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

/// Her number stood in a line nobody could read and this one says it again: she was not in the
/// crush, only spoken of.
void drop_only_spoken_of(VisitBook& book, Crush& crush, std::string_view text) {
  if (!crush.cow || !crush.cow->named_in_refused || !crush.cow->draft.words.empty()) return;
  const bool all_said_again = std::all_of(
      crush.cow->refused.begin(), crush.cow->refused.end(), [&](const RefusedLine& refused) {
        return is_said_again(refused.text, trimmed(text), book.language);
      });
  if (!all_said_again) return;
  take_out(book, crush);
}

/// In a file given again it fitted several then; that one of them is mended since does not make it
/// the other one's.
bool was_refused_before(const VisitBook& book, const std::string& number, std::string_view text) {
  return !book.typed && book.before.was_unread(number, std::string(trimmed(text)));
}

}  // namespace

Result<bool> RecordingState::mended_later(const Line& line, std::string_view text) {
  const std::optional<LateMending> mending = late_mending(line);
  if (!mending || goes_on(mending->cow)) return mended_in_other_ways(line, text);
  const std::string number = plain_number(mending->cow.number);
  if (const RecordedTurn* done =
          book_.typed ? nullptr : book_.before.mended(mending->cow, trimmed(text))) {
    book_.answers.add_there_already(number, done->entry);
    if (!crush_.cow) turns_.now_last(done->entry);
    return true;
  }
  const std::vector<const RecordedTurn*> turns = book_.before.turns_called(mending->cow);
  std::vector<Choice> choices = choices_of(turns, *mending);
  if (choices.empty() && is_a_call_of_its_own(*mending)) return false;
  const bool is_doubtful = mending->cow.known == CowKnown::doubtful;
  if (turns.empty() && (is_doubtful || completes_only(*mending))) return false;
  Outcome taken = Done{};
  if (choices.size() == 1 && !was_refused_before(book_, number, text)) {
    drop_only_spoken_of(book_, crush_, text);
    taken = settle_news_said_again(book_, who_is_meant(crush_, turns_), text);
    if (taken) {
      taken =
          record_mended_later(*choices.front().turn, std::move(choices.front().way.draft), text);
    }
  } else if (turns.empty()) {
    // She may be the next cow: she stands in the crush, as after any refused line that names one.
    taken = refused_line(text, {not_here(number)});
  } else if (choices.empty()) {
    const Turn& called = turns.back()->body.turn;
    const std::optional<Fault> no_more = why_no_more(called, *mending);
    taken = refuse_mending(book_, crush_, number,
                           no_more ? in_language(*no_more, book_.language)
                                   : fits_nothing(number, called, book_.language),
                           text);
  } else {
    taken = refuse_mending(book_, crush_, number,
                           could_be_several(number, choices, text, book_.language), text);
  }
  if (!taken) return taken.faults();
  return true;
}

Result<bool> RecordingState::mended_in_other_ways(const Line& line, std::string_view text) {
  auto mended = number_mended_late(line, text);
  if (!mended || *mended) return mended;
  return mended_first_call(line, text);
}

/// "412 no, 421" of a cow that was let out: her turn would leave one cow for another, whose case,
/// wraps and tasks are different ones. That is asked; with 412 not seen here it is one call of 421.
Result<bool> RecordingState::number_mended_late(const Line& line, std::string_view text) {
  const std::optional<NumberMended> mended = number_mended(line);
  if (!mended || goes_on(mended->called)) return false;
  const std::vector<const RecordedTurn*> turns = book_.before.turns_called(mended->called);
  if (turns.empty()) return false;
  const std::string right = plain_number(mended->right.number);
  const std::vector<const RecordedTurn*> of_right = book_.before.turns_called(mended->right);
  const bool is_given_again =
      std::any_of(of_right.begin(), of_right.end(), [&](const RecordedTurn* turn) {
        return !turn->body.words.empty() && turn->body.words.front() == trimmed(text);
      });
  if (is_given_again) return false;
  Fault fault = not_mended_so(plain_number(mended->called.number), right);
  const bool was_last = !crush_.cow && turns_.last().turn == turns.back()->entry;
  if (was_last) {
    fault.remedy = "Say \"" + offered_correction(right, book_.language) + "\", without her number.";
    book_.last_line.let_out = true;
  } else {
    auto past = past_of(book_, turns.back()->body.cow);
    if (!past) return past.faults();
    const bool is_new = past->rows.turns.size() == past->same_visit.size();
    if (is_new && !book_.finder.carrier(right))
      fault.remedy = given_the_number(mended->called, right);
  }
  const Outcome refused =
      refuse_mending(book_, crush_, plain_number(mended->called.number), std::move(fault), text);
  if (!refused) return refused.faults();
  return true;
}

/// She stands in the crush once more, and what is corrected was called of her the first time. What
/// is taken back is taken back of both calls.
Result<bool> RecordingState::mended_first_call(const Line& line, std::string_view text) {
  if (!crush_.cow || holds_back(crush_, line, text)) return false;
  const CowSaid cow = crush_.cow->draft.turn.cow;
  const auto* named = line.clauses.empty() ? nullptr : std::get_if<CowNamed>(&line.clauses.front());
  if (cow.known != CowKnown::numbered || (named != nullptr && !goes_on(named->cow))) return false;
  std::optional<LateMending> mending = mending_of(cow, line);
  if (!mending) return false;
  const bool is_of_this_call = not_applicable(line).empty();
  if (is_of_this_call && !takes_back_only(*mending)) return false;
  if (mending->feet.empty()) mending->feet = crush_.cow->draft.feet_named;
  if (!book_.typed && !is_of_this_call && book_.before.mended(cow, trimmed(text)) != nullptr) {
    crush_.cow->mended_before = true;
    return true;
  }
  const std::vector<Choice> choices = choices_of(book_.before.turns_called(cow), *mending);
  if (choices.empty()) return false;
  const std::string number = plain_number(cow.number);
  if (choices.size() > 1 || was_refused_before(book_, number, text)) {
    const Outcome refused = refuse_mending(
        book_, crush_, number, could_be_several(number, choices, text, book_.language), text);
    if (!refused) return refused.faults();
    return true;
  }
  Outcome taken = settle_news_said_again(book_, who_is_meant(crush_, turns_), text);
  if (taken) taken = record_mended_later(*choices.front().turn, choices.front().way.draft, text);
  if (taken) taken = look_again_at_past(book_, *crush_.cow);
  if (!taken) return taken.faults();
  given_again(*crush_.cow, text, book_.language);
  if (!is_of_this_call) crush_.cow->mended_before = true;
  return !is_of_this_call;
}

/// She is put in the crush as she stood there, and out again when it is recorded.
Outcome RecordingState::record_mended_later(const RecordedTurn& wrong, TurnDraft draft,
                                            std::string_view text) {
  auto called = called_anew(book_, wrong);
  if (!called) return called.faults();
  InCrush her = *std::move(called);
  TurnDraft before;
  before.turn = wrong.body.turn;
  TakenAnew anew =
      for_the_right_foot(before, std::move(draft),
                         {her.past.rows, book_.visit.visit, book_.visit.day}, book_.language);
  her.draft = std::move(anew.draft);
  her.taken_anew = std::move(anew.told);
  her.draft.words = wrong.body.words;
  her.draft.words.emplace_back(trimmed(text));
  her.filled_then = filled_then(wrong.body.turn, book_.visit.todays_feet);
  her.by.writer = book_.by.writer;
  her.first_answer = book_.answers.count();
  const bool was_last = turns_.last().turn == wrong.entry;
  LastTurn last = turns_.last();
  const std::string held_back_by = crush_.held_back_by;
  std::optional<InCrush> stands_there = std::exchange(crush_.cow, std::move(her));
  const Outcome recorded = record_corrected(wrong, text);
  if (!recorded) return recorded;
  ReplyItem& item = book_.answers.add(ReplyKind::told, "");
  const Turn& now = book_.before.find(*turns_.last().turn)->body.turn;
  item.cow = said_as(now.cow, book_.language);
  item.words = "now reads: " + on_record(now, book_.language);
  book_.last_line.let_out = false;
  if (!stands_there) return Done{};
  crush_.cow = std::move(stands_there);
  crush_.held_back_by = held_back_by;
  if (was_last) return Done{};
  turns_.put_back(std::move(last));
  return Done{};
}

}  // namespace evenclaw
