#include "core/api/recording/mended_and_more.hpp"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/api/behind_words.hpp"
#include "core/api/news_taken_back.hpp"
#include "core/api/recording/open_questions.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/base/quotation.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/mark.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/call_line/trap.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// "202 no, ...", taken apart.
struct SaidBehindNo {
  std::vector<Token> tokens;
  std::string number;
  std::size_t rest = 0;     // where what is right begins
  bool is_doubted = false;  // "104? no, 202"
  bool names_feet = false;  // "220 LH no, ..."
};

bool is_doubt(const Token& token) {
  return kind_of_mark(token.kind) == TermKind::doubt;
}

std::string digits_said(const Token& number, std::string_view text) {
  return plain_number(number.folded.empty() ? text.substr(number.offset, number.length)
                                            : std::string_view(number.folded));
}

std::optional<SaidBehindNo> said_behind_no(std::string_view text, const Language& language) {
  if (!is_utf8(text)) return std::nullopt;
  SaidBehindNo said;
  said.tokens = spoken_tokens(text, language);
  const std::vector<Token>& tokens = said.tokens;
  if (tokens.size() < 3 || tokens.front().kind != TokenKind::number) return std::nullopt;
  said.number = digits_said(tokens.front(), text);
  said.is_doubted = is_doubt(tokens[1]);
  const std::size_t feet = behind_commas(tokens, said.is_doubted ? 2 : 1);
  const std::size_t behind = behind_feet(tokens, feet, language);
  said.names_feet = behind > feet;
  const std::size_t no = behind_commas(tokens, behind);
  const Language::Match match = language.longest_match(tokens, no);
  if (match.phrase == nullptr || match.phrase->kind != TermKind::correction) return std::nullopt;
  said.rest = behind_commas(tokens, no + match.word_count);
  return said.rest < tokens.size() ? std::optional(std::move(said)) : std::nullopt;
}

/// All that the last line told of her that can be meant.
struct ToldOfHer {
  std::vector<NewsStanding> pieces;
  bool is_at_this_visit = false;
  bool any = false;  // also what nobody could read
};

Result<Day> day_of_visit_before(const VisitBook& book) {
  const auto visits = select_as<VisitRow>(book.ports.store, book.visit.herd, {}, {"day"});
  if (!visits) return visits.faults();
  Day before;
  for (const VisitRow& visit : *visits) {
    if (visit.day < book.visit.day) before = visit.day;
  }
  return before;
}

Result<ToldOfHer> last_told_of(VisitBook& book, const std::string& number) {
  ToldOfHer told;
  const auto& unread = book.before.unread();
  told.any = std::any_of(unread.begin(), unread.end(), [&](const UnreadNews& news) {
    return plain_number(news.number) == number;
  });
  told.is_at_this_visit = told.any;
  const std::optional<CowId> cow = book.finder.carrier(number);
  if (!cow) return told;
  auto standing = news_standing(book.ports.store, book.visit.herd, *cow, book.journal.unwritten());
  if (!standing) return standing.faults();
  const auto since = day_of_visit_before(book);
  if (!since) return since.faults();
  const auto is_of_now = [&](const NewsStanding& each) {
    return each.visit ? each.visit == book.visit.visit : each.is_gone && each.day == book.visit.day;
  };
  std::erase_if(*standing, [&](const NewsStanding& each) {
    const bool is_since = !each.visit && *since < each.day && each.day <= book.visit.day;
    return !is_of_now(each) && !is_since;
  });
  if (standing->empty()) return told;
  const std::string words = standing->back().words;
  std::copy_if(standing->begin(), standing->end(), std::back_inserter(told.pieces),
               [&](const NewsStanding& each) { return each.words == words; });
  told.is_at_this_visit = told.any || is_of_now(told.pieces.back());
  told.any = true;
  return told;
}

std::string piece_in_words(News news, const Language& language) {
  if (news == News::walks_sound) return std::string(language.say(TermKind::walks_sound));
  const std::optional<FixtureSaid> told = fixture_said(news);
  if (!told) return std::string(language.say(TermKind::news, news));
  for (const auto& each : EnumWords<ActionKind>::table) {
    if (fixture_said(each.value) == told)
      return std::string(language.say(facts_of(each.value).said_as, each.value));
  }
  return {};
}

std::string without_separators(std::string_view words) {
  std::string kept(trimmed(words));
  while (!kept.empty() && std::string_view(" ,;.").find(kept.back()) != std::string_view::npos)
    kept.pop_back();
  return kept;
}

/// "202 no, no wrap off": one line for each piece that was told.
std::string lines_that_deny(const std::string& number, const ToldOfHer& told,
                            const Language& language) {
  std::string lines;
  for (const NewsStanding& each : told.pieces) {
    const std::string piece = piece_in_words(each.news.news, language);
    const std::string no(language.say(TermKind::correction));
    const std::string line = number + ' ' +
                             (each.is_gone ? std::string(language.say(TermKind::still_here))
                                           : offered_correction(no + ' ' + piece, language));
    lines += quoted(line) + " and ";
  }
  return lines;
}

Fault of_no_sure_number(const std::string& line) {
  return {.slug = "call-impossible",
          .message = "Nobody is sure of the number, so nothing that was told is put right.",
          .remedy = "Once it is sure: " + quoted(line) + "."};
}

Fault of_two_cows(const std::string& number, const std::string& remedy) {
  return {.slug = "call-impossible",
          .message = "That puts right what was told of " + number +
                     " and tells of another cow, so nothing of it is taken.",
          .remedy = "Say each by itself: " + remedy + "."};
}

/// Hers said once more, "306 no, 306 still here", is none of another cow.
std::optional<std::size_t> next_number(const SaidBehindNo& said, std::string_view text,
                                       const Language& language) {
  for (std::size_t at = said.rest; at < said.tokens.size(); ++at) {
    if (said.tokens[at].kind != TokenKind::number) continue;
    const bool is_hers = digits_said(said.tokens[at], text) == said.number;
    if (!is_hers && !has_its_unit(said.tokens, at, language)) return at;
  }
  return std::nullopt;
}

/// "202 no, 217?", "202 no, 217 or 207": nothing is told behind the number.
bool tells_nothing_behind(const SaidBehindNo& said, std::size_t number, const Language& language) {
  for (std::size_t at = number + 1; at < said.tokens.size(); ++at) {
    const Phrase* phrase = language.longest_match(said.tokens, at).phrase;
    const bool is_told = phrase != nullptr && phrase->kind != TermKind::alternative &&
                         phrase->kind != TermKind::doubt;
    if (is_told) return false;
  }
  return true;
}

std::optional<Fault> fault_of_numbers(const SaidBehindNo& said, const ToldOfHer& told,
                                      std::string_view text, const Language& language) {
  const std::optional<std::size_t> number = next_number(said, text, language);
  if (said.is_doubted) {
    const Token& mark = said.tokens[1];
    return of_no_sure_number(std::string(text.substr(0, mark.offset)) +
                             std::string(text.substr(mark.offset + mark.length)));
  }
  const bool is_alone = number == said.rest && said.rest + 1 == said.tokens.size();
  if (!number || is_alone) return std::nullopt;
  const Token& other = said.tokens[*number];
  const std::string behind(trimmed(text.substr(other.offset)));
  if (*number > said.rest) {
    const std::string first = without_separators(text.substr(0, other.offset));
    return of_two_cows(said.number, quoted(first) + " and " + quoted(behind));
  }
  if (tells_nothing_behind(said, *number, language))
    return of_no_sure_number(std::string(text.substr(0, other.offset + other.length)));
  return of_two_cows(said.number, lines_that_deny(said.number, told, language) + quoted(behind));
}

/// "220 LH no, RH": whether the left foot holds as well is not said.
std::optional<Fault> fault_of_feet(const SaidBehindNo& said, const ToldOfHer& told,
                                   std::string_view text, const Language& language) {
  const bool is_of_feet_alone = behind_feet(said.tokens, said.rest, language) == said.tokens.size();
  if (!is_of_feet_alone) return std::nullopt;
  const std::string right(trimmed(text.substr(said.tokens[said.rest].offset)));
  const std::string line = said.number + ' ' + offered_correction(right, language);
  if (said.names_feet) {
    return Fault{.slug = "call-impossible",
                 .message = "It is unclear what was told of that foot of " + said.number +
                            ", so nothing is put right.",
                 .remedy = "If it was told of the wrong foot: " + quoted(line) + "."};
  }
  const auto first = std::find_if(told.pieces.begin(), told.pieces.end(),
                                  [](const NewsStanding& each) { return !each.news.feet.empty(); });
  std::string which;
  int pieces = 0;
  for (auto each = first; each != told.pieces.end(); ++each) {
    if (each->news.feet != first->news.feet) continue;
    which += (which.empty() ? "" : " or ") +
             quoted(line + ' ' + piece_in_words(each->news.news, language));
    ++pieces;
  }
  if (pieces < 2) return std::nullopt;
  return Fault{.slug = "call-impossible",
               .message = "Of " + said.number +
                          " several things were told of one foot, and which of them is put right "
                          "is not said.",
               .remedy = "Say which: " + which + "."};
}

std::optional<Fault> told_before_this_visit(const SaidBehindNo& said, const ToldOfHer& told,
                                            std::string_view text, const Language& language) {
  const auto mended = news_mended_in(text, language);
  if (told.is_at_this_visit || !mended || !mended->right || told.pieces.empty())
    return std::nullopt;
  const NewsStanding& last = told.pieces.back();
  return Fault{.slug = "call-impossible",
               .message = "What was told of " + said.number + " was told on " + spoken(last.day) +
                          ", before this visit.",
               .remedy = "Put it right between visits: evenclaw told " +
                         quoted(std::string(trimmed(text))) + "."};
}

/// "202 no, 217?": of the second nothing is told.
bool is_of_numbers_alone(const SaidBehindNo& said, const Language& language) {
  return said.tokens[said.rest].kind == TokenKind::number &&
         tells_nothing_behind(said, said.rest, language);
}

bool was_in_the_crush(const VisitBook& book, const Crush& crush, const std::string& number) {
  const bool stands = crush.cow && only_number(crush.cow->draft.turn.cow) == number;
  return stands || !book.before.turns_called_by(number).empty();
}

}  // namespace

Result<bool> refuse_mended_and_more(VisitBook& book, Crush& crush, std::string_view text) {
  const std::optional<SaidBehindNo> said = said_behind_no(text, book.language);
  if (!said || was_in_the_crush(book, crush, said->number)) return false;
  const auto told = last_told_of(book, said->number);
  if (!told) return told.faults();
  if (!told->any) return false;
  std::optional<Fault> fault;
  if (told->is_at_this_visit) fault = fault_of_numbers(*said, *told, text, book.language);
  if (told->is_at_this_visit && !fault) fault = fault_of_feet(*said, *told, text, book.language);
  if (!fault) fault = told_before_this_visit(*said, *told, text, book.language);
  if (!fault) return false;
  const auto other = next_number(*said, text, book.language);
  if (crush.cow && (said->is_doubted || other)) crush.held_back_by = trimmed(text);
  const std::string asked = fault->message + " What holds?";
  const Outcome refused = refuse_mending(book, crush, said->number, *std::move(fault), text);
  if (!refused) return refused.faults();
  if (!other || is_of_numbers_alone(*said, book.language)) return true;
  // What was told of the other one stays open when the first is put right.
  const UnreadNews of_other{digits_said(said->tokens[*other], text), std::string(trimmed(text))};
  const Outcome kept = keep_as_unread(book, of_other, asked);
  if (!kept) return kept.faults();
  return true;
}

}  // namespace evenclaw
