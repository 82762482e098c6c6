#include "core/api/recording/told_of_one_out.hpp"

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/api/recording/settled_turn.hpp"
#include "core/api/recording/walks_by.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

/// "412 LH wrap off", of a wrap put on at this visit, once "412 wrap off" was asked about: the foot
/// was missing, and she does not come back into the crush for it.
bool answers_which_is_off(const VisitBook& book, const Crush& crush, const Line& line) {
  if (line.clauses.size() != 3) return false;
  const auto* named = std::get_if<CowNamed>(&line.clauses[0]);
  const auto* where = std::get_if<TurnClause>(&line.clauses[1]);
  const auto* what = std::get_if<TurnClause>(&line.clauses[2]);
  if (named == nullptr || where == nullptr || what == nullptr ||
      stands_there(book, crush, named->cow)) {
    return false;
  }
  const auto* feet = std::get_if<FeetNamed>(where);
  const auto* act = std::get_if<ActionSaid>(what);
  if (feet == nullptr || act == nullptr || named->cow.known != CowKnown::numbered) return false;
  const std::optional<FixtureSaid> off = fixture_said(act->action.kind);
  const std::optional<CowId> cow = book.finder.carrier(named->cow.number);
  if (!off || !is_off_after(off->step) || !cow || !book.before.was_asked_about(*cow)) return false;
  const RecordedTurn* last = book.before.last_of(*cow);
  return last != nullptr && std::any_of(last->body.turn.feet.begin(), last->body.turn.feet.end(),
                                        [&](const FootCall& call) {
                                          return feet->feet.has(call.foot) &&
                                                 speaks_of(call, off->fixture);
                                        });
}

/// In a file given again: "308 no, walks sound" took back that she is lame still.
bool stands_for_what_was_told(const VisitBook& book, CowId cow, const std::string& number) {
  const std::string sound = book.before.told_as(cow, News::walks_sound);
  return !book.typed && !sound.empty() && book.before.was_taken_back(plain_number(number), sound);
}

/// "308 not lame" of one who was told to be lame still, and who is not in the crush: that is told
/// of her, and asked about.
std::optional<NewsSaid> told_after_all(const VisitBook& book, const Crush& crush,
                                       const Line& line) {
  auto news = tells_that_she_walks_sound(line);
  if (!news || stands_there(book, crush, std::get<CowNamed>(line.clauses.front()).cow))
    return std::nullopt;
  const std::optional<CowId> cow = book.finder.carrier(news->number);
  const bool was_lame = cow && (!book.before.told_as(*cow, News::still_lame).empty() ||
                                stands_for_what_was_told(book, *cow, news->number));
  return was_lame ? news : std::nullopt;
}

/// The turn of another cow is not at its end, and of a cow of the herd is said what became of a
/// wrap or block that is known on her, and nothing else: she did not come into the crush for it.
Result<std::vector<NewsSaid>> told_of_another(const VisitBook& book, const Crush& crush,
                                              const Line& line) {
  const auto* named =
      line.clauses.size() < 2 ? nullptr : std::get_if<CowNamed>(&line.clauses.front());
  const bool is_another = named != nullptr && crush.cow && named->cow.known == CowKnown::numbered &&
                          !stands_there(book, crush, named->cow);
  const bool is_between = is_another && !looks_finished(book, *crush.cow) &&
                          !walked_by(book, *crush.cow, LetOutBy::next_cow);
  if (!is_between) return std::vector<NewsSaid>{};
  // Who stood there at this visit is called again.
  const std::optional<CowId> cow = book.finder.carrier(named->cow.number);
  if (!cow || book.before.last_of(*cow) != nullptr) return std::vector<NewsSaid>{};
  TurnDraft draft;
  draft.turn.cow = named->cow;
  for (const Clause& clause : std::span(line.clauses).subspan(1)) {
    const auto* said = std::get_if<TurnClause>(&clause);
    if (said == nullptr || !add_clause(draft, *said)) return std::vector<NewsSaid>{};
  }
  const auto past = past_of(book, *cow);
  if (!past) return past.faults();
  return only_fate_in(draft.turn, past->rows);
}

}  // namespace

Result<Line> as_news_of_one_out(const VisitBook& book, const Crush& crush, Line line,
                                std::string_view text) {
  if (answers_which_is_off(book, crush, line)) {
    const std::string lead(book.language.say(TermKind::news_lead));
    auto news = read_in_herd(book, lead + ' ' + std::string(text),
                             {book.visit.day, crush.cow.has_value(), book.answers.line()});
    if (news) return *std::move(news);
  }
  if (const auto news = told_after_all(book, crush, line)) line.clauses = {*news};
  const auto told = told_of_another(book, crush, line);
  if (!told) return told.faults();
  if (!told->empty()) line.clauses.assign(told->begin(), told->end());
  return line;
}

}  // namespace evenclaw
