#include "core/api/told.hpp"

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/api/answered_by_news.hpp"
#include "core/api/cow_names.hpp"
#include "core/api/cow_news.hpp"
#include "core/api/herd_log.hpp"
#include "core/api/identities.hpp"
#include "core/api/journal.hpp"
#include "core/api/news_taken_back.hpp"
#include "core/api/news_words.hpp"
#include "core/base/quotation.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/call_line/news_by_looks.hpp"
#include "core/trade/call_line/quoted_words.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_after_all.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {
namespace {

struct Telling {
  Ports ports;
  HerdId herd;
  Day day;
  std::string words;
  const Language& language;
  Journal journal;
  Reply reply;

  ReplyItem& answer(ReplyKind kind, const NewsSaid& news, std::string text) {
    ReplyItem item;
    item.kind = kind;
    item.cow = plain_number(news.number);
    item.words = std::move(text);
    reply.items.push_back(std::move(item));
    return reply.items.back();
  }
};

struct LastVisit {
  VisitId visit;
  Day day;
  bool is_now = false;  // of the day on which it is told
};

/// Up to that day; the day itself when there was none.
Result<LastVisit> last_visit(const Telling& telling) {
  const auto visits = select_as<VisitRow>(telling.ports.store, telling.herd, {}, {"day"});
  if (!visits) return visits.faults();
  LastVisit last{VisitId{}, telling.day};
  for (const VisitRow& visit : *visits) {
    if (visit.day <= telling.day) last = {visit.visit, visit.day, visit.day == telling.day};
  }
  return last;
}

void refuse(Telling& telling, const NewsSaid& news, const Fault& fault) {
  ReplyItem& item = telling.answer(ReplyKind::refused, news, fault.message);
  item.slug = fault.slug;
  item.token = news.number;
  item.remedy = fault.remedy;
}

Outcome tell(Telling& telling, const NewsSaid& news);

/// What was told of how she walks.
struct WalkToldBefore {
  std::optional<NewsStanding> against;  // what this speaks against, told on the same day
  bool is_said_again = false;           // it was asked which holds, and this is the answer
};

/// A day later she may well walk another way.
Result<WalkToldBefore> walk_told_before(const Telling& telling, CowId cow, const NewsSaid& news) {
  WalkToldBefore before;
  if (news.news != News::still_lame && news.news != News::walks_sound) return before;
  const auto standing =
      news_standing(telling.ports.store, telling.herd, cow, telling.journal.unwritten());
  if (!standing) return standing.faults();
  for (const NewsStanding& told : *standing) {
    if (told.day != telling.day) continue;
    const bool is_this = told.news.news == news.news;
    if (!told.is_asked && is_this) before = {};
    if (!is_this && is_instead_of(told.news, news)) before = {told, told.is_asked};
    if (told.is_asked && is_this && told.words == telling.words) before.is_said_again = true;
  }
  return before;
}

/// The later one holds; what else was told in the words of the other does, too.
Outcome put_right(Telling& telling, const NewsStanding& against, const NewsSaid& news) {
  const auto since = last_visit(telling);
  if (!since) return since.faults();
  const Outcome taken = take_back(telling.journal, against,
                                  {since->visit, telling.day, news.number, telling.words}, {});
  if (!taken) return taken;
  telling.answer(ReplyKind::told, news, taken_back_told(against));
  const std::string words = telling.words;
  telling.words = against.words + "; " + words;
  const auto told = news_told_in(against.words, news.number, telling.day, telling.language);
  for (const NewsSaid& still_so : told) {
    if (is_instead_of(still_so, news)) continue;
    const Outcome retold = tell(telling, still_so);
    if (!retold) return retold;
  }
  telling.words = words;
  return Done{};
}

std::string which_holds(const NewsStanding& against) {
  return "Told before on that day: " + quoted(against.words) +
         ". Which holds? Say this again if it does.";
}

bool tells_of_one_off(const NewsSaid& news) {
  const std::optional<FixtureSaid> said = fixture_said(news.news);
  return said && is_off_after(said->step);
}

/// Whether one put on at the visit of that day is meant: asked about once, the same words or the
/// foot say so, as in the recording.
Result<bool> was_asked_on_that_day(const Telling& telling, CowId cow, const NewsSaid& news) {
  const auto standing =
      news_standing(telling.ports.store, telling.herd, cow, telling.journal.unwritten());
  if (!standing) return standing.faults();
  return std::any_of(standing->begin(), standing->end(), [&](const NewsStanding& told) {
    const bool is_of_it = told.is_asked && told.day == telling.day && tells_of_one_off(told.news) &&
                          fixture_said(told.news.news)->fixture == fixture_said(news.news)->fixture;
    return is_of_it && (told.words == telling.words || !news.feet.empty());
  });
}

/// Of a visit of that day what was put on at it is asked about before it is taken to be off.
Result<NewsEffect> effect_of_telling(Telling& telling, HerdLog& log, CowId cow,
                                     const NewsSaid& news, const ToldOn& told) {
  const auto since = last_visit(telling);
  if (!since) return since.faults();
  const bool may_be_of_now = since->is_now && tells_of_one_off(news);
  const auto past = log.past_of(cow, may_be_of_now ? since->visit : VisitId{});
  if (!past) return past.faults();
  const auto asked = may_be_of_now ? was_asked_on_that_day(telling, cow, news) : Result<bool>(true);
  if (!asked) return asked.faults();
  return effect_told(news, *past, told, {since->day, *asked});
}

Outcome tell(Telling& telling, const NewsSaid& news) {
  const auto cow = find_cow(telling.ports.store, telling.herd, news.number, telling.day);
  if (!cow) {
    const Fault& fault = cow.faults().front();
    if (fault.slug != "cow-not-found") return cow.faults();
    refuse(telling, news, fault);
    return Done{};
  }
  const auto before = walk_told_before(telling, *cow, news);
  if (!before) return before.faults();
  const bool is_asked = before->against && !before->is_said_again;
  const Outcome right = before->against && before->is_said_again
                            ? put_right(telling, *before->against, news)
                            : Outcome(Done{});
  if (!right) return right;
  HerdLog log(telling.ports.store, telling.herd);
  log.also(telling.journal.unwritten());
  const auto past = log.past_of(*cow, VisitId{});
  if (!past) return past.faults();
  const EntryId entry = telling.journal.fresh_id();
  auto comes_of_it = effect_of_telling(telling, log, *cow, news, {telling.day, entry});
  if (!comes_of_it) return comes_of_it.faults();
  CowNews told{*cow, news, *std::move(comes_of_it), telling.day, std::nullopt, telling.words};
  const auto waiting = who_waits_for_the_vet(telling.ports.store, log, told);
  if (!waiting) return waiting.faults();
  if (!waiting->empty()) told.effect.unclear = vet_for_whom(*waiting);
  if (is_asked) {
    told.effect.closes.clear();
    told.effect.unclear = which_holds(*before->against);
  }
  const Outcome recorded = add_news(telling.journal, told, {entry});
  if (!recorded) return recorded;
  const NewsEffect& effect = told.effect;
  const Outcome answered = effect.unclear
                               ? Outcome(Done{})
                               : answer_by_news(telling.ports.store, telling.journal,
                                                {telling.herd, *cow, news, telling.words});
  if (!answered) return answered;
  if (effect.unclear) {
    telling.answer(ReplyKind::question, news, *effect.unclear);
    return Done{};
  }
  telling.answer(ReplyKind::told, news,
                 words_of_effect(news.news, effect.closes, effect.makes, *past));
  return Done{};
}

/// What was told of the wrong cow is taken back and told of the right one. Of one who is here still
/// only that she left is taken back.
Outcome mend(Telling& telling, const NewsMended& mended, const Language& language) {
  NewsSaid news;
  news.number = mended.number;
  const auto cow = find_cow(telling.ports.store, telling.herd, mended.number, telling.day);
  if (!cow) {
    const Fault& fault = cow.faults().front();
    if (fault.slug != "cow-not-found") return cow.faults();
    refuse(telling, news, fault);
    return Done{};
  }
  auto standing = news_standing(telling.ports.store, telling.herd, *cow, {});
  if (!standing) return standing.faults();
  if (!mended.right)
    std::erase_if(*standing, [](const NewsStanding& told) { return !told.is_gone; });
  if (standing->empty()) {
    refuse(telling, news, nothing_to_take_back(mended));
    return Done{};
  }
  const auto since = last_visit(telling);
  if (!since) return since.faults();
  const NewsStanding& last = standing->back();
  const std::string words = std::exchange(telling.words, last.words + "; " + telling.words);
  const Outcome taken =
      take_back(telling.journal, last, {since->visit, telling.day, mended.number, words}, {});
  if (!taken) return taken;
  telling.answer(ReplyKind::told, news, taken_back_told(last));
  for (NewsSaid still_so : news_told_in(last.words, mended.number, telling.day, language)) {
    if (!mended.right && still_so.news == News::gone) continue;
    if (mended.right) still_so.number = *mended.right;
    const Outcome told = tell(telling, still_so);
    if (!told) return told;
  }
  return Done{};
}

bool is_news_only(const Result<Line>& read) {
  return read && !read->clauses.empty() &&
         std::all_of(read->clauses.begin(), read->clauses.end(),
                     [](const Clause& clause) { return std::holds_alternative<NewsSaid>(clause); });
}

/// Told between visits it is news: "416 walks sound", which in the crush is said of her who stands
/// there, is read as behind the word that leads news in. What is no news either way keeps the
/// faults, and their places, of the words as they were said.
Result<Line> read_as_news(std::string_view line, Day day, std::span<const std::string> names,
                          const Language& language) {
  LineContext context;
  context.visit_day = day;
  auto read = read_line(line, context, language);
  if (is_news_only(read)) return read;
  const std::string led_in =
      std::string(language.say(TermKind::news_lead)) + ' ' + std::string(line);
  auto as_news = read_line(led_in, context, language);
  if (is_news_only(as_news)) return as_news;
  auto by_looks = news_by_looks(line, names, context, language);
  return by_looks ? Result<Line>(*std::move(by_looks)) : read;
}

/// What cows without a number are called by.
Result<std::vector<std::string>> names_without_number(Store& store, HerdId herd) {
  const auto rows = select_as<CowRow>(store, herd);
  if (!rows) return rows.faults();
  std::vector<std::string> names;
  for (const CowRow& row : *rows) {
    const std::string name = name_without_number(row);
    if (name.empty()) continue;
    names.push_back(name);
    names.push_back(dated(name, row.last_seen));
  }
  return names;
}

}  // namespace

Result<Reply> take_news(const Ports& ports, const Herd& herd, Day day, std::string_view line,
                        const Language& language) {
  const auto mended = news_mended_in(line, language);
  const auto names = names_without_number(ports.store, herd.herd);
  if (!names) return names.faults();
  const auto read = mended ? Result<Line>(Line{}) : read_as_news(line, day, *names, language);
  if (!read) return read.faults();
  if (!mended && !is_news_only(read)) {
    return Fault{"call-not-understood",
                 "this is not news of cows: it belongs to a visit",
                 std::string(trimmed(line)),
                 0,
                 0,
                 with_quoted_words("Say such as \"{412, 513 wraps off; 77 gone; 620 still lame}\".",
                                   language)};
  }
  auto journal = Journal::open(ports, herd.herd.value);
  if (!journal) return journal.faults();
  Telling telling{ports,    herd.herd,           day, std::string(trimmed(line)),
                  language, *std::move(journal), {}};
  const Outcome mending = mended ? mend(telling, *mended, language) : Outcome(Done{});
  if (!mending) return mending.faults();
  for (const Clause& clause : read->clauses) {
    const Outcome told = tell(telling, std::get<NewsSaid>(clause));
    if (!told) return told.faults();
  }
  if (telling.journal.unwritten().empty()) return telling.reply;
  const auto written = telling.journal.write();
  if (!written) return written.faults();
  return telling.reply;
}

}  // namespace evenclaw
