// "Never mind": a line nobody could read is not said again, and nobody is asked about it.
#include <algorithm>
#include <optional>
#include <span>
#include <utility>
#include <variant>
#include <vector>

#include "core/api/behind_words.hpp"
#include "core/api/cow_names.hpp"
#include "core/api/recording/end_reasons.hpp"
#include "core/api/recording/open_questions.hpp"
#include "core/api/recording/reader.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/api/recording/refused_feet.hpp"
#include "core/api/recording/state.hpp"
#include "core/base/quotation.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/said_again.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// The number in front of "never mind", or how many were counted ("12 cows"); "" when there is
/// none; nothing for any other line.
std::optional<std::string> number_to_drop(std::string_view text, const Language& language) {
  if (!is_utf8(text)) return std::nullopt;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  if (tokens.empty()) return std::nullopt;
  std::string number;
  std::size_t at = 0;
  if (tokens.front().kind == TokenKind::number) {
    const Token& first = tokens.front();
    number =
        first.folded.empty() ? std::string(text.substr(first.offset, first.length)) : first.folded;
    ++at;
    const Language::Match behind =
        at < tokens.size() ? language.longest_match(tokens, at) : Language::Match{};
    if (behind.phrase != nullptr && behind.phrase->kind == TermKind::animals) {
      const Token& last = tokens[at + behind.word_count - 1];
      number = text.substr(first.offset, last.offset + last.length - first.offset);
      at += behind.word_count;
    }
  }
  at = behind_commas(tokens, at);
  if (at == tokens.size()) return std::nullopt;
  const Language::Match match = language.longest_match(tokens, at);
  const bool is_all = match.phrase != nullptr && match.phrase->kind == TermKind::never_mind &&
                      at + match.word_count == tokens.size();
  return is_all ? std::optional(number) : std::nullopt;
}

std::string dropped(const std::string& line) {
  return quoted(line) + " is dropped";
}

/// A count that was taken down is no line that waits.
std::string count_stands(const RecordedBatch& counted, const Language& language) {
  const std::string mending =
      std::string(language.say(TermKind::correction)) + ", 11 " +
      std::string(language.say(TermKind::animals, counted.body.batch.animals));
  return "that count is on record, and no line of it waits; \"" + mending +
         "\" mends the count told last, and evenclaw redact, with the id it was saved under, takes "
         "one away";
}

/// The last line when one is given, else all of hers. Who was named in such lines alone stands
/// there all the same where one line is dropped and her number was clear; else she was never there.
void drop_of_her(VisitBook& book, Crush& crush, const std::string& just_refused) {
  std::vector<RefusedLine>& open = crush.cow->refused;
  const auto first = just_refused.empty() ? open.begin() : open.end() - 1;
  for (auto line = first; line != open.end(); ++line) {
    book.answers.add(ReplyKind::mark, dropped(line->text)).cow = cow_in_crush(book, crush);
    if (crush.held_back_by == line->text) crush.held_back_by.clear();
  }
  open.erase(first, open.end());
  const bool was_only_named =
      crush.cow->named_in_refused && crush.cow->draft.words.empty() && open.empty();
  if (!was_only_named) return;
  const CowSaid& cow = crush.cow->draft.turn.cow;
  const bool is_clear = cow.known == CowKnown::numbered || read_in(cow);
  if (just_refused.empty() || !is_clear) return crush.cow.reset();
  crush.cow->draft.words.push_back(recorded_as(cow));
  crush.cow->named_in_refused = false;
}

Result<bool> drop_news(VisitBook& book, const std::string& number, std::string_view text,
                       const std::string& just_refused) {
  bool any = false;
  const std::vector<UnreadNews> unread = book.before.unread();
  for (const UnreadNews& news : unread) {
    const bool is_meant = number.empty() ? news.words == just_refused
                                         : plain_number(news.number) == plain_number(number);
    if (!is_meant) continue;
    const Outcome settled = settle_unread(book, news, text);
    if (!settled) return settled.faults();
    book.answers.add(ReplyKind::mark, dropped(news.words)).cow = plain_number(news.number);
    any = true;
  }
  return any;
}

}  // namespace

/// Without a number it means the line that was refused just before.
Result<bool> RecordingState::drops_what_was_refused(std::string_view text,
                                                    const std::string& just_refused) {
  const std::optional<std::string> number = number_to_drop(text, book_.language);
  if (!number) return false;
  const bool has_number = !number->empty();
  const bool is_here =
      crush_.cow && !crush_.cow->refused.empty() &&
      (has_number ? only_number(crush_.cow->draft.turn.cow) == plain_number(*number)
                  : crush_.cow->refused.back().text == just_refused);
  bool any = is_here;
  if (is_here) drop_of_her(book_, crush_, has_number ? std::string() : just_refused);
  if (has_number || !just_refused.empty()) {
    auto of_news = drop_news(book_, *number, text, just_refused);
    if (!of_news) return of_news;
    any = any || *of_news;
    // It named other cows, and nobody doubts any more whose the feet are.
    if (*of_news && crush_.held_back_by == just_refused) crush_.held_back_by.clear();
    if (*of_news && crush_.cow && !just_refused.empty()) crush_.cow->told_of.clear();
  }
  if (has_number) {
    auto of_turns = turns_.drop_of_all_let_out(*number, text);
    if (!of_turns) return of_turns;
    any = any || *of_turns;
  }
  const RecordedBatch* counted = any ? nullptr : counted_.named(*number);
  if (counted != nullptr) {
    book_.answers.add(ReplyKind::mark, count_stands(*counted, book_.language)).cow = *number;
  } else if (!any) {
    book_.answers.add(ReplyKind::mark, "there is no line to drop; say her number first");
  }
  return true;
}

/// "No, no refitted" where "refitted" was refused: nothing was taken that could be taken back, so
/// the line is dropped. One that called anything else besides stays.
bool RecordingState::takes_back_what_was_refused(const Line& line) {
  if (!crush_.cow || line.clauses.empty()) return false;
  const auto* back = std::get_if<TurnClause>(&line.clauses.back());
  if (back == nullptr) return false;
  std::vector<RefusedLine>& open = crush_.cow->refused;
  const auto meant = std::find_if(open.begin(), open.end(), [&](const RefusedLine& refused) {
    const auto said = read_in_herd(book_, refused.text, after_let_out(book_));
    if (!said || said->clauses.empty()) return false;
    const std::span<const Clause> before(said->clauses.data(), said->clauses.size() - 1);
    const bool calls_more = std::any_of(before.begin(), before.end(), [](const Clause& clause) {
      const auto* other = std::get_if<TurnClause>(&clause);
      return other == nullptr ? !std::holds_alternative<CowNamed>(clause)
                              : !std::holds_alternative<FeetNamed>(*other);
    });
    const auto* last = std::get_if<TurnClause>(&said->clauses.back());
    return !calls_more && last != nullptr && is_taken_back_by(*back, *last);
  });
  if (meant == open.end()) return false;
  book_.answers.add(ReplyKind::mark, dropped(meant->text)).cow = cow_in_crush(book_, crush_);
  open.erase(meant);
  return true;
}

}  // namespace evenclaw
