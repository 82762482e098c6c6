#include "core/api/recording/open_questions.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include "core/api/news_lead.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/api/recording/said_again.hpp"
#include "core/api/recording/said_otherwise.hpp"
#include "core/api/recording/two_cows.hpp"
#include "core/api/recording/unread_line.hpp"
#include "core/base/ascii.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/number_range.hpp"
#include "core/trade/call_line/parser.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/call_line/trap.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

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

/// What is said of several at once, and of each of them in other words: "all trimmed", "all good",
/// "nothing found".
bool tells_of_all(const Phrase& phrase) {
  const TermKind kind = phrase.kind;
  const bool is_fine =
      kind == TermKind::foot_state && phrase.value == static_cast<int>(FootState::nothing_found);
  return is_fine || kind == TermKind::all_trimmed || kind == TermKind::rest_fine ||
         kind == TermKind::trimmed;
}

/// "250-253 all trimmed" and then "250 all good", "340, 341 both fine" and "340 nothing found".
bool are_told_one_by_one(std::string_view several, std::string_view one, const Language& language) {
  if (!names_several_cows(several, language)) return false;
  const auto tells_only_that = [&language](std::string_view line) {
    bool any = false;
    const std::vector<Token> tokens = spoken_tokens(line, language);
    for (std::size_t at = 0; at < tokens.size();) {
      const Language::Match match = language.longest_match(tokens, at);
      if (match.phrase == nullptr && tokens[at].kind == TokenKind::word) return false;
      const bool tells = match.phrase != nullptr && tells_of_all(*match.phrase);
      const bool joins = match.phrase == nullptr || match.phrase->kind == TermKind::both ||
                         language.joining_tokens(tokens, at) > 0;
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
  text = behind_news_lead(text, language);
  const std::vector<std::string> first = numbers_at_start(text, language);
  const std::vector<std::string> anywhere = numbers_anywhere(text, language);
  return std::any_of(first.begin(), first.end(), is_hers) ||
         std::any_of(anywhere.begin(), anywhere.end(), is_hers);
}

/// "300 wrap off; 302 sld": each cow of whom something is told. A number anywhere else may be
/// anything, unless a cow of this herd carries it.
std::vector<std::string> numbers_told(const VisitBook& book, std::string_view text) {
  text = behind_news_lead(text, book.language);
  std::vector<std::string> numbers = numbers_at_start(text, book.language);
  const auto add = [&numbers](const std::string& number) {
    const auto is_it = [&](const std::string& each) {
      return plain_number(each) == plain_number(number);
    };
    if (std::none_of(numbers.begin(), numbers.end(), is_it)) numbers.push_back(number);
  };
  for (const PartOfLine& part : parts_of_cows(text, book.language)) add(part.number);
  for (const std::string& number : numbers_anywhere(text, book.language)) {
    if (book.finder.carrier(number)) add(number);
  }
  return numbers;
}

/// What was told of 998 and not understood is said again with her number, or while she stands
/// there; "412 no, chronik" also without it, right after she was let out.
bool may_mend_again(const VisitBook& book, const WhoIsMeant& meant, const UnreadNews& news,
                    std::string_view text) {
  const bool is_of_one_cow = is_a_number(news.number) && !is_of_a_batch(news.words, book.language);
  if (!is_of_one_cow || names_the_cow(text, news.number, book.language)) return true;
  const auto is_hers = [&](const CowSaid& cow) {
    return plain_number(cow.number) == plain_number(news.number);
  };
  if (meant.in_crush != nullptr) return is_hers(*meant.in_crush);
  const bool mends =
      corrects_without_number(news.words, book.language) ||
      cow_mended_in_refused(news.words, after_let_out(book), book.language).has_value();
  return mends && meant.let_out != nullptr && is_hers(*meant.let_out);
}

}  // namespace

Outcome keep_as_unread(VisitBook& book, const UnreadNews& news, const std::string& question,
                       std::optional<PersonId> person) {
  // A count that is said once more answers what was asked of it.
  const bool may_be_anew = book.typed && !is_of_a_batch(news.words, book.language);
  if (!book.before.is_unread_now(news.number, news.words, may_be_anew)) return Done{};
  NewsUnread body;
  body.visit = book.visit.visit;
  body.day = book.visit.day;
  body.number = news.number;
  body.cow = book.finder.called(news.number);
  body.words = news.words;
  body.asked = question;
  body.person = person;
  return book.journal.add(body, {book.journal.fresh_id(), {}, book.by, {}});
}

Outcome keep_unread(VisitBook& book, std::string_view text) {
  const std::vector<std::string> numbers = numbers_told(book, text);
  for (const std::string& number : numbers) {
    const Outcome kept = keep_as_unread(book, {number, std::string(trimmed(text))},
                                        "This was not understood. What was told?");
    if (!kept) return kept;
  }
  // A person who watches may have typed anything; what comes from a file was called.
  const bool was_called = !book.typed || holds_a_call_word(text, book.language);
  if (!numbers.empty() || !was_called) return Done{};
  const std::string whom = whom_it_may_be_of(behind_news_lead(text, book.language), book.language);
  return keep_as_unread(book, {whom, std::string(trimmed(text))},
                        "This was not understood. Of whom was it, and what was told?");
}

bool corrects_without_number(std::string_view text, const Language& language) {
  if (!is_utf8(text)) return false;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  for (std::size_t at = 0; at < tokens.size();) {
    const Language::Match match = language.longest_match(tokens, at);
    const TermKind kind = match.phrase == nullptr ? TermKind::unknown_word : match.phrase->kind;
    if (kind == TermKind::correction) return at + match.word_count < tokens.size();
    const bool is_a_foot = kind == TermKind::foot || kind == TermKind::feet;
    if (!is_a_foot && tokens[at].kind != TokenKind::comma) return false;
    at += std::max<std::size_t>(match.word_count, 1);
  }
  return false;
}

Outcome keep_correction(VisitBook& book, const WhoIsMeant& meant, std::string_view text) {
  if (!numbers_told(book, text).empty()) return keep_unread(book, text);
  const std::string said(trimmed(text));
  const std::string number = meant.let_out == nullptr ? "" : only_number(*meant.let_out);
  return keep_as_unread(book, {number.empty() ? said : number, said},
                        "It was not understood, so nothing was mended. What holds?");
}

Outcome settle_unread(VisitBook& book, const UnreadNews& news, std::string_view text) {
  QuestionSettled body;
  body.visit = book.visit.visit;
  body.day = book.visit.day;
  body.number = news.number;
  body.cow = book.finder.called(news.number);
  body.about = news.words;
  body.words = trimmed(text);
  book.before.add_settled(news);
  return book.journal.add(body, {book.journal.fresh_id(), {}, book.by, {}});
}

/// In the same words it is no clearer than it was, unless it mends and is taken now.
Outcome settle_news_said_again(VisitBook& book, const WhoIsMeant& meant, std::string_view text) {
  const std::vector<UnreadNews> unread = book.before.unread();
  for (const UnreadNews& news : unread) {
    // A correction without a number is of the cow that stands there, not of any that waits for one.
    if (!may_mend_again(book, meant, news, text)) continue;
    const bool is_clearer =
        news.words != trimmed(text) || corrects_without_number(text, book.language);
    const std::string now =
        part_of_one(text, news.number, book.language).value_or(std::string(trimmed(text)));
    const bool is_said =
        is_said_again(told_of_one(news.words, news.number, book.language), now, book.language) ||
        are_told_one_by_one(news.words, text, book.language) ||
        (is_of_a_batch(news.words, book.language) && is_of_a_batch(text, book.language) &&
         is_said_in_other_words(news.words, trimmed(text), book.language));
    if (!is_clearer || !is_said) continue;
    const Outcome settled = settle_unread(book, news, text);
    if (!settled) return settled;
  }
  return Done{};
}

bool is_of_a_batch(std::string_view text, const Language& language) {
  const std::vector<LineSort> sorts = possible_sorts(text, language);
  return sorts.front() == LineSort::batch;
}

Outcome refuse_mending(VisitBook& book, Crush& crush, const std::string& number, Fault fault,
                       std::string_view text) {
  const std::string asked = fault.message + " What holds?";
  refuse(book, crush, text, {std::move(fault)});
  return keep_as_unread(book, {number, std::string(trimmed(text))}, asked);
}

}  // namespace evenclaw
