// What is told besides the cow in the crush: news since last time, today's feet, who calls and who
// types.
#include <algorithm>
#include <utility>
#include <variant>

#include "core/api/cow_news.hpp"
#include "core/api/news_words.hpp"
#include "core/api/people.hpp"
#include "core/api/recording/behind_news.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/api/recording/said_again.hpp"
#include "core/api/recording/said_otherwise.hpp"
#include "core/api/recording/state.hpp"
#include "core/api/recording/unread_line.hpp"
#include "core/base/ascii.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/number_range.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/call_line/trap.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

/// What stands in the log for a name that may be misspelt.
constexpr std::string_view near_name = "a name a letter or two off a known one";

/// What the log calls it, whatever language the day is called in.
std::string_view role_of(TermKind who) {
  return who == TermKind::caller ? "caller" : "writer";
}

/// The numbers of a list: "231, 513 stil lame". One with letters in it, "4l3", is nobody's.
/// "250-253" may mean those between as well.
std::vector<std::string> numbers_at_start(std::string_view text, const Language& language) {
  std::vector<std::string> numbers;
  if (!is_utf8(text)) return numbers;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  std::size_t at = 0;
  while (at < tokens.size()) {
    const Token& token = tokens[at];
    if (is_part_of_a_word(tokens, at, language)) {
      at += 2;
    } else if (const std::size_t joining = language.joining_tokens(tokens, at)) {
      at += joining;
    } else if (const auto range = numbers_of_range(tokens, at, text); !range.empty()) {
      numbers.insert(numbers.end(), range.begin() + 1, range.end());
      ++at;
    } else if (token.kind == TokenKind::number) {
      const bool is_in_words = !token.folded.empty();
      numbers.emplace_back(is_in_words ? token.folded
                                       : std::string(text.substr(token.offset, token.length)));
      ++at;
    } else {
      break;
    }
  }
  return numbers;
}

/// All numbers of a line, however it starts: "still lame: 101, 102".
std::vector<std::string> numbers_anywhere(std::string_view text, const Language& language) {
  std::vector<std::string> numbers;
  if (!is_utf8(text)) return numbers;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  for (std::size_t at = 0; at < tokens.size(); ++at) {
    if (tokens[at].kind != TokenKind::number || is_part_of_a_word(tokens, at, language)) continue;
    const Phrase* unit =
        at + 1 < tokens.size() ? language.longest_match(tokens, at + 1).phrase : nullptr;
    const bool is_measured =
        unit != nullptr && (unit->kind == TermKind::day_unit || unit->kind == TermKind::week_unit ||
                            unit->kind == TermKind::mm || unit->kind == TermKind::cm);
    if (is_measured) continue;
    const Token& token = tokens[at];
    numbers.emplace_back(token.folded.empty() ? std::string(text.substr(token.offset, token.length))
                                              : token.folded);
  }
  return numbers;
}

/// What is said of several at once, and of each of them in other words: "all trimmed", "all good".
bool tells_of_all(TermKind kind) {
  return kind == TermKind::all_trimmed || kind == TermKind::rest_fine || kind == TermKind::trimmed;
}

/// "250-253 all trimmed" and then "250 all good".
bool are_told_one_by_one(std::string_view several, std::string_view one, const Language& language) {
  if (!names_several_cows(several, language)) return false;
  const auto tells_only_that = [&language](std::string_view line) {
    bool any = false;
    const std::vector<Token> tokens = spoken_tokens(line, language);
    for (std::size_t at = 0; at < tokens.size();) {
      const Language::Match match = language.longest_match(tokens, at);
      if (match.phrase == nullptr && tokens[at].kind == TokenKind::word) return false;
      const bool tells = match.phrase != nullptr && tells_of_all(match.phrase->kind);
      const bool joins = match.phrase == nullptr || language.joining_tokens(tokens, at) > 0;
      if (!tells && !joins) return false;
      any |= tells;
      at += std::max<std::size_t>(match.word_count, 1);
    }
    return any;
  };
  return is_utf8(one) && tells_only_that(several) && tells_only_that(one);
}

bool is_a_number(std::string_view number) {
  return !number.empty() && std::all_of(number.begin(), number.end(), is_digit);
}

bool names_the_cow(std::string_view text, std::string_view number, const Language& language) {
  const auto is_hers = [&](const std::string& named) {
    return plain_number(named) == plain_number(number);
  };
  const std::vector<std::string> first = numbers_at_start(text, language);
  const std::vector<std::string> anywhere = numbers_anywhere(text, language);
  return std::any_of(first.begin(), first.end(), is_hers) ||
         std::any_of(anywhere.begin(), anywhere.end(), is_hers);
}

/// "Say "104? wrap off"": of one that was called "104?", for nobody made sure of her number.
std::string line_of_the_doubtful(const std::string& number, std::string_view text) {
  const bool is_first = text.substr(0, number.size()) == number;
  const std::string rest(is_first ? text.substr(number.size()) : std::string_view(" ..."));
  return "Of the one called " + number + "? say \"" + number + '?' + rest + "\".";
}

}  // namespace

/// Kept as it was said: the farmer meant some cow.
Outcome RecordingState::unknown_cow(const NewsSaid& news, std::string_view text) {
  const std::string nobody = "No cow of this herd carries the number " + news.number + ".";
  ReplyItem& item = book_.answers.add(ReplyKind::refused, nobody);
  item.slug = "cow-not-found";
  item.token = news.number;
  const std::vector<std::string> near = book_.finder.nearest(news.number);
  item.remedy = did_you_mean(near);
  const std::vector<std::string> names = book_.finder.names_without_number();
  if (std::find(names.begin(), names.end(), news.number + "?") != names.end()) {
    item.remedy = line_of_the_doubtful(news.number, trimmed(text));
  }
  const UnreadNews unread{news.number, std::string(trimmed(text))};
  mistaken_number_ = MistakenNumber{news, unread.words, near};
  return keep_as_unread(unread, nobody + " Which cow was it?");
}

/// News nobody could read is kept for every number it names, at once, so that nothing is lost when
/// the power goes; the next line may say it again.
Outcome RecordingState::keep_unread(std::string_view text) {
  std::vector<std::string> numbers = numbers_at_start(text, book_.language);
  for (std::string& number : numbers_anywhere(text, book_.language)) {
    // A number further on may be anything, unless a cow of this herd carries it.
    const bool is_named = std::find(numbers.begin(), numbers.end(), number) != numbers.end();
    if (!is_named && book_.finder.carrier(number)) numbers.push_back(std::move(number));
  }
  for (const std::string& number : numbers) {
    const Outcome kept = keep_as_unread({number, std::string(trimmed(text))},
                                        "This was not understood. What was told?");
    if (!kept) return kept;
  }
  // A person who watches may have typed anything; what comes from a file was called.
  const bool was_called = !book_.typed || holds_a_call_word(text, book_.language);
  if (!numbers.empty() || !was_called) return Done{};
  const std::string whom = whom_it_may_be_of(text, book_.language);
  return keep_as_unread({whom, std::string(trimmed(text))},
                        "This was not understood. Of whom was it, and what was told?");
}

Outcome RecordingState::keep_as_unread(const UnreadNews& news, const std::string& question,
                                       std::optional<PersonId> person) {
  if (!book_.before.is_unread_now(news.number, news.words)) return Done{};
  NewsUnread body;
  body.visit = book_.visit.visit;
  body.day = book_.visit.day;
  body.number = news.number;
  body.cow = book_.finder.called(news.number);
  body.words = news.words;
  body.asked = question;
  body.person = person;
  return book_.journal.add(body, {book_.journal.fresh_id(), {}, book_.by, {}});
}

Outcome RecordingState::settle_unread(const UnreadNews& news, std::string_view text) {
  QuestionSettled body;
  body.visit = book_.visit.visit;
  body.day = book_.visit.day;
  body.number = news.number;
  body.cow = book_.finder.called(news.number);
  body.about = news.words;
  body.words = trimmed(text);
  book_.before.add_settled(news);
  return book_.journal.add(body, {book_.journal.fresh_id(), {}, book_.by, {}});
}

/// What was told of 998 and not understood is said again with her number, or while she stands
/// there; "412 no, chronik" also without it, right after she was let out.
bool RecordingState::may_mend_again(const UnreadNews& news, std::string_view text) const {
  const bool is_of_one_cow = is_a_number(news.number) && !is_of_a_batch(news.words);
  if (!is_of_one_cow || names_the_cow(text, news.number, book_.language)) return true;
  const auto is_hers = [&](const InCrush& cow) {
    return plain_number(cow.draft.turn.cow.number) == plain_number(news.number);
  };
  if (crush_.cow) return is_hers(*crush_.cow);
  const bool mends =
      cow_mended_in_refused(news.words, after_let_out(book_), book_.language).has_value();
  return mends && last_out_ && is_hers(last_out_->cow);
}

/// "883 and 884 LH DD" as it was said of 884 alone.
std::string RecordingState::told_of_one(const UnreadNews& news) const {
  for (const PartOfLine& part : parts_of_cows(news.words, book_.language)) {
    if (part.number == plain_number(news.number)) return part.words;
  }
  if (!names_several_cows(news.words, book_.language)) return news.words;
  const std::vector<Token> tokens = spoken_tokens(news.words, book_.language);
  std::size_t at = 0;
  while (at < tokens.size()) {
    const bool is_number = tokens[at].kind == TokenKind::number;
    const std::size_t joining = is_number ? 1 : book_.language.joining_tokens(tokens, at);
    if (joining == 0) break;
    at += joining;
  }
  if (at >= tokens.size()) return news.words;
  return news.number + ' ' + news.words.substr(tokens[at].offset);
}

/// In the same words it is no clearer than it was.
Outcome RecordingState::settle_news_said_again(std::string_view text) {
  const std::vector<UnreadNews> unread = book_.before.unread();
  for (const UnreadNews& news : unread) {
    // A correction without a number is of the cow that stands there, not of any that waits for one.
    if (!may_mend_again(news, text)) continue;
    const bool is_clearer = news.words != trimmed(text);
    const bool is_said = is_said_again(told_of_one(news), trimmed(text), book_.language) ||
                         are_told_one_by_one(news.words, text, book_.language) ||
                         (is_of_a_batch(news.words) && is_of_a_batch(text) &&
                          is_said_in_other_words(news.words, trimmed(text), book_.language));
    if (!is_clearer || !is_said) continue;
    const Outcome settled = settle_unread(news, text);
    if (!settled) return settled;
  }
  return Done{};
}

/// "66 wrap off" was refused, and 68, which was proposed, is told of next.
Outcome RecordingState::settle_number_slip(const NewsSaid& news, std::string_view text) {
  const std::optional<MistakenNumber> before = std::exchange(mistaken_number_, std::nullopt);
  if (!before || !book_.typed) return Done{};
  const bool same = before->said.news == news.news && before->said.feet == news.feet;
  const bool proposed = std::any_of(
      before->proposed.begin(), before->proposed.end(),
      [&](const std::string& number) { return plain_number(number) == plain_number(news.number); });
  if (!same || !proposed) return Done{};
  return settle_unread({before->said.number, before->words}, text);
}

Outcome RecordingState::tell(const NewsSaid& news, std::string_view text) {
  const std::string number = plain_number(news.number);
  if (book_.last_line.told_of.empty() || book_.last_line.told_of.back() != number)
    book_.last_line.told_of.push_back(number);
  std::optional<CowId> cow = book_.finder.called(news.number);
  // Who is in the crush for the first time carries her number only when she is let out.
  const bool is_here = crush_.cow && crush_.cow->draft.turn.cow.known == CowKnown::numbered &&
                       plain_number(crush_.cow->draft.turn.cow.number) == plain_number(news.number);
  if (!cow && is_here) cow = crush_.cow->cow;
  if (!cow) {
    if (crush_.cow) crush_.held_back_by = trimmed(text);
    return unknown_cow(news, text);
  }
  if (crush_.cow) now_told_of(*crush_.cow, news, *cow);
  const Outcome settled = settle_number_slip(news, text);
  if (!settled) return settled;
  // What was told before answers what was asked since.
  const bool answers = book_.typed && fixture_said(news.news) && book_.before.was_asked_about(*cow);
  if (!answers && book_.before.was_told(*cow, news.news, news.feet, book_.typed)) {
    book_.answers.add(ReplyKind::there_already, "told before").cow = plain_number(news.number);
    return Done{};
  }
  return tell_of(*cow, news, text);
}

Outcome RecordingState::tell_of(CowId cow, const NewsSaid& news, std::string_view text) {
  auto past = past_told(book_, cow);
  if (!past) return past.faults();
  const EntryId entry = book_.journal.fresh_id();
  const std::string words(trimmed(text));
  const bool is_sure = book_.typed && book_.before.was_asked(cow, words);
  const CowNews told{cow,
                     news,
                     effect_told(news, *past, {book_.visit.day, entry}, {book_.visit.day, is_sure}),
                     book_.visit.day,
                     book_.visit.visit,
                     words};
  if (told.effect.unclear) return ask_about_news(told, *told.effect.unclear);
  auto other = ask_for_whom_the_vet(told);
  if (!other) return other.faults();
  if (*other) return ask_about_news(told, **other);
  const Outcome added = add_news(book_.journal, told, {entry, {}, book_.by, {}});
  if (!added) return added;
  if (news.news == News::gone) book_.finder.now_gone(cow, told.words);
  book_.before.add_told(cow, news.news, news.feet, told.words);
  book_.answers
      .add(ReplyKind::told,
           words_of_effect(news.news, told.effect.closes, told.effect.makes, *past))
      .cow = plain_number(news.number);
  const Outcome answered = answer_by_news(cow, news, text);
  if (!answered) return answered;
  if (!crush_.cow || crush_.cow->cow != cow) return Done{};
  return look_again_at_past(book_, *crush_.cow);
}

/// That the vet came to a cow who waits for none, while another does, may be a slip of the number.
/// Asked once, the same words are asked about again, also when the other was seen to meanwhile.
Result<std::optional<std::string>> RecordingState::ask_for_whom_the_vet(const CowNews& told) {
  if (told.said.news != News::vet_came) return std::optional<std::string>();
  HerdLog log(book_.ports.store, book_.visit.herd);
  log.also(book_.journal.unwritten());
  const auto waiting = who_waits_for_the_vet(book_.ports.store, log, told);
  if (!waiting) return waiting.faults();
  if (waiting->empty() && !book_.before.was_asked(told.cow, told.words)) {
    return std::optional<std::string>();
  }
  mistaken_number_ = MistakenNumber{told.said, told.words, *waiting};
  return std::optional(vet_for_whom(*waiting));
}

/// What was said is kept as it was said, closes nothing, and is asked about again when the visit
/// closes unless it was told more plainly by then. A wrap that nobody knew of stays to be seen to.
Outcome RecordingState::ask_about_news(const CowNews& told, const std::string& question) {
  book_.answers.add(ReplyKind::question, question).cow = plain_number(told.said.number);
  if (!book_.before.asks_now(told.cow, told.words)) return Done{};
  CowNews asked = told;
  asked.effect.closes.clear();
  asked.effect.unclear = question;
  return add_news(book_.journal, asked, {book_.journal.fresh_id(), {}, book_.by, {}});
}

Outcome RecordingState::todays_feet(const FootSet& feet) {
  if (feet == book_.visit.todays_feet) return Done{};
  VisitCorrected body;
  body.visit = book_.visit.visit;
  body.todays_feet = feet;
  const Outcome added =
      book_.journal.add(body, {book_.journal.fresh_id(), {book_.visit.visit.value}, book_.by, {}});
  if (!added) return added;
  const bool are_first_said = book_.visit.todays_feet.empty();
  book_.visit.todays_feet = feet;
  book_.answers.add(ReplyKind::told, "today's feet: " + offered_feet(feet, book_.language));
  return are_first_said ? fill_what_waited() : Outcome(Done{});
}

/// A name close to a known one is asked about; said a second time it is meant. Where nobody is
/// there to ask it is read as the known one, and asked about when the visit closes unless the next
/// line says it again.
Result<std::optional<Person>> RecordingState::person(TermKind who, std::string_view name) {
  if (names_two_people(name)) return refuse_two_names(who, name);
  const std::string folded = fold_case(trimmed(name));
  const bool is_soon = book_.typed || book_.answers.line() == asked_name_line_ + 1;
  const bool sure = !asked_name_.empty() && asked_name_ == folded && is_soon;
  auto found = person_named(book_.ports, name, sure);
  if (!found) return found.faults();
  if (const auto* doubt = std::get_if<NameInDoubt>(&*found)) {
    asked_name_ = folded;
    asked_name_line_ = book_.answers.line();
    return in_doubt(who, *doubt);
  }
  const Outcome settled = sure ? settle_name(who) : Outcome(Done{});
  if (!settled) return settled.faults();
  return std::optional(Person{std::get<PersonId>(*found), std::string(trimmed(name))});
}

/// Who of the two it was nobody knows, and what follows is called by one.
Result<std::optional<Person>> RecordingState::refuse_two_names(TermKind who,
                                                               std::string_view name) {
  const std::string said(trimmed(name));
  refuse(book_, crush_, name,
         {{.slug = "call-impossible",
           .message = said + " are two names; one person calls, and one writes, at a time.",
           .token = said,
           .line = book_.answers.line(),
           .remedy = "Say one name, and the other one when that person takes over."}});
  const Outcome kept = book_.typed
                           ? Outcome(Done{})
                           : keep_as_unread({std::string(role_of(who)), "two names at once"},
                                            "Nobody was taken down for it. Who was it?");
  if (!kept) return kept.faults();
  return std::optional<Person>();
}

/// Names stand outside the log, so the question is kept without them.
Result<std::optional<Person>> RecordingState::in_doubt(TermKind who, const NameInDoubt& doubt) {
  if (book_.typed) {
    book_.answers
        .add(ReplyKind::question, "Is " + doubt.said + " the same as " + doubt.nearest +
                                      "? Say the name again if it is somebody else.")
        .token = doubt.said;
    return std::optional<Person>();
  }
  book_.answers
      .add(ReplyKind::question, doubt.said + " was read as " + doubt.nearest + "; say \"" +
                                    offered_person(who, doubt.said, book_.language) +
                                    "\" on the next line if it is somebody else.")
      .token = doubt.said;
  const Outcome kept = keep_as_unread({std::string(role_of(who)), std::string(near_name)},
                                      "It was read as the known one. Who was it?", doubt.person);
  if (!kept) return kept.faults();
  return std::optional(Person{doubt.person, doubt.nearest});
}

/// Said twice, it is somebody else than the known one.
Outcome RecordingState::settle_name(TermKind who) {
  const UnreadNews question{std::string(role_of(who)), std::string(near_name)};
  const std::vector<UnreadNews>& open = book_.before.unread();
  const bool is_open = std::any_of(open.begin(), open.end(), [&](const UnreadNews& unread) {
    return unread.number == question.number && unread.words == question.words;
  });
  return is_open ? settle_unread(question, "the name was said again") : Outcome(Done{});
}

Outcome RecordingState::caller(std::string_view name) {
  const auto found = person(TermKind::caller, name);
  if (!found) return found.faults();
  if (!*found) return Done{};
  book_.by.caller = (*found)->id;
  book_.visit.caller = (*found)->name;
  book_.answers.add(ReplyKind::told,
                    offered_person(TermKind::caller, book_.visit.caller, book_.language));
  return Done{};
}

Outcome RecordingState::writer(std::string_view name) {
  const auto found = person(TermKind::writer, name);
  if (!found) return found.faults();
  if (!*found) return Done{};
  book_.by.writer = (*found)->id;
  book_.visit.writer = (*found)->name;
  book_.answers.add(ReplyKind::told,
                    offered_person(TermKind::writer, book_.visit.writer, book_.language));
  return Done{};
}

}  // namespace evenclaw
