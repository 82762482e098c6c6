// A cow of whom only is said that she walks sound, how she has to be handled, or what became of a
// wrap or block, was not in the crush: it is news of her. Nothing of it is silently the turn of a
// cow, nor are feet that are told of next silently hers.
#include "core/api/recording/walks_by.hpp"

#include <algorithm>
#include <iterator>
#include <utility>
#include <variant>
#include <vector>

#include "core/api/recording/open_questions.hpp"
#include "core/api/recording/settled_turn.hpp"
#include "core/api/recording/state.hpp"
#include "core/base/text.hpp"
#include "core/trade/handling.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

bool may_be_news(const TurnClause& clause) {
  const auto* act = std::get_if<ActionSaid>(&clause);
  return std::holds_alternative<WalksSoundSaid>(clause) ||
         (act != nullptr && handling_said(act->action.kind));
}

std::optional<News> news_that_tells(const FixtureSaid& said) {
  for (const auto& each : EnumWords<News>::table) {
    if (fixture_said(each.value) == said) return each.value;
  }
  return std::nullopt;
}

/// The acts of a foot of which nothing else was said, when each may be told from outside: without
/// a claw or a time.
bool may_be_told_from_outside(const FootCall& call) {
  FootCall only;
  only.foot = call.foot;
  only.actions = call.actions;
  return call == only && !call.actions.empty() &&
         std::none_of(call.actions.begin(), call.actions.end(),
                      [](const Action& act) { return is_called(act.claw) || act.when.said(); });
}

void tell_as_well(std::vector<NewsSaid>& all, const NewsSaid& one) {
  const auto same = std::find_if(all.begin(), all.end(),
                                 [&](const NewsSaid& each) { return each.news == one.news; });
  if (same == all.end()) {
    all.push_back(one);
  } else {
    same->feet.add(one.feet);
  }
}

/// Kept by itself, the line says of whom it is: her number may have stood in one that was refused.
std::string naming_her(const VisitBook& book, const std::string& number, std::string words) {
  const auto line = read_in_herd(book, words, {book.visit.day, false, 0});
  return line ? std::move(words) : plain_number(number) + ' ' + words;
}

/// What became of wraps and blocks, when nothing else was said of her, known or not.
std::vector<NewsSaid> fates_alone_in(const Turn& turn) {
  Turn only;
  only.cow = turn.cow;
  only.feet = turn.feet;
  if (turn != only) return {};
  std::vector<NewsSaid> all;
  for (const FootCall& call : turn.feet) {
    if (!may_be_told_from_outside(call)) return {};
    for (const Action& act : call.actions) {
      const auto said = fixture_said(act.kind);
      const auto told = said ? news_that_tells(*said) : std::nullopt;
      if (!told) return {};
      tell_as_well(all, NewsSaid{turn.cow.number, *told, {call.foot}, false});
    }
  }
  return all;
}

/// In a file given again: the same words told that as news then, and the wrap is off since.
bool was_told_so(const VisitBook& book, const InCrush& cow, const std::vector<NewsSaid>& all) {
  return !book.typed && !cow.draft.words.empty() &&
         std::all_of(all.begin(), all.end(), [&](const NewsSaid& told) {
           return book.before.told_as(cow.cow, told.news) ==
                  naming_her(book, told.number, cow.draft.words.front());
         });
}

/// What is told of her as news, when all of it can be that.
std::vector<NewsSaid> only_news_of(const VisitBook& book, const InCrush& cow) {
  const Turn& turn = cow.draft.turn;
  if (const auto news = only_news_in(turn)) return {NewsSaid{turn.cow.number, *news, {}, false}};
  std::vector<NewsSaid> fates = only_fate_in(turn, cow.past.rows);
  if (fates.empty()) {
    fates = fates_alone_in(turn);
    if (!was_told_so(book, cow, fates)) fates.clear();
  }
  return fates;
}

}  // namespace

std::vector<NewsSaid> told_foot_by_foot(const NewsSaid& news, const Line& line, const Rows& past) {
  const std::optional<FixtureSaid> said = fixture_said(news.news);
  std::vector<NewsSaid> each;
  FootSet spoken_of;
  for (const Clause& clause : line.clauses) {
    const auto* turn_clause = std::get_if<TurnClause>(&clause);
    const auto* named = turn_clause == nullptr ? nullptr : std::get_if<FeetNamed>(turn_clause);
    if (named == nullptr || !said) continue;
    const bool is_known = std::any_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
      return named->feet.has(foot) && !fixtures_left(past, foot, said->fixture).empty();
    });
    NewsSaid piece = news;
    piece.feet = named->feet;
    spoken_of.add(named->feet);
    each.insert(is_known ? each.begin() : each.end(), std::move(piece));
  }
  return each.size() > 1 && spoken_of == news.feet ? each : std::vector<NewsSaid>{news};
}

std::vector<NewsSaid> only_fate_in(const Turn& turn, const Rows& past) {
  const std::vector<NewsSaid> all = fates_alone_in(turn);
  // One of them, on one of the feet: "hinds wraps off".
  const bool is_known = std::any_of(all.begin(), all.end(), [&](const NewsSaid& told) {
    return std::any_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
      return told.feet.has(foot) &&
             !fixtures_left(past, foot, fixture_said(told.news)->fixture).empty();
    });
  });
  return is_known ? all : std::vector<NewsSaid>{};
}

std::optional<News> fate_told_by(const Action& act) {
  const auto said = is_called(act.claw) ? std::nullopt : fixture_said(act.kind);
  return said ? news_that_tells(*said) : std::nullopt;
}

const CowSaid* says_only_how_she_is(const Line& line) {
  if (line.clauses.size() != 2) return nullptr;
  const auto* named = std::get_if<CowNamed>(&line.clauses.front());
  const auto* said = std::get_if<TurnClause>(&line.clauses.back());
  const bool is_sure = named != nullptr && named->cow.known == CowKnown::numbered;
  return is_sure && said != nullptr && may_be_news(*said) ? &named->cow : nullptr;
}

std::optional<NewsSaid> tells_that_she_walks_sound(const Line& line) {
  if (line.clauses.size() != 2) return std::nullopt;
  const auto* named = std::get_if<CowNamed>(&line.clauses.front());
  const auto* said = std::get_if<TurnClause>(&line.clauses.back());
  if (named == nullptr || said == nullptr || named->cow.known != CowKnown::numbered)
    return std::nullopt;
  const auto* note = std::get_if<NoteSaid>(said);
  const bool is_not_lame = note != nullptr && note->denies == Denied::lame;
  if (!is_not_lame && !std::holds_alternative<WalksSoundSaid>(*said)) return std::nullopt;
  return NewsSaid{named->cow.number, News::walks_sound, {}, false};
}

std::optional<News> only_news_in(const Turn& turn) {
  Turn only;
  only.cow = turn.cow;
  only.walks_sound = true;
  if (turn == only) return News::walks_sound;
  if (turn.actions.size() != 1) return std::nullopt;
  only.walks_sound = false;
  only.actions = turn.actions;
  return turn == only ? news_of(turn.actions.front().kind) : std::nullopt;
}

bool says_nothing_of_her_feet(const Turn& turn) {
  Turn only;
  only.cow = turn.cow;
  only.walks_sound = turn.walks_sound;
  std::copy_if(turn.actions.begin(), turn.actions.end(), std::back_inserter(only.actions),
               [](const Action& action) { return handling_said(action.kind).has_value(); });
  return turn == only && (turn.walks_sound || !turn.actions.empty());
}

bool walked_by(const VisitBook& book, const InCrush& cow, LetOutBy why) {
  const CowSaid& said = cow.draft.turn.cow;
  const std::vector<std::string>& words = cow.draft.words;
  const bool is_one_line =
      !words.empty() && std::all_of(words.begin(), words.end(),
                                    [&](const std::string& line) { return line == words.front(); });
  return why != LetOutBy::done && !cow.done_said && !cow.earlier && cow.refused.empty() &&
         is_one_line && said.known == CowKnown::numbered && !only_news_of(book, cow).empty() &&
         book.finder.carrier(said.number);
}

/// While the turn of another cow is under way it could be either, and what is said of feet next
/// could be of either cow. It is asked, and the feet are nobody's until a cow is named.
Result<bool> RecordingState::asked_who_walks(const Line& line, std::string_view text) {
  const CowSaid* cow = says_only_how_she_is(line);
  if (cow == nullptr || !crush_.cow || goes_on(*cow) || is_certain_now(*cow)) return false;
  if (looks_finished(book_, *crush_.cow) || !book_.finder.carrier(cow->number)) return false;
  const std::string number = plain_number(cow->number);
  const std::string said(trimmed(text));
  const bool walks =
      std::holds_alternative<WalksSoundSaid>(std::get<TurnClause>(line.clauses.back()));
  Fault fault{.slug = "call-impossible",
              .message = "Another cow is in the crush. Is this news of " + number +
                         ", or is she the next one?",
              .line = book_.answers.line(),
              .remedy = std::string(walks ? "Of one who only walked by say: "
                                          : "Of one who is not in the crush say: ") +
                        std::string(book_.language.say(TermKind::news_lead)) + " " + said +
                        "; of the next one her number alone first."};
  crush_.held_back_by = said;
  const Outcome asked = refuse_mending(book_, crush_, number, std::move(fault), text);
  if (!asked) return asked.faults();
  return true;
}

Outcome RecordingState::tell_that_she_walked_by() {
  forget_answers_about_her(book_, crush_);
  const InCrush cow = *std::move(crush_.cow);
  crush_.clear();
  const SaidBy now = std::exchange(book_.by, cow.by);
  const std::vector<NewsSaid> all = only_news_of(book_, cow);
  const std::string words = naming_her(book_, all.front().number, cow.draft.words.front());
  const auto line = read_in_herd(book_, words, {book_.visit.day, false, 0});
  Outcome told = Done{};
  for (const NewsSaid& news : all) {
    for (const NewsSaid& each : told_foot_by_foot(news, line ? *line : Line{}, cow.past.rows)) {
      if (told) told = news_.tell(each, words);
    }
  }
  book_.by = now;
  if (told && !all.front().feet.empty()) {
    book_.answers
        .add(ReplyKind::mark,
             "taken as news of her; if she was in the crush, say her number and "
             "what was found")
        .cow = plain_number(all.front().number);
  }
  return told;
}

}  // namespace evenclaw
