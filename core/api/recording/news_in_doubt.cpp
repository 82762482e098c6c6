#include "core/api/recording/news_in_doubt.hpp"

#include <algorithm>
#include <set>
#include <variant>
#include <vector>

#include "core/api/recording/open_questions.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/api/recording/two_cows.hpp"
#include "core/base/quotation.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/mark.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

struct InDoubt {
  std::string plain;  // the line without its question marks
  std::set<std::string> numbers;
};

/// The numbers that begin what is told of a cow and have a question mark right behind them.
InDoubt numbers_in_doubt(std::string_view text, const Language& language) {
  const std::vector<Token> tokens = spoken_tokens(text, language);
  InDoubt doubt{std::string(text), {}};
  for (std::size_t at = tokens.size(); at-- > 1;) {
    const Token& mark = tokens[at];
    const Token& number = tokens[at - 1];
    const bool is_doubted = number.kind == TokenKind::number &&
                            kind_of_mark(mark.kind) == TermKind::doubt &&
                            number.offset + number.length == mark.offset;
    if (!is_doubted) continue;
    const std::string_view digits = number.folded.empty()
                                        ? text.substr(number.offset, number.length)
                                        : std::string_view(number.folded);
    doubt.numbers.insert(plain_number(digits));
    doubt.plain.erase(mark.offset, mark.length);
  }
  return doubt;
}

/// What is told of each cow; nothing when anything else is said as well.
std::vector<PartOfLine> told_of_each(const VisitBook& book, const std::string& line,
                                     const LineContext& context) {
  const auto read = read_in_herd(book, line, context);
  if (!read || read->clauses.empty()) return {};
  std::set<std::string> numbers;
  for (const Clause& clause : read->clauses) {
    const auto* news = std::get_if<NewsSaid>(&clause);
    if (news == nullptr) return {};
    numbers.insert(plain_number(news->number));
  }
  if (numbers.size() == 1) return {{*numbers.begin(), std::string(trimmed(line))}};
  return parts_of_cows(line, book.language);
}

Outcome ask_of(VisitBook& book, Crush& crush, const PartOfLine& part, std::string_view text) {
  refuse(book, crush, text,
         {{.slug = "call-not-understood",
           .message =
               "Nobody is sure of the number " + part.number + ", so nothing is told of her yet.",
           .token = part.number + '?',
           .line = book.answers.line(),
           .remedy = "Once it is sure: " + quoted(part.words) + "."}});
  if (crush.cow) crush.cow->told_of = part.number;
  const bool is_in_digits = part.words.starts_with(part.number);
  const std::string said = is_in_digits ? part.number + '?' + part.words.substr(part.number.size())
                                        : std::string(trimmed(text));
  return keep_as_unread(book, {part.number, said},
                        "Nobody was sure of the number. Was it " + part.number + '?');
}

}  // namespace

Result<std::optional<std::string>> ask_of_news_in_doubt(VisitBook& book, Crush& crush,
                                                        std::string_view text,
                                                        const LineContext& context) {
  std::optional<std::string> others;
  if (!is_utf8(text)) return others;
  const InDoubt doubt = numbers_in_doubt(text, book.language);
  const bool is_here = crush.cow && doubt.numbers.count(only_number(crush.cow->draft.turn.cow)) > 0;
  if (doubt.numbers.empty() || is_here) return others;
  const std::vector<PartOfLine> parts = told_of_each(book, doubt.plain, context);
  if (parts.empty()) return others;
  others.emplace();
  for (const PartOfLine& part : parts) {
    if (doubt.numbers.count(part.number) == 0) {
      *others += (others->empty() ? "" : "; ") + part.words;
      continue;
    }
    const Outcome asked = ask_of(book, crush, part, text);
    if (!asked) return asked.faults();
  }
  return others;
}

}  // namespace evenclaw
