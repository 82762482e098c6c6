// What becomes of lines nobody could read: they stay with the cow they were said of until they are
// said again, so that nothing that was typed is lost without being asked about.
#include <algorithm>
#include <utility>
#include <variant>

#include "core/api/news_lead.hpp"
#include "core/api/recording/end_reasons.hpp"
#include "core/api/recording/foot_of_fixture.hpp"
#include "core/api/recording/held_back.hpp"
#include "core/api/recording/open_questions.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/api/recording/refused_of_her.hpp"
#include "core/api/recording/said_again.hpp"
#include "core/api/recording/said_otherwise.hpp"
#include "core/api/recording/settled_turn.hpp"
#include "core/api/recording/state.hpp"
#include "core/api/recording/two_cows.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/call_line/trap.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

bool same_number(const CowSaid& a, const CowSaid& b) {
  return !only_number(a).empty() && only_number(a) == only_number(b);
}

const CowSaid* number_alone(const Line& line) {
  if (line.clauses.size() != 1) return nullptr;
  const auto* named = std::get_if<CowNamed>(&line.clauses.front());
  return named == nullptr ? nullptr : &named->cow;
}

/// She stands for whoever was meant.
bool is_nobody(const InCrush& cow) {
  return cow.draft.turn.cow.known == CowKnown::unnumbered && cow.draft.turn.cow.looks.empty();
}

/// "No, 413" and nothing else.
bool mends_the_number(const Line& line, const std::string& number) {
  if (line.clauses.size() != 1) return false;
  const auto* clause = std::get_if<TurnClause>(&line.clauses.front());
  const auto* mended = clause == nullptr ? nullptr : std::get_if<CowCorrected>(clause);
  return mended != nullptr && only_number(mended->cow) == number;
}

std::string first_number_in(std::string_view text, const Language& language) {
  if (!is_utf8(text)) return {};
  for (const Token& token : spoken_tokens(text, language)) {
    if (token.kind != TokenKind::number) continue;
    return plain_number(token.folded.empty() ? text.substr(token.offset, token.length)
                                             : std::string_view(token.folded));
  }
  return {};
}

/// "4l3 gone" is of somebody, and nobody knows of whom.
bool has_letters_in_number(std::string_view text, const Language& language) {
  return is_utf8(text) && is_part_of_a_word(tokens_of(text), 0, language);
}

bool tells_of_a_foot(std::string_view text, const Language& language) {
  return feet_in_refused(text, language) != RefusedFeet{};
}

/// A clear number that a cow of the herd carries is that cow, whatever was said behind it: what is
/// asked of her block or wrap is asked, and nobody has to say later that the two are one.
CowSaid as_known_here(const RefusedCow& refused, const CowFinder& finder, Day today) {
  CowSaid cow = refused.cow;
  const bool may_be_hers = refused.is_clear_number && cow.known == CowKnown::doubtful;
  const std::optional<CowId> carrier =
      may_be_hers ? finder.carrier(cow.number) : std::optional<CowId>();
  if (!carrier) return cow;
  const std::optional<LeftHerd> left = finder.left(*carrier);
  // Who was told to be gone today is asked about by her number.
  if (!left || left->on == today) cow.known = CowKnown::numbered;
  return cow;
}

bool is_of_nobody(std::string_view text, const Language& language) {
  return is_an_aside(text, language) || is_a_heading(text, language);
}

/// A file given again: this very line named her when she was not called yet.
bool named_her_before(const RecordedBefore& before, const CowSaid& cow, std::string_view text) {
  if (before.was_unread(plain_number(cow.number), std::string(trimmed(text)))) return false;
  const std::vector<const RecordedTurn*> turns = before.turns_called(cow);
  return std::any_of(turns.begin(), turns.end(), [&](const RecordedTurn* turn) {
    return is_named_as_a_reason(turn->body.turn, trimmed(text));
  });
}

/// Of each cow the line names, when it tells of feet at all; beside her in the crush the other
/// alone.
std::vector<PartOfLine> parts_with_feet(std::string_view text, bool one_stands_there,
                                        const Language& language) {
  const auto further = one_stands_there ? cow_further_on(text, language) : std::nullopt;
  if (further) return {further->her};
  return tells_of_a_foot(text, language) ? parts_of_cows(text, language)
                                         : std::vector<PartOfLine>{};
}

/// Of a foot, behind a line that may have named another cow.
bool may_be_of_whoever(const Crush& crush, std::string_view text, const Language& language) {
  return crush.cow && !crush.held_back_by.empty() && tells_of_a_foot(text, language) &&
         !may_be_of_another_cow(text, language);
}

/// A foot, or a number that cannot be one: some cow was called. "Spray" goes on with one, and calls
/// none.
bool is_of_somebody(const VisitBook& book, std::string_view text) {
  if (has_letters_in_number(text, book.language)) return true;
  const RefusedFeet feet = feet_in_refused(text, book.language);
  if (!feet.any_foot) return feet != RefusedFeet{};
  const auto line = read_in_herd(book, text, after_let_out(book));
  return !line || !only_goes_on(*line);
}

/// A cow who was called before and whom the line would mend, had it been understood.
std::optional<CowSaid> would_be_mended(const VisitBook& book, const LineContext& context,
                                       std::string_view text) {
  const auto named = cow_mended_in_refused(text, context, book.language);
  if (!named) return std::nullopt;
  const CowSaid cow = who_was_read(book, *named);
  const bool is_of_before =
      !book.before.turns_called(cow).empty() && !named_her_before(book.before, cow, text);
  return is_of_before ? std::optional(cow) : std::nullopt;
}

}  // namespace

/// "102 wrap off, sole ulcer" lacks the foot, and it is on record where her wrap is.
Faults RecordingState::with_foot_offered(Faults faults, std::string_view text) {
  const auto lacks_foot = [](const Fault& fault) {
    return fault.slug == "call-impossible" && !fault.token.empty();
  };
  if (std::none_of(faults.begin(), faults.end(), lacks_foot)) return faults;
  const RefusedCow named = cow_in_refused(text, context(), book_.language);
  std::optional<CowId> cow;
  if (named.likely == CowLikely::surely) cow = book_.finder.carrier(plain_number(named.cow.number));
  if (named.likely == CowLikely::none && crush_.cow) cow = crush_.cow->cow;
  if (!cow) return faults;
  const auto past = past_of(book_, *cow);
  if (!past) return faults;
  for (Fault& fault : faults) {
    if (!lacks_foot(fault)) continue;
    const std::string remedy = remedy_with_foot(past->rows, fault.token, book_.language);
    if (!remedy.empty()) fault.remedy = remedy;
  }
  return faults;
}

/// An aside leaves nothing of hers open. A refused line may have named the next cow. Then she
/// stands in the crush: what follows is hers and not that of the cow before, whether anybody looks
/// at the screen or not. What is told of a foot while nobody is in the crush is kept with a cow
/// without a number.
Outcome RecordingState::refused_line(std::string_view text, const Faults& faults) {
  refuse(book_, crush_, text, faults);
  if (is_of_nobody(text, book_.language)) return Done{};
  if (is_of_a_batch(text, book_.language)) return counted_.refused(text);
  const auto mended = would_be_mended(book_, context(), text);
  if (mended && !goes_on(*mended)) {
    // Who was let out is mended from outside: whoever stands in the crush stays.
    return keep_as_unread(book_, {plain_number(mended->number), std::string(trimmed(text))},
                          "It was not understood, so nothing of hers was mended. What holds?");
  }
  const RefusedCow refused = cow_in_refused(text, context(), book_.language);
  if (refused.likely == CowLikely::none && tells_todays_feet(text, book_.language)) {
    return keep_as_unread(
        book_, {std::string(book_.language.say(TermKind::today)), std::string(trimmed(text))},
        "This was not understood. Which feet are lifted today?");
  }
  const bool is_of_others = refused.likely == CowLikely::none && tells_of_others(refused, text);
  if (is_of_others || !news_of_one_out(text).empty()) {
    keep_apart(text);
    return keep_unread(book_, text);
  }
  const auto parts = parts_with_feet(text, crush_.cow.has_value(), book_.language);
  if (!parts.empty()) return keep_with_each(parts, text);
  if (refused.likely != CowLikely::none) {
    const CowSaid cow = as_known_here(refused, book_.finder, book_.visit.day);
    const Outcome named = name_in_refused(who_was_read(book_, cow), text);
    if (!named) return named;
  } else {
    const bool is_of_whoever = may_be_of_whoever(crush_, text, book_.language);
    const Outcome stands = is_of_whoever ? stand_for_whoever() : Outcome(Done{});
    if (!stands) return stands;
    hold_back_after(book_, crush_, text);
  }
  const bool corrects = corrects_without_number(text, book_.language);
  if (!crush_.cow && corrects) return keep_correction(book_, who_is_meant(crush_, turns_), text);
  if (!crush_.cow && is_of_somebody(book_, text)) {
    CowSaid nobody;
    nobody.known = CowKnown::unnumbered;
    const Outcome named = name_in_refused(nobody, text);
    if (!named) return named;
  }
  if (!crush_.cow) return keep_unread(book_, text);
  keep_refused_once(*crush_.cow, text, book_.language);
  return Done{};
}

/// The number of whom such a line tells what became of her: while the turn of another cow is under
/// way, or nobody stands there, she does not come into the crush for it.
std::string RecordingState::news_of_one_out(std::string_view text) const {
  std::string number = told_in_unread_news(text, book_.language);
  if (number.empty() || !crush_.cow) return number;
  const bool is_hers = only_number(crush_.cow->draft.turn.cow) == number;
  return is_hers || looks_finished(book_, *crush_.cow) ? std::string() : number;
}

/// News, or several cows: none of it is of her in the crush, nor of any cow that follows.
bool RecordingState::tells_of_others(const RefusedCow& refused, std::string_view text) const {
  const Language& language = book_.language;
  const bool is_of_several = names_several_cows(text, language);
  if (is_of_several || is_led_in_as_news(text, language)) return true;
  if (!parts_of_cows(text, language).empty()) return !tells_of_a_foot(text, language);
  const bool is_hers = crush_.cow && only_number(crush_.cow->draft.turn.cow) == refused.news_of;
  return !refused.news_of.empty() && !is_hers;
}

/// What follows a line of several cows may be of any of them. Behind news nothing but what is found
/// or done is in doubt, as behind news that was understood.
void RecordingState::keep_apart(std::string_view text) {
  const bool is_told = tells_news_alone(text, book_.language) || !news_of_one_out(text).empty();
  const bool is_news = is_led_in_as_news(text, book_.language) ||
                       (is_told && !names_several_cows(text, book_.language));
  if (!is_news) return hold_back_after(book_, crush_, text);
  if (crush_.cow) crush_.cow->told_of = first_number_in(text, book_.language);
}

/// Two cows in one line: it is asked about with either, until she is called on a line of her own.
/// What stands before the number of the other is of her in the crush.
Outcome RecordingState::keep_with_each(const std::vector<PartOfLine>& parts,
                                       std::string_view text) {
  const auto further = crush_.cow ? cow_further_on(text, book_.language) : std::nullopt;
  if (further) {
    keep_refused(*crush_.cow, further->before, book_.language);
    crush_.held_back_by = trimmed(text);
  } else {
    hold_back_after(book_, crush_, text);
  }
  for (const PartOfLine& part : parts) {
    const Outcome kept =
        keep_as_unread(book_, {part.number, further ? part.words : std::string(trimmed(text))},
                       "It stood in one line with another cow, and nothing of it was taken down. "
                       "What holds?");
    if (!kept) return kept;
  }
  if (crush_.cow) return Done{};
  // What follows is of a foot of whoever stands there.
  CowSaid nobody;
  nobody.known = CowKnown::unnumbered;
  return name_in_refused(nobody, text);
}

Outcome RecordingState::name_in_refused(const CowSaid& cow, std::string_view text) {
  const bool is_in_crush = crush_.cow && same_number(crush_.cow->draft.turn.cow, cow);
  if (is_in_crush || goes_on(cow)) return Done{};
  const Outcome named = name_cow(cow, text);
  if (!named) return named;
  crush_.cow->named_in_refused = true;
  return Done{};
}

/// The number of the cow in the crush stood in a line that was refused and is said again now, or it
/// was asked whether she is this one.
bool RecordingState::is_certain_now(const CowSaid& cow) const {
  if (!crush_.cow) return false;
  const bool was_asked = is_the_known_cow(crush_.cow->draft.turn, crush_.cow->warnings.unanswered(),
                                          cow, book_.language);
  if (was_asked || book_.before.is_known_by_these(cow, crush_.cow->draft)) return true;
  if (!crush_.cow->named_in_refused) return false;
  const CowSaid& said = crush_.cow->draft.turn.cow;
  return said.known == CowKnown::doubtful && cow.known == CowKnown::numbered &&
         same_number(said, cow);
}

/// The cow in the crush was only named in lines nobody could read, and this line says them again
/// without her: "3 4 recheck" was 34, "513 blck came off" was news of 513, "no 413" the number of
/// the cow before. She never stood there. News may be said again in fewer words, unless the line
/// told of a foot. And when a foot was told of and no cow, a number alone is the answer to whose it
/// is.
Outcome RecordingState::settle_misread(const Line& line, std::string_view text) {
  if (!crush_.cow || !crush_.cow->named_in_refused || !crush_.cow->draft.words.empty())
    return Done{};
  if (const CowSaid* cow = number_alone(line); cow != nullptr && is_nobody(*crush_.cow)) {
    return hold_against(*cow);
  }
  const auto all_are_in = [&](bool as_news) {
    return std::all_of(
        crush_.cow->refused.begin(), crush_.cow->refused.end(), [&](const RefusedLine& refused) {
          const bool is_news_in_short = as_news && !tells_of_a_foot(refused.text, book_.language) &&
                                        is_said_again(text, refused.text, book_.language);
          return is_news_in_short || is_said_again(refused.text, text, book_.language);
        });
  };
  const std::string number = only_number(crush_.cow->draft.turn.cow);
  const bool was_announced =
      crush_.cow->refused.size() == 1 &&
      announced_tokens(tokens_of(crush_.cow->refused.front().text), book_.language) > 0;
  if (was_announced && mends_the_number(line, number)) {
    forget_answers_about_her(book_, crush_);
    crush_.cow.reset();
    return Done{};
  }
  for (const Clause& clause : line.clauses) {
    const auto* named = std::get_if<CowNamed>(&clause);
    const auto* news = std::get_if<NewsSaid>(&clause);
    const bool is_other = named != nullptr && !goes_on(named->cow) && !is_certain_now(named->cow);
    const bool stands_for_her = is_nobody(*crush_.cow) && all_are_in(false);
    const bool is_news_of_her =
        news != nullptr &&
        (stands_for_her || (plain_number(news->number) == number && all_are_in(true)));
    if (!is_news_of_her && !(is_other && all_are_in(false))) continue;
    take_out(book_, crush_);
    break;
  }
  return Done{};
}

}  // namespace evenclaw
