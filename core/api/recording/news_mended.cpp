// News that was told of the wrong cow is of the right one, and who was said to be gone is here.
#include <algorithm>
#include <utility>

#include "core/api/behind_words.hpp"
#include "core/api/news_taken_back.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/how_she_left.hpp"
#include "core/api/recording/mended_and_more.hpp"
#include "core/api/recording/news_desk.hpp"
#include "core/api/recording/open_questions.hpp"
#include "core/api/recording/walks_by.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/put_on_here.hpp"

namespace evenclaw {

namespace {

/// That a cow left is told of a day, and of no visit.
bool is_told_at(const NewsStanding& told, const Visit& visit) {
  return told.visit ? told.visit == visit.visit : told.is_gone && told.day == visit.day;
}

/// The last line that told what may be meant, with all it told.
std::vector<NewsStanding> told_last(std::vector<NewsStanding> standing, bool is_of_gone,
                                    const Visit& visit) {
  std::erase_if(standing, [&](const NewsStanding& told) {
    return is_of_gone ? !told.is_gone : !is_told_at(told, visit);
  });
  if (standing.empty()) return standing;
  const std::string words = standing.back().words;
  std::erase_if(standing, [&](const NewsStanding& told) { return told.words != words; });
  return standing;
}

Fault whose_number(const CowSaid& cow, const std::string& told, const std::string& right,
                   const Language& language) {
  const std::string mending = offered_correction(right, language);
  const std::string of_her =
      cow.known == CowKnown::numbered
          ? "\"" + plain_number(cow.number) + ' ' + mending + "\""
          : "call what else was found on her first, then \"" + mending + "\"";
  return {.slug = "call-impossible",
          .message =
              "It is unclear whether that is the number of who stands there, or of whom the news "
              "is.",
          .remedy = "The news: \"" + told + ' ' + mending + "\"; her number: " + of_her + "."};
}

Fault which_of_them(const std::vector<std::string>& numbers, const std::string& right,
                    const Language& language) {
  return {.slug = "call-impossible",
          .message = "News was told of several cows, and it is not clear whose number was wrong.",
          .remedy = "Say the wrong number first: \"" + numbers.front() + ' ' +
                    offered_correction(right, language) + "\"."};
}

bool is_instead_of_one(const NewsSaid& told, const std::vector<NewsSaid>& now) {
  return std::any_of(now.begin(), now.end(),
                     [&](const NewsSaid& each) { return is_instead_of(told, each); });
}

/// The words that are printed for what became of a wrap or block; "" for other news.
std::string words_of_fate(News news, const Language& language) {
  const std::optional<FixtureSaid> told = fixture_said(news);
  for (const auto& each : EnumWords<ActionKind>::table) {
    if (told && fixture_said(each.value) == told)
      return std::string(language.say(facts_of(each.value).said_as, each.value));
  }
  return {};
}

/// "620 no, RH" and "412 no, still on" leave out what was told: "620 RH still lame", "412 wrap
/// still on", "412 RH wrap still on".
std::vector<std::string> with_what_was_told(const NewsInstead& instead, News told,
                                            const Language& language) {
  if (told == News::still_lame)
    return {instead.words + ' ' + std::string(language.say(TermKind::news, told))};
  const std::string fate = words_of_fate(told, language);
  if (fate.empty()) return {};
  const std::string rest(trimmed(instead.words.substr(instead.number.size())));
  const std::vector<Token> tokens = spoken_tokens(rest, language);
  const std::size_t behind = behind_feet(tokens, 0, language);
  const std::size_t cut = behind < tokens.size() ? tokens[behind].offset : rest.size();
  return {instead.words + ' ' + fate, instead.number + ' ' + rest.substr(0, cut) +
                                          fate.substr(0, fate.find(' ')) + ' ' + rest.substr(cut)};
}

/// What the last line of this visit told of her, the last piece first.
std::vector<News> told_by_last_line(const std::vector<NewsStanding>& standing, const Visit& visit) {
  std::vector<News> told;
  std::string words;
  for (auto each = standing.rbegin(); each != standing.rend(); ++each) {
    if (!is_told_at(*each, visit) || (!told.empty() && each->words != words)) continue;
    words = each->words;
    told.push_back(each->news.news);
  }
  return told;
}

/// "Still on" behind "wrap and block off" may be of either.
bool tells_of_wrap_and_block(const std::vector<News>& told) {
  const auto tells_of = [&](Fixture fixture) {
    return std::any_of(told.begin(), told.end(), [&](News news) {
      const std::optional<FixtureSaid> said = fixture_said(news);
      return said && said->fixture == fixture;
    });
  };
  return tells_of(Fixture::wrap) && tells_of(Fixture::block);
}

/// The lines it may stand for: as it is, and with what was told of her last at this visit.
std::vector<std::string> may_stand_for(const NewsInstead& instead,
                                       const std::vector<NewsStanding>& standing,
                                       const Visit& visit, const Language& language) {
  std::vector<std::string> lines = {instead.words};
  const std::vector<News> told = told_by_last_line(standing, visit);
  const bool is_of_either = tells_of_wrap_and_block(told);
  for (const News news : told) {
    if (is_of_either && fixture_said(news)) continue;
    for (std::string& line : with_what_was_told(instead, news, language))
      lines.push_back(std::move(line));
  }
  return lines;
}

/// What the first of the lines tells that tells any.
template <class ToldIn>
std::vector<NewsSaid> first_told(const std::vector<std::string>& lines, ToldIn told_in) {
  for (const std::string& line : lines) {
    std::vector<NewsSaid> told = told_in(line);
    if (!told.empty()) return told;
  }
  return {};
}

/// One tells that it is off, and one that it is still on, of a foot that both name.
bool speaks_against_one(const NewsSaid& told, const std::vector<NewsSaid>& now) {
  return std::any_of(now.begin(), now.end(), [&](const NewsSaid& each) {
    return tells_the_other_way(told, each) &&
           std::any_of(all_feet.begin(), all_feet.end(),
                       [&](Foot foot) { return told.feet.has(foot) && each.feet.has(foot); });
  });
}

/// "No, wrap still on" right behind news of one cow is of her.
std::string with_her_number(std::string_view text, const std::vector<std::string>& told,
                            const Language& language) {
  const std::string said(trimmed(text));
  if (told.size() != 1 || !is_utf8(said)) return said;
  const Phrase* first = language.longest_match(spoken_tokens(said, language), 0).phrase;
  const bool corrects = first != nullptr && first->kind == TermKind::correction;
  return corrects ? told.front() + ' ' + said : said;
}

}  // namespace

/// "No, 307" right behind news: its number, unless it could be that of who stands in the crush, or
/// the news is of one who was called, and she may be meant.
Result<bool> NewsDesk::number_of_news_mended(std::string_view text,
                                             const std::vector<std::string>& told) {
  const std::optional<std::string> right = number_put_right_in(text, book_.language);
  if (!right || told.empty()) return false;
  CowSaid her;
  her.number = told.front();
  if (!crush_.cow && !book_.before.turns_called(her).empty()) return false;
  if (crush_.cow || told.size() > 1) {
    Fault fault =
        crush_.cow ? whose_number(crush_.cow->draft.turn.cow, told.front(), *right, book_.language)
                   : which_of_them(told, *right, book_.language);
    const Outcome refused = refuse_mending(book_, crush_, told.front(), std::move(fault), text);
    if (!refused) return refused.faults();
    return true;
  }
  return mend_news({told.front(), right}, text);
}

/// True when the line takes back what was told of a cow, or tells it of another one.
Result<bool> NewsDesk::is_mended_by(std::string_view text, const std::vector<std::string>& told) {
  const std::string of_her =
      crush_.cow ? std::string(text) : with_her_number(text, told, book_.language);
  const auto refused = refuse_mended_and_more(book_, crush_, of_her);
  if (!refused || *refused) return refused;
  if (const auto denied = news_denied_in(text, book_.language)) return deny_news(*denied, text);
  if (const auto instead = news_instead_in(of_her, book_.language)) {
    auto taken = mend_by_other_news(*instead, of_her);
    if (!taken || *taken) return taken;
  }
  const std::optional<NewsMended> mended = news_mended_in(text, book_.language);
  if (!mended) return number_of_news_mended(text, told);
  CowSaid cow;
  cow.number = mended->number;
  // Who was called is mended as a cow, not as news.
  const bool was_called =
      stands_there(book_, crush_, cow) || !book_.before.turns_called(cow).empty();
  if (mended->right && was_called) return false;
  return mend_news(*mended, text);
}

/// "300 no, no block gone" of one who was not in the crush. What else was told of her in the same
/// words holds.
Result<bool> NewsDesk::deny_news(const NewsDenied& denied, std::string_view text) {
  CowSaid her;
  her.number = denied.number;
  const std::optional<CowId> cow = book_.finder.carrier(denied.number);
  if (!cow || stands_there(book_, crush_, her) || !book_.before.turns_called(her).empty())
    return false;
  const std::string number = plain_number(denied.number);
  if (!book_.typed && book_.before.is_taken_back_again(number, text)) {
    book_.answers.add(ReplyKind::there_already, "told before").cow = number;
    return true;
  }
  auto standing =
      news_standing(book_.ports.store, book_.visit.herd, *cow, book_.journal.unwritten());
  if (!standing) return standing.faults();
  std::vector<NewsSaid> told;
  const auto is_of_it = [&](const NewsStanding& news) {
    told = news_told_in(news.words, denied.number, book_.visit.day, book_.language);
    return news.visit == book_.visit.visit &&
           std::any_of(told.begin(), told.end(),
                       [&](const NewsSaid& each) { return is_denied(denied, each.news); });
  };
  const auto last = std::find_if(standing->rbegin(), standing->rend(), is_of_it);
  if (last == standing->rend() && book_.before.was_taken_back(number, text)) {
    book_.answers.add(ReplyKind::there_already, "told before").cow = number;
    return true;
  }
  if (last == standing->rend()) return false;
  Outcome taken = settle_news_said_again(book_, who_is_meant(crush_, turns_), text);
  if (taken) taken = take_news_back({*last}, number, text);
  const std::string both = last->words + "; " + std::string(trimmed(text));
  for (const NewsSaid& news : told) {
    if (taken && !is_denied(denied, news.news)) taken = tell(news, both);
  }
  if (!taken) return taken.faults();
  return true;
}

/// What the words tell of that number; "308 not lame" that she walks sound.
std::vector<NewsSaid> NewsDesk::told_in(const std::string& words, const std::string& number) const {
  std::vector<NewsSaid> told = news_told_in(words, number, book_.visit.day, book_.language);
  if (!told.empty()) return told;
  const auto line = read_in_herd(book_, words, {book_.visit.day, false, 0});
  const auto news = line ? tells_that_she_walks_sound(*line) : std::nullopt;
  if (news) told.push_back(*news);
  return told;
}

/// "224 wraps off" and then "224 no, RH wrap still on": that they are off holds of her other feet.
/// Nothing where the feet that are named now are none of those.
Result<std::optional<NewsSaid>> NewsDesk::left_of(const NewsSaid& before,
                                                  const std::vector<NewsSaid>& now, CowId cow) {
  std::optional<NewsSaid> left;
  FootSet named;
  for (const NewsSaid& each : now) {
    if (!is_instead_of(before, each)) continue;
    if (!tells_the_other_way(before, each)) return left;
    named.add(each.feet);
  }
  FootSet feet = before.feet;
  if (feet.empty()) {
    const auto past = past_told(book_, cow);
    if (!past) return past.faults();
    feet = feet_carrying(fixture_said(before.news)->fixture, past->rows);
  }
  const int told = feet.count();
  for (const Foot foot : all_feet) {
    if (named.has(foot)) feet.remove(foot);
  }
  if (feet.empty() || feet.count() == told) return left;
  left = before;
  // "Wrap off" was of one of them: which is asked again.
  const bool is_of_one = before.feet.empty() && !before.all;
  if (!is_of_one || feet.count() == 1) left->feet = feet;
  return left;
}

/// What else the line told that is taken back, in the words of both lines.
Outcome NewsDesk::tell_what_else(const std::vector<NewsSaid>& told,
                                 const std::vector<NewsSaid>& now, CowId cow,
                                 std::string_view both) {
  for (const NewsSaid& before : told) {
    std::optional<NewsSaid> still_so = before;
    if (is_instead_of_one(before, now)) {
      auto left = left_of(before, now, cow);
      if (!left) return left.faults();
      still_so = *std::move(left);
    }
    const Outcome retold = still_so ? tell(*still_so, both) : Outcome(Done{});
    if (!retold) return retold;
  }
  return Done{};
}

/// What those words told of her: as it is kept, where the words alone do not say it any more.
std::vector<NewsSaid> NewsDesk::told_by(const NewsStanding& last,
                                        const std::vector<NewsStanding>& standing,
                                        const std::string& number) const {
  std::vector<NewsSaid> told = told_in(last.words, number);
  if (!told.empty()) return told;
  for (const NewsStanding& each : standing) {
    if (each.words != last.words || each.is_asked) continue;
    told.push_back(each.news);
    told.back().number = number;
  }
  return told;
}

/// "228 still lame", and "228 walks sound", which was asked about and is said once more: it holds,
/// and what it speaks against does not. What else was told in the same words does. So it is when
/// the first is said once more.
Outcome NewsDesk::take_opposite_back(CowId cow, const NewsSaid& news, std::string_view text,
                                     bool is_sure) {
  const std::optional<News> opposite = opposite_of(news.news);
  if (!opposite) return Done{};
  const bool was_told = !book_.before.told_as(cow, *opposite).empty();
  const bool was_asked = book_.typed && book_.before.was_asked_otherwise(cow, news.news);
  if (was_told ? !is_sure : !was_asked) return Done{};
  const auto standing =
      news_standing(book_.ports.store, book_.visit.herd, cow, book_.journal.unwritten());
  if (!standing) return standing.faults();
  const auto last =
      std::find_if(standing->rbegin(), standing->rend(), [&](const NewsStanding& told) {
        return told.news.news == *opposite && told.is_asked != was_told &&
               is_told_at(told, book_.visit);
      });
  if (last == standing->rend()) return Done{};
  const std::string number = plain_number(news.number);
  const Outcome taken = take_news_back({*last}, number, text);
  if (!taken) return taken;
  const std::string both = last->words + "; " + std::string(trimmed(text));
  return tell_what_else(told_by(*last, *standing, number), {news}, cow, both);
}

/// "308 no, walks sound" of one who was told to be lame still, and who was not in the crush.
Result<bool> NewsDesk::mend_by_other_news(const NewsInstead& instead, std::string_view text) {
  CowSaid her;
  her.number = instead.number;
  const std::optional<CowId> cow = book_.finder.carrier(instead.number);
  if (!cow || stands_there(book_, crush_, her)) return false;
  // Who was called is mended as a cow, not as news.
  if (!book_.before.turns_called(her).empty()) return false;
  const std::string number = plain_number(instead.number);
  auto standing =
      news_standing(book_.ports.store, book_.visit.herd, *cow, book_.journal.unwritten());
  if (!standing) return standing.faults();
  const std::vector<NewsSaid> now =
      first_told(may_stand_for(instead, *standing, book_.visit, book_.language),
                 [&](const std::string& line) { return told_in(line, instead.number); });
  if (now.empty()) return false;
  const std::string how = how_she_left(instead.words, instead.number, book_.language);
  const auto is_meant = [&](const NewsStanding& told) {
    // "306 no, gone" tells nothing else of one who is gone: it takes that back.
    const bool tells_how =
        !how.empty() && how != how_she_left(told.words, instead.number, book_.language);
    if (told.news.news == News::gone && !tells_how) return false;
    return is_told_at(told, book_.visit) && is_instead_of_one(told.news, now);
  };
  // Of her wraps the one on that foot is meant before another.
  auto last = std::find_if(standing->rbegin(), standing->rend(), [&](const NewsStanding& told) {
    return is_meant(told) && speaks_against_one(told.news, now);
  });
  if (last == standing->rend()) last = std::find_if(standing->rbegin(), standing->rend(), is_meant);
  const bool is_again = !book_.typed && book_.before.is_taken_back_again(number, text);
  if (is_again || (last == standing->rend() && book_.before.was_taken_back(number, text))) {
    book_.answers.add(ReplyKind::there_already, "told before").cow = number;
    return true;
  }
  if (last == standing->rend()) return false;
  Outcome taken = settle_news_said_again(book_, who_is_meant(crush_, turns_), text);
  if (taken) taken = take_news_back({*last}, number, text);
  const std::string both = last->words + "; " + std::string(trimmed(text));
  if (taken) taken = tell_what_else(told_by(*last, *standing, number), now, *cow, both);
  for (const NewsSaid& each : now) {
    if (taken) taken = tell(each, text);
  }
  if (!taken) return taken.faults();
  return true;
}

Result<bool> NewsDesk::mend_news(const NewsMended& mended, std::string_view text) {
  const std::optional<CowId> cow = book_.finder.carrier(mended.number);
  if (!cow) return mended.right ? mend_news_of_nobody(mended, text) : Result<bool>(false);
  auto standing =
      news_standing(book_.ports.store, book_.visit.herd, *cow, book_.journal.unwritten());
  if (!standing) return standing.faults();
  const std::vector<NewsStanding> told =
      told_last(*std::move(standing), !mended.right, book_.visit);
  const std::string number = plain_number(mended.number);
  const bool is_again = !book_.typed && book_.before.is_taken_back_again(number, text);
  if (is_again || (told.empty() && !book_.typed && book_.before.was_taken_back(number, text))) {
    book_.answers.add(ReplyKind::there_already, "told before").cow = number;
    return true;
  }
  if (told.empty() && mended.right) return false;
  if (told.empty()) {
    refuse(book_, crush_, text, {nothing_to_take_back(mended)});
    return true;
  }
  Outcome taken = settle_news_said_again(book_, who_is_meant(crush_, turns_), text);
  if (taken) taken = take_news_back(told, number, text);
  if (!taken) return taken.faults();
  const std::string& words = told.front().words;
  const Outcome retold = mended.right ? tell_instead(words, mended, text)
                                      : tell_all_but_gone(words, mended.number, text);
  if (!retold) return retold.faults();
  return true;
}

/// "222 block gone; sold" of one who is here still: her block is gone all the same.
Outcome NewsDesk::tell_all_but_gone(const std::string& words, const std::string& number,
                                    std::string_view text) {
  const std::string both = words + "; " + std::string(trimmed(text));
  for (const NewsSaid& news : news_told_in(words, number, book_.visit.day, book_.language)) {
    if (news.news == News::gone) continue;
    const Outcome told = tell(news, both);
    if (!told) return told;
  }
  return Done{};
}

Outcome NewsDesk::take_news_back(const std::vector<NewsStanding>& told, const std::string& number,
                                 std::string_view text) {
  const NewsStanding& first = told.front();
  const Outcome taken =
      take_back(book_.journal, first,
                {book_.visit.visit, book_.visit.day, number, std::string(text)}, book_.by);
  if (!taken) return taken;
  book_.before.take_back(first.cow, first.words, number, text);
  book_.finder.now_here(first.cow);
  // "No, 306" that nobody could be sure of was said of the same news.
  const std::vector<UnreadNews> unread = book_.before.unread();
  for (const UnreadNews& slip : unread) {
    const bool is_of_it = plain_number(slip.number) == plain_number(number) &&
                          number_put_right_in(slip.words, book_.language);
    const Outcome settled = is_of_it ? settle_unread(book_, slip, text) : Outcome(Done{});
    if (!settled) return settled;
  }
  book_.answers.add(ReplyKind::told, taken_back_told(first)).cow = number;
  return crush_.cow && crush_.cow->cow == first.cow ? look_again_at_past(book_, *crush_.cow)
                                                    : Outcome(Done{});
}

/// The same of the right one, in the words of both lines.
Outcome NewsDesk::tell_instead(const std::string& words, const NewsMended& mended,
                               std::string_view text) {
  const std::string both = words + "; " + std::string(trimmed(text));
  const std::vector<NewsSaid> all =
      news_told_in(words, mended.number, book_.visit.day, book_.language);
  for (NewsSaid news : all) {
    news.number = *mended.right;
    const Outcome told = tell(news, both);
    if (!told) return told;
  }
  if (!all.empty()) return Done{};
  book_.answers
      .add(ReplyKind::question, "What was told of " + mended.number +
                                    " is not understood. What is it of " + *mended.right + '?')
      .cow = plain_number(*mended.right);
  return keep_as_unread(book_, {*mended.right, both},
                        "What was told of her was not understood. What is "
                        "it?");
}

/// "66 wrap off" was of nobody: "66 no, 68" says of whom.
Result<bool> NewsDesk::mend_news_of_nobody(const NewsMended& mended, std::string_view text) {
  const std::vector<UnreadNews> unread = book_.before.unread();
  const auto last = std::find_if(unread.rbegin(), unread.rend(), [&](const UnreadNews& news) {
    return plain_number(news.number) == plain_number(mended.number) &&
           !news_told_in(news.words, mended.number, book_.visit.day, book_.language).empty();
  });
  if (last == unread.rend()) return false;
  const Outcome settled = settle_unread(book_, *last, text);
  if (!settled) return settled.faults();
  const Outcome told = tell_instead(last->words, mended, text);
  if (!told) return told.faults();
  return true;
}

}  // namespace evenclaw
