#include "core/api/recording/news_desk.hpp"

#include <algorithm>
#include <utility>

#include "core/api/cow_news.hpp"
#include "core/api/news_words.hpp"
#include "core/api/recording/behind_news.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/how_she_left.hpp"
#include "core/api/recording/new_one_off.hpp"
#include "core/api/recording/open_questions.hpp"
#include "core/base/quotation.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/term.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/put_on_here.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// "Walks sound" or "still lame", as it is printed.
std::string_view said_of_her_walk(News news, const Language& language) {
  return news == News::walks_sound ? language.say(TermKind::walks_sound)
                                   : language.say(TermKind::news, news);
}

/// "Say "104? wrap off"": of one that was called "104?", for nobody made sure of her number.
std::string line_of_the_doubtful(const std::string& number, std::string_view text) {
  const bool is_first = text.substr(0, number.size()) == number;
  const std::string rest(is_first ? text.substr(number.size()) : std::string_view(" ..."));
  return "Of the one called " + number + "? say \"" + number + '?' + rest + "\".";
}

}  // namespace

/// Kept as it was said: the farmer meant some cow.
Outcome NewsDesk::unknown_cow(const NewsSaid& news, std::string_view text) {
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
  return keep_as_unread(book_, unread, nobody + " Which cow was it?");
}

/// "66 wrap off, still lame" is told of 68 when both are.
bool NewsDesk::tells_all_of(const MistakenNumber& before, const std::string& number,
                            std::string_view text) const {
  const Day day = book_.visit.day;
  const auto now = news_told_in(text, number, day, book_.language);
  const auto then = news_told_in(before.words, before.said.number, day, book_.language);
  return !then.empty() && std::all_of(then.begin(), then.end(), [&](const NewsSaid& piece) {
    return std::any_of(now.begin(), now.end(), [&](const NewsSaid& each) {
      return piece.news == each.news && piece.feet == each.feet;
    });
  });
}

/// "66 wrap off" was refused, and 68, which was proposed, is told of next.
Outcome NewsDesk::settle_number_slip(const NewsSaid& news, std::string_view text) {
  const std::optional<MistakenNumber> before = std::exchange(mistaken_number_, std::nullopt);
  if (!before || !book_.typed) return Done{};
  const bool proposed = std::any_of(
      before->proposed.begin(), before->proposed.end(),
      [&](const std::string& number) { return plain_number(number) == plain_number(news.number); });
  if (!proposed || !tells_all_of(*before, news.number, text)) return Done{};
  return settle_unread(book_, {before->said.number, before->words}, text);
}

/// "77 died; 77 sold": what is told the second time, as if it stood on a line of its own. Nothing
/// for what is told of her once.
std::optional<std::string> NewsDesk::left_in_another_way(const NewsSaid& news,
                                                         std::string_view text) {
  if (news.news != News::gone) return std::nullopt;
  const std::string number = plain_number(news.number);
  std::vector<std::string>& left = book_.last_line.left;
  const auto at = static_cast<std::size_t>(std::count(left.begin(), left.end(), number));
  left.push_back(number);
  const std::vector<std::string> ways = ways_she_left(text, number, book_.language);
  const bool is_told_again = at > 0 && at < ways.size() && !ways[at].empty();
  return is_told_again ? std::optional(number + ' ' + ways[at]) : std::nullopt;
}

Outcome NewsDesk::tell(const NewsSaid& news, std::string_view said_as) {
  const std::optional<std::string> again = left_in_another_way(news, said_as);
  const std::string_view text = again ? std::string_view(*again) : said_as;
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
  const auto of_new_one = question_of_new_one(*cow, news);
  if (!of_new_one) return of_new_one.faults();
  const bool is_new =
      is_asked_about(*cow, news) || tells_how_she_left(*cow, news, text) || of_new_one->has_value();
  if (!is_new && book_.before.was_told(*cow, news.news, news.feet, book_.typed)) {
    book_.answers
        .add(ReplyKind::there_already,
             "told before: " + quoted(book_.before.told_as(*cow, news.news)))
        .cow = plain_number(news.number);
    return Done{};
  }
  return tell_of(*cow, news, text);
}

/// What was told before answers what was asked since, or what could not be read.
bool NewsDesk::is_asked_about(CowId cow, const NewsSaid& news) const {
  if (!book_.typed) return false;
  if (!fixture_said(news.news)) return book_.before.was_asked_otherwise(cow, news.news);
  const std::vector<UnreadNews>& unread = book_.before.unread();
  return book_.before.was_asked_about(cow) ||
         std::any_of(unread.begin(), unread.end(), [&](const UnreadNews& slip) {
           return plain_number(slip.number) == plain_number(news.number);
         });
}

/// "301 died" of one who was told to be sold, or gone: that she left was told before, how was not.
bool NewsDesk::tells_how_she_left(CowId cow, const NewsSaid& news, std::string_view text) const {
  if (news.news != News::gone) return false;
  const std::string before = book_.before.told_as(cow, News::gone);
  const std::string now = how_she_left(text, news.number, book_.language);
  // "303 no, died" in a file that is given again: "303 sold" was taken back by it.
  const bool was_put_right =
      !book_.typed && book_.before.was_taken_back(plain_number(news.number), before);
  return !before.empty() && !now.empty() && !was_put_right &&
         now != how_she_left(before, news.number, book_.language);
}

/// "Still lame" of one who was told to walk sound at this visit, "died" of one who was told to be
/// sold: a dead cow was no sale, and only who was there knows. Said once more it holds.
std::string NewsDesk::told_otherwise(CowId cow, const NewsSaid& news, std::string_view text) const {
  std::string before;
  if (const std::optional<News> opposite = opposite_of(news.news))
    before = book_.before.told_as(cow, *opposite);
  if (tells_how_she_left(cow, news, text)) before = book_.before.told_as(cow, News::gone);
  const bool only_says_how =
      news.news == News::gone && how_she_left(before, news.number, book_.language).empty();
  if (before.empty() || only_says_how) return {};
  const std::string asked = "Told before at this visit: " + quoted(before) + ". Which holds? ";
  if (book_.typed) return asked + "Say this again if it does.";
  // Said again in a file it is there already.
  const std::string now = news.news == News::gone
                              ? how_she_left(text, news.number, book_.language)
                              : std::string(said_of_her_walk(news.news, book_.language));
  return asked + "If this does, say " +
         quoted(plain_number(news.number) + ' ' + offered_correction(now, book_.language)) + '.';
}

/// "101 blocks off" of one that was told to be still on while she stood in the crush: which holds
/// only who was there knows. Said once more it is off.
std::optional<std::string> NewsDesk::question_of_one_seen_on(const NewsSaid& news,
                                                             const Rows& past) const {
  const std::optional<FixtureSaid> said = fixture_said(news.news);
  if (!said || !is_off_after(said->step)) return std::nullopt;
  FootSet seen;
  for (const ActionRow& act : past.actions) {
    const std::optional<FixtureSaid> told = fixture_said(act.action);
    const bool is_it = told && told->fixture == said->fixture && act.foot &&
                       told->step == FixtureStep::left_on && act.visit == book_.visit.visit;
    if (is_it && (news.feet.empty() || news.feet.has(*act.foot))) seen.add(*act.foot);
  }
  const FootSet on_now = feet_carrying(said->fixture, past);
  for (const Foot foot : all_feet) {
    if (!on_now.has(foot)) seen.remove(foot);
  }
  if (seen.empty()) return std::nullopt;
  const bool is_one = seen.count() == 1;
  return "Her " + std::string(name_of(said->fixture)) + (is_one ? " on " : "s on ") + spoken(seen) +
         (is_one ? " was" : " were") + " said to be still on in the crush. " +
         (is_one ? "Is it" : "Are those") + " off, or still on? Say this again if " +
         (is_one ? "it is off." : "they are off.");
}

/// What is asked about one that is off is asked of what is on her then: another one, or none.
bool NewsDesk::is_answered_by(CowId cow, const NewsSaid& news, const std::string& words) const {
  const std::optional<FixtureSaid> said = fixture_said(news.news);
  if (said && is_off_after(said->step))
    return book_.before.is_asked_still(cow, news, words, book_.typed);
  return book_.typed && book_.before.was_asked(cow, words);
}

/// While she stands there with a new one that was put on in her turn: the news may be of that.
Result<std::optional<std::string>> NewsDesk::question_of_new_one(CowId cow,
                                                                 const NewsSaid& news) const {
  std::optional<std::string> asked;
  if (!crush_.cow || crush_.cow->cow != cow) return asked;
  const auto past = past_told(book_, cow);
  if (!past) return past.faults();
  asked = asked_of_new_one(crush_.cow->draft.turn, news, *past);
  return asked;
}

Outcome NewsDesk::tell_of(CowId cow, const NewsSaid& news, std::string_view text) {
  const std::string words(trimmed(text));
  const bool is_sure = is_answered_by(cow, news, words);
  const Outcome put_right = take_opposite_back(cow, news, text, is_sure);
  if (!put_right) return put_right;
  auto past = past_told(book_, cow);
  if (!past) return past.faults();
  const EntryId entry = book_.journal.fresh_id();
  const CowNews told{cow,
                     news,
                     effect_told(news, *past, {book_.visit.day, entry}, {book_.visit.day, is_sure}),
                     book_.visit.day,
                     book_.visit.visit,
                     words};
  const auto of_new_one = question_of_new_one(cow, news);
  if (!of_new_one) return of_new_one.faults();
  if (*of_new_one) return ask_about_news(told, **of_new_one);
  if (told.effect.unclear) return ask_about_news(told, *told.effect.unclear);
  if (const std::string other = told_otherwise(cow, news, text); !is_sure && !other.empty())
    return ask_about_news(told, other);
  const auto of_one_seen_on = question_of_one_seen_on(news, past->rows);
  if (!is_sure && of_one_seen_on) return ask_about_news(told, *of_one_seen_on);
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
  const Outcome answered = turns_.answer_by_news(cow, news, text);
  if (!answered) return answered;
  if (!crush_.cow || crush_.cow->cow != cow) return Done{};
  return look_again_at_past(book_, *crush_.cow);
}

/// That the vet came to a cow who waits for none, while another does, may be a slip of the number.
/// Asked once, the same words are asked about again, also when the other was seen to meanwhile.
Result<std::optional<std::string>> NewsDesk::ask_for_whom_the_vet(const CowNews& told) {
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
Outcome NewsDesk::ask_about_news(const CowNews& told, const std::string& question) {
  book_.answers.add(ReplyKind::question, question).cow = plain_number(told.said.number);
  if (!book_.before.asks_now(told.cow, told.said.news, told.words, book_.typed)) return Done{};
  CowNews asked = told;
  asked.effect.closes.clear();
  asked.effect.unclear = question;
  return add_news(book_.journal, asked, {book_.journal.fresh_id(), {}, book_.by, {}});
}

}  // namespace evenclaw
