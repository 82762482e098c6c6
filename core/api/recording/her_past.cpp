#include "core/api/recording/her_past.hpp"

#include <algorithm>
#include <iterator>
#include <utility>
#include <variant>

#include "core/api/recording/amount_alone.hpp"
#include "core/api/recording/answer_in_short.hpp"
#include "core/api/recording/claw_asked.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/state.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/quoted_words.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

template <class T>
const T* said_as_a(const Clause& clause) {
  const auto* said = std::get_if<TurnClause>(&clause);
  return said == nullptr ? nullptr : std::get_if<T>(said);
}

bool is_of_a_fixture(const Clause& clause) {
  const auto* act = said_as_a<ActionSaid>(clause);
  return act != nullptr && fixture_said(act->action.kind).has_value();
}

bool is_perhaps_compared(const Clause& clause) {
  const auto* found = said_as_a<FindingSaid>(clause);
  return found != nullptr && !found->finding.words.empty();
}

bool names_feet(const Clause& clause) {
  return said_as_a<FeetNamed>(clause) != nullptr || said_as_a<OtherFootNamed>(clause) != nullptr ||
         said_as_a<BothFeetNamed>(clause) != nullptr;
}

/// Said of a foot, so that it would be unclear whether it is said of the one that was not named.
bool is_said_of_a_foot(const Clause& clause) {
  return said_as_a<FootStateSaid>(clause) != nullptr || said_as_a<FindingSaid>(clause) != nullptr ||
         said_as_a<TrimmedSaid>(clause) != nullptr || said_as_a<MeasureSaid>(clause) != nullptr;
}

/// Where the foot goes in a line: behind her number when she is named, else before all of it.
std::size_t place_of_the_foot(std::string_view text) {
  const std::size_t behind = text.find_first_not_of("0123456789");
  if (behind == 0 || behind == std::string_view::npos) return 0;
  const std::size_t at = text.find_first_not_of(" ,;", behind);
  return at == std::string_view::npos ? 0 : at;
}

std::string with_foot(std::string_view text, std::string_view foot) {
  const std::size_t at = place_of_the_foot(text);
  return std::string(text.substr(0, at)) + std::string(foot) + ' ' + std::string(text.substr(at));
}

/// The one foot of hers that was treated so with something nobody named.
std::optional<Foot> only_foot_unnamed(const Turn& turn, ActionKind kind) {
  FootSet feet;
  for (const FootCall& call : turn.feet) {
    const bool is_unnamed = std::any_of(
        call.actions.begin(), call.actions.end(),
        [kind](const Action& action) { return action.kind == kind && action.product.empty(); });
    if (is_unnamed) feet.add(call.foot);
  }
  for (const Foot foot : all_feet) {
    if (feet.count() == 1 && feet.has(foot)) return foot;
  }
  return std::nullopt;
}

/// "501 RH spray with bluemix" for "501 spray with bluemix", once she was sprayed on RH and with
/// what was asked. Nothing for any other line.
std::optional<std::string> with_foot_of_unnamed(std::string_view text, const Turn& turn,
                                                const LineContext& context,
                                                const Language& language) {
  if (read_line(text, context, language)) return std::nullopt;
  for (const FootCall& call : turn.feet) {
    const std::string line = with_foot(trimmed(text), language.say(TermKind::foot, call.foot));
    const auto read = read_line(line, context, language);
    if (!read || read->clauses.size() != 3) continue;
    const auto* named = std::get_if<CowNamed>(&read->clauses[0]);
    const auto* act = said_as_a<ActionSaid>(read->clauses[2]);
    const bool tells_with_what = named != nullptr && act != nullptr && !act->action.product.empty();
    if (tells_with_what && only_foot_unnamed(turn, act->action.kind) == call.foot) return line;
  }
  return std::nullopt;
}

/// The number in front of a line, in digits.
std::string number_in_front(std::string_view text) {
  const std::string_view said = trimmed(text);
  return std::string(said.substr(0, said.find_first_not_of("0123456789")));
}

/// "LH nicked her other back": named so, it would be the other one of that.
bool goes_on_with_the_other_foot(const Line& line) {
  const auto other = std::find_if(line.clauses.begin(), line.clauses.end(), [](const Clause& each) {
    return said_as_a<OtherFootNamed>(each) != nullptr;
  });
  return other != line.clauses.end() && other != line.clauses.begin() &&
         said_as_a<FeetNamed>(*std::prev(other)) != nullptr;
}

/// In a file given again nothing is asked any more: the line a short answer stood for when it was
/// recorded.
std::optional<std::string> taken_before(const RecordedBefore& before, const TurnDraft& so_far,
                                        std::string_view text, const Language& language) {
  const std::string tail = ' ' + claw_in_full(text, language).value_or(std::string(trimmed(text)));
  const std::size_t said = so_far.words.size();
  for (const RecordedTurn* turn : before.turns_called(so_far.turn.cow)) {
    const std::vector<std::string>& words = turn->body.words;
    const bool goes_on =
        words.size() > said && std::equal(so_far.words.begin(), so_far.words.end(), words.begin());
    if (goes_on && words[said].size() > tail.size() && words[said].ends_with(tail) &&
        is_meant_in_short(words[said], language)) {
      return words[said];
    }
  }
  return std::nullopt;
}

/// Walks a line beside her past.
class Reader {
 public:
  Reader(const Line& line, TurnDraft so_far, const KnownPast& past, const Language& language)
      : line_(line), draft_(std::move(so_far)), past_(past), language_(language) {}

  Result<PlainLine> read() {
    for (at_ = 0; at_ < line_.clauses.size(); ++at_) {
      const Clause& clause = line_.clauses[at_];
      const auto* known = said_as_a<KnownSaid>(clause);
      if (known == nullptr) {
        if (!takes_both_that_carry_it()) take(clause);
        continue;
      }
      auto plain = put_plainly(draft_, *known, past_, language_);
      if (!plain) return plain.faults();
      for (const TurnClause& each : plain->clauses) add(each);
      for (std::string& told : plain->learned) learned(std::move(told));
    }
    return std::move(out_);
  }

 private:
  void take(const Clause& clause) {
    const auto* act = said_as_a<ActionSaid>(clause);
    if (act == nullptr) {
      compare(clause);
      return add(clause);
    }
    ActionSaid there = *act;
    there.all = false;
    const FootSet feet = feet_that_carry_it(draft_, *act, past_);
    const bool is_clear =
        !feet.empty() && !more_is_said_of_a_foot() && !another_is_named(*act, feet);
    if (!is_clear) return add(TurnClause{there});
    take_where_it_is(there, feet);
  }

  /// "Both blocks off" of the two feet that carry one from before, while no foot was spoken of.
  bool takes_both_that_carry_it() {
    const bool is_both = said_as_a<BothFeetNamed>(line_.clauses[at_]) != nullptr;
    if (!is_both || !draft_.turn.feet.empty() || at_ + 1 == line_.clauses.size()) return false;
    const auto* act = said_as_a<ActionSaid>(line_.clauses[at_ + 1]);
    if (act == nullptr) return false;
    ActionSaid there = *act;
    there.all = true;
    const FootSet feet = feet_that_carry_it(draft_, there, past_);
    if (feet.count() != 2) return false;
    ++at_;
    if (more_is_said_of_a_foot() || another_is_named(*act, feet)) {
      --at_;
      return false;
    }
    there.all = false;
    take_where_it_is(there, feet);
    return true;
  }

  void take_where_it_is(const ActionSaid& act, const FootSet& feet) {
    const Fixture fixture = fixture_said(act.action.kind)->fixture;
    for (const Foot foot : all_feet) {
      if (!feet.has(foot)) continue;
      learned(told_of_fixture(past_, foot, fixture, language_));
      if (find_foot(draft_.turn, foot) == nullptr) out_.unnamed.add(FootSet{foot});
    }
    add(TurnClause{FeetNamed{feet}});
    add(TurnClause{act});
    if (nothing_is_found_behind()) take_nothing_found(feet);
    while (at_ + 1 < line_.clauses.size() && said_as_a<NoteSaid>(line_.clauses[at_ + 1])) {
      add(line_.clauses[++at_]);
    }
    add(TurnClause{FeetNamed{}});
  }

  /// "Wrap off; nothing found" may be of that foot or of all of today's: it holds of that one.
  void take_nothing_found(const FootSet& feet) {
    add(line_.clauses[++at_]);
    const bool says_rest_fine =
        std::any_of(line_.clauses.begin(), line_.clauses.end(),
                    [](const Clause& each) { return said_as_a<RestFineSaid>(each) != nullptr; });
    if (says_rest_fine) return;
    std::string where;
    for (const Foot foot : all_feet) {
      if (!feet.has(foot)) continue;
      where += (where.empty() ? "" : ", ") + std::string(language_.say(TermKind::foot, foot));
    }
    learned(with_quoted_words("taken: " + where + " {nothing found}; of the others say {rest fine}",
                              language_));
  }

  [[nodiscard]] bool nothing_is_found_behind() const {
    if (at_ + 1 >= line_.clauses.size()) return false;
    const auto* said = said_as_a<FootStateSaid>(line_.clauses[at_ + 1]);
    return said != nullptr && said->state == FootState::nothing_found;
  }

  [[nodiscard]] bool more_is_said_of_a_foot() const {
    const std::size_t first = at_ + (nothing_is_found_behind() ? 2 : 1);
    for (std::size_t next = first; next < line_.clauses.size(); ++next) {
      if (names_feet(line_.clauses[next])) return false;
      if (is_said_of_a_foot(line_.clauses[next])) return true;
    }
    return false;
  }

  /// "Wrap off; LH DD", where RH carries one: it may be of either. In "wrap off, LH block gone" the
  /// foot is of the block.
  [[nodiscard]] bool another_is_named(const ActionSaid& act, const FootSet& feet) const {
    for (std::size_t next = at_ + 1; next < line_.clauses.size(); ++next) {
      const auto* named = said_as_a<FeetNamed>(line_.clauses[next]);
      if (named == nullptr || is_of_the_other_fixture(act, next + 1)) continue;
      return std::none_of(std::begin(all_feet), std::end(all_feet),
                          [&](Foot foot) { return feet.has(foot) && named->feet.has(foot); });
    }
    return false;
  }

  [[nodiscard]] bool is_of_the_other_fixture(const ActionSaid& act, std::size_t at) const {
    const auto* next =
        at < line_.clauses.size() ? said_as_a<ActionSaid>(line_.clauses[at]) : nullptr;
    const auto said = next == nullptr ? std::nullopt : fixture_said(next->action.kind);
    return said && said->fixture != fixture_said(act.action.kind)->fixture;
  }

  void compare(const Clause& clause) {
    const auto* found = said_as_a<FindingSaid>(clause);
    if (found == nullptr) return;
    if (!holds_phrase(found->finding.words, TermKind::compared, 0, language_)) return;
    for (const Foot foot : all_feet) {
      if (!draft_.feet_named.has(foot)) continue;
      learned(told_of_last(past_, foot, found->finding, language_));
    }
  }

  void add(const Clause& clause) {
    const auto* said = std::get_if<TurnClause>(&clause);
    // What cannot be added is refused when the line is taken.
    if (said != nullptr) (void)add_clause(draft_, *said);
    out_.line.clauses.push_back(clause);
  }

  void learned(std::string told) {
    std::vector<std::string>& all = out_.learned;
    const bool is_new = std::find(all.begin(), all.end(), told) == all.end();
    if (!told.empty() && is_new) all.push_back(std::move(told));
  }

  const Line& line_;
  TurnDraft draft_;
  const KnownPast& past_;
  const Language& language_;
  std::size_t at_ = 0;
  PlainLine out_;
};

struct PastByName {
  Rows rows;
  std::string of;  // of whom else, and from when; "" when it is her own
};

Result<PastByName> past_by_name(const VisitBook& book, const CowSaid& cow, const CowPast& own) {
  PastByName past{own.rows, {}};
  const bool is_described = cow.known == CowKnown::unnumbered && !cow.looks.empty();
  const auto so_called = is_described && own.rows.turns.empty() ? book.finder.called(cow.looks)
                                                                : std::optional<CowId>();
  if (!so_called) return past;
  auto other = past_of(book, *so_called);
  if (!other) return other.faults();
  if (other->rows.turns.empty()) return past;
  past.of = "as found on the one called so on " + spoken(other->rows.turns.back().day);
  past.rows = std::move(other->rows);
  past.rows.on_feet = own.rows.on_feet;
  past.rows.tasks = own.rows.tasks;
  return past;
}

}  // namespace

bool leans_on_her_past(const Line& line) {
  return std::any_of(line.clauses.begin(), line.clauses.end(), [](const Clause& clause) {
    return said_as_a<KnownSaid>(clause) != nullptr || is_of_a_fixture(clause) ||
           is_perhaps_compared(clause);
  });
}

Result<PlainLine> plain_line(const Line& line, TurnDraft so_far, const KnownPast& past,
                             const Language& language) {
  return Reader(line, std::move(so_far), past, language).read();
}

Result<PlainLine> plain_line_of(const VisitBook& book, const Line& line, TurnDraft so_far,
                                const CowPast& own) {
  const CowSaid cow = so_far.turn.cow;
  const auto past = past_by_name(book, cow, own);
  if (!past) return past.faults();
  auto plain = plain_line(line, std::move(so_far), {past->rows, book.visit.visit, book.visit.day},
                          book.language);
  if (plain && !past->of.empty() && !plain->learned.empty()) plain->learned.push_back(past->of);
  return plain;
}

/// Beside the past of the cow it names, else of her who stands in the crush.
Result<PlainLine> RecordingState::beside_her_past(Line line) {
  if (!leans_on_her_past(line)) return PlainLine{std::move(line), {}, {}};
  const auto* named = std::get_if<CowNamed>(&line.clauses.front());
  const bool is_another = named != nullptr && !goes_on(named->cow);
  if (!is_another && !crush_.cow) return PlainLine{std::move(line), {}, {}};
  if (!is_another) return plain_line_of(book_, line, crush_.cow->draft, crush_.cow->past);
  const auto past = past_of(book_, book_.finder.find(named->cow).cow);
  if (!past) return past.faults();
  TurnDraft so_far;
  if (is_certain_now(named->cow)) so_far = crush_.cow->draft;
  so_far.turn.cow = named->cow;
  return plain_line_of(book_, line, std::move(so_far), *past);
}

/// What lacks only its foot is asked about once, and the foot alone is the answer.
Faults RecordingState::await_foot(std::string_view text, Faults faults) {
  if (!book_.typed) return faults;
  const std::string_view said = trimmed(text);
  for (const Foot foot : all_feet) {
    const auto line =
        read_in_herd(book_, with_foot(said, book_.language.say(TermKind::foot, foot)), context());
    if (!line) continue;
    const auto plain = beside_her_past(*line);
    if (!plain || !not_applicable(plain->line).empty()) continue;
    if (goes_on_with_the_other_foot(*line)) return faults;
    book_.last_line.lacks_foot = said;
    faults.resize(1);
    break;
  }
  return faults;
}

namespace {

/// What answers a question about her who stands there in short, as the line it stands for.
std::optional<std::string> answered_of_her(const VisitBook& book, InCrush& cow,
                                           std::string_view text) {
  const TurnDraft& so_far = cow.draft;
  if (!book.typed) {
    const auto before = taken_before(book.before, so_far, text, book.language);
    if (before) return before;
  }
  const std::optional<Turn> whole = whole_turn(book, cow);
  const MilkAndMeat told = withdrawal_told(whole ? *whole : so_far.turn);
  const std::vector<Warning> open = ledger_of(book, cow).unanswered();
  auto answer = answer_in_short(text, open, book.language, told);
  const OpenQuestions questions{open, book.last_line.asked};
  if (!answer) answer = answer_which_claw(text, questions, so_far, book.language);
  if (!answer && book.typed) answer = correction_to_claw(text, questions, book.language);
  if (!answer && book.typed) answer = score_in_short(text, cow.refused, book.language);
  const bool is_behind_it =
      cow.refused.empty() || cow.refused.back().said_before < so_far.words.size();
  if (!answer && is_behind_it) answer = off_of_the_last(text, so_far, book.language);
  return answer;
}

}  // namespace

/// "LH", right after a line that lacked the foot: that line with it. Or what answers a question
/// about her in short, as the line it stands for. Nothing for any other line.
std::optional<std::string> RecordingState::answer_with_foot(std::string_view text) {
  const std::string asked = std::exchange(book_.last_line.lacks_foot, {});
  if (crush_.cow) {
    const auto answer = answered_of_her(book_, *crush_.cow, text);
    if (answer) return answer;
  }
  const std::string number = number_in_front(text);
  const auto cow = number.empty() ? std::nullopt : book_.finder.carrier(number);
  const RecordedTurn* last = cow ? book_.before.last_of(*cow) : nullptr;
  if (last != nullptr) {
    const auto of_foot = with_foot_of_unnamed(text, last->body.turn, context(), book_.language);
    if (of_foot) return of_foot;
  }
  if (asked.empty() || !book_.typed) return std::nullopt;
  const auto line = read_in_herd(book_, text, context());
  if (!line || line->clauses.size() != 1) return std::nullopt;
  const auto* named = said_as_a<FeetNamed>(line->clauses.front());
  if (named == nullptr || named->feet.count() != 1) return std::nullopt;
  return with_foot(asked, trimmed(text));
}

}  // namespace evenclaw
