#include "core/api/news_taken_back.hpp"

#include <algorithm>
#include <iterator>
#include <variant>

#include "core/api/behind_words.hpp"
#include "core/api/herd_log.hpp"
#include "core/api/still_untold.hpp"
#include "core/base/text.hpp"
#include "core/log/bodies.hpp"
#include "core/log/body.hpp"
#include "core/log/news_bodies.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

/// What stands in a line beside commas: "no" and "not", numbers, that she is gone or here.
enum class Heard { no, number, gone, here, other };

struct HeardWord {
  Heard what = Heard::other;
  std::string number;
  std::optional<News> news = {};
};

/// "Block gone", said of an act as well, is news of a block.
std::optional<News> news_said_by(const Phrase* phrase) {
  if (phrase == nullptr) return std::nullopt;
  if (phrase->kind == TermKind::news) return static_cast<News>(phrase->value);
  if (phrase->kind != TermKind::block_act && phrase->kind != TermKind::wrap_act) {
    return std::nullopt;
  }
  constexpr News all[] = {News::wrap_off,  News::wrap_came_off,  News::wrap_still_on,
                          News::block_off, News::block_came_off, News::block_still_on};
  const auto act = fixture_said(static_cast<ActionKind>(phrase->value));
  const auto same = std::find_if(std::begin(all), std::end(all),
                                 [&act](News news) { return act && fixture_said(news) == act; });
  return same == std::end(all) ? std::nullopt : std::optional(*same);
}

Heard heard_as(const Phrase* phrase) {
  if (phrase == nullptr) return Heard::other;
  switch (phrase->kind) {
    case TermKind::correction:
    case TermKind::negation:
      return Heard::no;
    case TermKind::gone:
      return Heard::gone;
    case TermKind::news:
      return static_cast<News>(phrase->value) == News::gone ? Heard::gone : Heard::other;
    case TermKind::still_here:
      return Heard::here;
    default:
      return Heard::other;
  }
}

std::vector<HeardWord> heard_in(std::string_view text, const Language& language) {
  std::vector<HeardWord> heard;
  if (!is_utf8(text)) return heard;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  std::size_t at = 0;
  while (at < tokens.size()) {
    const Token& token = tokens[at];
    const Language::Match match = language.longest_match(tokens, at);
    at += std::max<std::size_t>(match.word_count, 1);
    if (token.kind == TokenKind::comma) continue;
    if (token.kind != TokenKind::number) {
      heard.push_back({heard_as(match.phrase), {}, news_said_by(match.phrase)});
      continue;
    }
    const bool is_in_words = !token.folded.empty();
    heard.push_back({Heard::number, is_in_words
                                        ? token.folded
                                        : std::string(text.substr(token.offset, token.length))});
  }
  return heard;
}

std::string without_commas(std::string_view words) {
  std::string kept(trimmed(words));
  while (!kept.empty() && (kept.back() == ',' || kept.back() == ' ')) kept.pop_back();
  return kept;
}

std::size_t count_of_no(const std::vector<HeardWord>& heard, std::size_t from) {
  std::size_t at = from;
  while (at < heard.size() && heard[at].what == Heard::no) ++at;
  return at - from;
}

void add_standing(std::vector<NewsStanding>& standing, const Entry& entry) {
  if (const auto told = body_as<TaskClosedBody>(entry)) {
    standing.push_back({told->cow, told->day, told->visit, told->words, false,
                        told->asked.has_value(), NewsSaid{{}, told->news, told->feet, false}});
  }
  if (const auto left = body_as<CowLeft>(entry)) {
    standing.push_back({left->cow, left->day, std::nullopt, left->words, true, false,
                        NewsSaid{{}, News::gone, {}, false}});
  }
  const auto settled = body_as<QuestionSettled>(entry);
  if (!settled || !settled->about || !settled->cow) return;
  std::erase_if(standing, [&](const NewsStanding& told) {
    return told.cow == *settled->cow && told.words == *settled->about;
  });
}

std::vector<std::string> kinds_that_matter() {
  return {std::string(TaskClosedBody::kind), std::string(CowLeft::kind),
          std::string(QuestionSettled::kind)};
}

std::vector<NewsSaid> all_news_of(const Result<Line>& line) {
  std::vector<NewsSaid> news;
  if (!line) return news;
  for (const Clause& clause : line->clauses) {
    if (const auto* said = std::get_if<NewsSaid>(&clause)) news.push_back(*said);
  }
  return news;
}

std::vector<NewsSaid> news_of(const std::vector<NewsSaid>& all, const std::string& number) {
  std::vector<NewsSaid> news;
  std::copy_if(all.begin(), all.end(), std::back_inserter(news), [&](const NewsSaid& said) {
    return plain_number(said.number) == plain_number(number);
  });
  return news;
}

/// Who only walked by was called as if she stood there.
std::vector<NewsSaid> read_as_told(std::string_view words, Day day, const Language& language) {
  LineContext context;
  context.visit_day = day;
  std::vector<NewsSaid> news = all_news_of(read_line(words, context, language));
  if (!news.empty()) return news;
  const std::string lead(language.say(TermKind::news_lead));
  return all_news_of(read_line(lead + ' ' + std::string(words), context, language));
}

/// "305 wrap off; no, 304": what was told, and what mended it.
struct MendedWords {
  std::string_view told;
  std::string_view mending;
};

MendedWords mended_words(std::string_view words) {
  const std::size_t cut = words.rfind(';');
  if (cut == std::string_view::npos) return {{}, trimmed(words)};
  return {trimmed(words.substr(0, cut)), trimmed(words.substr(cut + 1))};
}

/// The number a mending is of; "" where several were told of, or it cannot be known.
std::string number_told(std::string_view words, Day day, const Language& language) {
  const std::vector<NewsSaid> news = read_as_told(words, day, language);
  if (!news.empty()) {
    const std::string& first = news.front().number;
    return news_of(news, first).size() == news.size() ? first : std::string();
  }
  const std::string_view mending = mended_words(words).mending;
  if (const auto alone = number_put_right_in(mending, language)) return *alone;
  const auto both = news_mended_in(mending, language);
  return both ? both->right.value_or("") : std::string();
}

/// "305 wrap off; no, 304" tells of 304 what its front tells of 305, "300 wrap off, block gone; 300
/// no, no block gone" of 300 what is left, "301 no, sold" what is told instead.
std::vector<NewsSaid> told_once_mended(std::string_view words, const std::string& number, Day day,
                                       const Language& language) {
  const auto [told, mending] = mended_words(words);
  const auto alone = number_put_right_in(mending, language);
  const auto both = news_mended_in(mending, language);
  const auto right = alone || !both ? alone : both->right;
  if (right && plain_number(*right) == plain_number(number)) {
    const std::string wrong = both ? both->number : number_told(told, day, language);
    std::vector<NewsSaid> news = news_told_in(told, wrong, day, language);
    for (NewsSaid& each : news) each.number = number;
    return news;
  }
  const auto instead = news_instead_in(mending, language);
  const auto now = instead ? news_of(read_as_told(instead->words, day, language), number)
                           : std::vector<NewsSaid>();
  if (told.empty()) return now;
  const auto denied = news_denied_in(mending, language);
  const bool is_here = both && !both->right;
  if (now.empty() && !denied && !is_here) return {};
  std::vector<NewsSaid> news = news_told_in(told, number, day, language);
  std::erase_if(news, [&](const NewsSaid& each) {
    return (denied && is_denied(*denied, each.news)) || (is_here && each.news == News::gone) ||
           std::any_of(now.begin(), now.end(),
                       [&](const NewsSaid& other) { return is_instead_of(each, other); });
  });
  return news;
}

}  // namespace

std::optional<NewsMended> news_mended_in(std::string_view text, const Language& language) {
  const std::vector<HeardWord> heard = heard_in(text, language);
  const std::size_t first = count_of_no(heard, 0);
  if (first >= heard.size() || heard[first].what != Heard::number) return std::nullopt;
  const std::size_t denied = count_of_no(heard, first + 1);
  const std::size_t last = first + 1 + denied;
  if (last + 1 != heard.size()) return std::nullopt;
  const std::string& number = heard[first].number;
  switch (heard[last].what) {
    case Heard::here:
      return NewsMended{number, std::nullopt};
    case Heard::gone:
      if (denied > 0) return NewsMended{number, std::nullopt};
      return std::nullopt;
    case Heard::number:
      if (first == 0 && denied > 0) return NewsMended{number, heard[last].number};
      return std::nullopt;
    case Heard::no:
    case Heard::other:
      return std::nullopt;
  }
  return std::nullopt;
}

std::optional<NewsDenied> news_denied_in(std::string_view text, const Language& language) {
  constexpr std::size_t twice = 2;  // "no block gone" alone could mend something or deny it
  const std::vector<HeardWord> heard = heard_in(text, language);
  if (heard.empty() || heard.front().what != Heard::number) return std::nullopt;
  const std::size_t denied = count_of_no(heard, 1);
  const bool is_one = denied >= twice && denied + twice == heard.size() && heard.back().news;
  if (!is_one || heard.back().what == Heard::gone) return std::nullopt;
  return NewsDenied{heard.front().number, *heard.back().news};
}

std::optional<NewsInstead> news_instead_in(std::string_view text, const Language& language) {
  if (!is_utf8(text)) return std::nullopt;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  if (tokens.empty() || tokens.front().kind != TokenKind::number) return std::nullopt;
  const std::size_t first_foot = behind_commas(tokens, 1);
  const std::size_t no = behind_commas(tokens, behind_feet(tokens, first_foot, language));
  const Language::Match said = language.longest_match(tokens, no);
  if (said.phrase == nullptr || said.phrase->kind != TermKind::correction) return std::nullopt;
  const std::size_t rest = behind_commas(tokens, no + said.word_count);
  if (rest >= tokens.size() || tokens[rest].kind != TokenKind::word) return std::nullopt;
  const Heard first = heard_as(language.longest_match(tokens, rest).phrase);
  // "306 no sold": she was not.
  const bool is_denied = first == Heard::gone && rest == no + said.word_count;
  // "620 LH no, RH": whether only that foot was wrong is not said.
  const bool names_two = no > first_foot && behind_feet(tokens, rest, language) > rest;
  if (first == Heard::no || is_denied || names_two) return std::nullopt;
  const Token& number = tokens.front();
  const std::string hers(number.folded.empty() ? text.substr(number.offset, number.length)
                                               : std::string_view(number.folded));
  const std::string_view feet =
      no > first_foot
          ? text.substr(tokens[first_foot].offset, tokens[no].offset - tokens[first_foot].offset)
          : std::string_view();
  const std::string where = feet.empty() ? "" : without_commas(feet) + ' ';
  return NewsInstead{hers,
                     hers + ' ' + where + std::string(trimmed(text.substr(tokens[rest].offset)))};
}

bool is_instead_of(const NewsSaid& told, const NewsSaid& now) {
  if (told.news == now.news && told.feet == now.feet) return now.news == News::gone;
  const auto is_of_her_walk = [](News news) {
    return news == News::still_lame || news == News::walks_sound;
  };
  if (is_of_her_walk(told.news) && is_of_her_walk(now.news)) return true;
  const std::optional<FixtureSaid> before = fixture_said(told.news);
  const std::optional<FixtureSaid> after = fixture_said(now.news);
  return before && after && before->fixture == after->fixture;
}

bool tells_the_other_way(const NewsSaid& told, const NewsSaid& now) {
  const std::optional<FixtureSaid> before = fixture_said(told.news);
  const std::optional<FixtureSaid> after = fixture_said(now.news);
  return before && after && before->fixture == after->fixture &&
         is_off_after(before->step) != is_off_after(after->step);
}

bool is_denied(const NewsDenied& denied, News told) {
  return tells_the_same(denied.news, told);
}

std::optional<std::string> number_put_right_in(std::string_view text, const Language& language) {
  const std::vector<HeardWord> heard = heard_in(text, language);
  const bool is_one =
      heard.size() == 2 && heard[0].what == Heard::no && heard[1].what == Heard::number;
  return is_one ? std::optional(heard[1].number) : std::nullopt;
}

Result<std::vector<NewsStanding>> news_standing(Store& store, HerdId herd, CowId cow,
                                                std::span<const Entry> unwritten) {
  const auto groups = HerdLog(store, herd).groups();
  if (!groups) return groups.faults();
  std::vector<NewsStanding> standing;
  const std::vector<std::string> kinds = kinds_that_matter();
  const Outcome read =
      store.read_entries({herd.value, std::nullopt, kinds}, [&](const Entry& entry) {
        add_standing(standing, entry);
        return true;
      });
  if (!read) return read.faults();
  for (const Entry& entry : unwritten) {
    if (entry.envelope.scope == herd.value) add_standing(standing, entry);
  }
  std::erase_if(standing, [&](const NewsStanding& told) {
    return groups->representative(told.cow) != groups->representative(cow);
  });
  return standing;
}

std::vector<NewsSaid> news_told_in(std::string_view words, const std::string& number, Day day,
                                   const Language& language) {
  const std::vector<NewsSaid> news = news_of(read_as_told(words, day, language), number);
  return news.empty() ? told_once_mended(words, number, day, language) : news;
}

Fault nothing_to_take_back(const NewsMended& mended) {
  const std::string number = plain_number(mended.number);
  if (mended.right) {
    return {.slug = "call-impossible",
            .message = "Nothing was told of " + number + " that could be of " + *mended.right + ".",
            .remedy = "Tell what became of " + *mended.right + '.'};
  }
  return {.slug = "call-impossible",
          .message = "Nobody said that " + number + " is gone.",
          .remedy = "If another one was said to be gone, say her number."};
}

std::string taken_back_told(const NewsStanding& told) {
  return "taken back: " + (told.words.empty() ? "gone" : told.words);
}

Outcome take_back(Journal& journal, const NewsStanding& told, const TakingBack& taking,
                  const SaidBy& by) {
  QuestionSettled body;
  body.visit = told.visit.value_or(taking.visit);
  body.day = taking.day;
  body.number = taking.number;
  body.cow = told.cow;
  body.about = told.words;
  body.words = trimmed(taking.words);
  return journal.add(body, {journal.fresh_id(), {}, by, {}});
}

}  // namespace evenclaw
