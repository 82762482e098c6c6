#include "core/api/recording/refused_of_her.hpp"

#include <algorithm>
#include <cstddef>
#include <string>
#include <variant>
#include <vector>

#include "core/api/recording/foot_in_doubt.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/api/recording/refused_feet.hpp"
#include "core/api/recording/said_again.hpp"
#include "core/api/recording/said_otherwise.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

namespace {

bool calls_a_lesion(std::string_view text, const Language& language) {
  const std::vector<Token> tokens = tokens_of(text);
  for (std::size_t at = 0; at < tokens.size(); ++at) {
    const Phrase* phrase = language.longest_match(tokens, at).phrase;
    if (phrase != nullptr && phrase->kind == TermKind::lesion) return true;
  }
  return false;
}

/// What was said in one line may be said again in several: those said since, the last of them
/// joined, fewest first.
std::vector<std::string> said_since(const RefusedLine& refused,
                                    const std::vector<std::string>& words) {
  constexpr std::size_t most_lines = 4;
  std::vector<std::string> joined;
  std::string all;
  for (std::size_t at = words.size(); at > refused.said_before; --at) {
    all = all.empty() ? words[at - 1] : words[at - 1] + "; " + all;
    if (at < words.size()) joined.push_back(all);
    if (words.size() - at + 1 == most_lines) break;
  }
  return joined;
}

/// What was to be done behind "nothing found" is said again of the foot it was meant for.
FootSet meant_to_go_to(const RefusedLine& refused, const Turn& turn, const Language& language) {
  const bool is_fine = std::any_of(turn.feet.begin(), turn.feet.end(), [&](const FootCall& call) {
    return refused.spoken_of.has(call.foot) && call.state == FootState::nothing_found;
  });
  const bool is_an_act = is_utf8(refused.text) && !calls_a_lesion(refused.text, language);
  return is_fine && is_an_act ? FootSet{} : refused.spoken_of;
}

/// "402 LH DD" of one who was called 420 until that was put right: it says again what was refused
/// of 420.
std::string_view without_right_number(std::string_view said, const InCrush& cow) {
  const std::string& number = cow.draft.turn.cow.number;
  const bool is_first = !number.empty() && said.substr(0, number.size()) == number;
  if (cow.called_first.empty() || !is_first) return said;
  const std::string_view rest = said.substr(number.size());
  const bool is_longer = !rest.empty() && rest.front() >= '0' && rest.front() <= '9';
  return is_longer ? said : trimmed(rest);
}

/// By her number or her words.
bool names_the_cow(std::string_view text, const std::string& number, const Language& language) {
  if (!is_utf8(text) || number.empty()) return false;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  const bool is_numbered = std::any_of(tokens.begin(), tokens.end(), [&](const Token& token) {
    if (token.kind != TokenKind::number) return false;
    const std::string_view said = text.substr(token.offset, token.length);
    return plain_number(token.folded.empty() ? said : std::string_view(token.folded)) ==
           plain_number(number);
  });
  return is_numbered || (number.find(' ') != std::string::npos &&
                         fold_case(text).find(fold_case(number)) != std::string::npos);
}

bool is_news_of_another(const InCrush& here, const Line& line) {
  const std::string hers = only_number(here.draft.turn.cow);
  return !line.clauses.empty() &&
         std::all_of(line.clauses.begin(), line.clauses.end(), [&](const Clause& clause) {
           const auto* news = std::get_if<NewsSaid>(&clause);
           return news != nullptr && (hers.empty() || plain_number(news->number) != hers);
         });
}

/// Of the lines that `may_be_meant`, those that `text` says again are open no more.
template <class MayBeMeant>
void drop_given_again(InCrush& cow, std::string_view text, const Language& language,
                      MayBeMeant may_be_meant) {
  const std::string_view now = trimmed(text);
  const FootSet named_last = cow.draft.feet_named;
  const Turn& turn = cow.draft.turn;
  std::erase_if(cow.refused, [&](const RefusedLine& refused) {
    if (!may_be_meant(refused)) return false;
    const FootSet feet = meant_to_go_to(refused, turn, language);
    const auto is_settled_by = [&](std::string_view line) {
      const std::string_view said = without_right_number(line, cow);
      const bool is_said = is_said_again(refused.text, said, language) ||
                           is_said_in_other_words(refused.text, said, language) ||
                           is_named_again(refused.text, said, language);
      return is_said && may_be_of_the_same_feet(refused.text, feet, said, named_last, language);
    };
    const std::vector<std::string> since = said_since(refused, cow.draft.words);
    return is_settled_by(now) || std::any_of(since.begin(), since.end(), is_settled_by);
  });
}
}  // namespace

void keep_refused(InCrush& cow, std::string_view text, const Language& language) {
  const FootSet in_doubt = feet_in_doubt(cow, language);
  cow.refused.emplace_back(text, in_doubt.empty() ? cow.draft.feet_named : in_doubt, language);
  const bool is_repeating = cow.given_again > 0 && cow.given_again < cow.taken_up;
  cow.refused.back().said_before = is_repeating ? cow.given_again : cow.draft.words.size();
}

void keep_refused_once(InCrush& cow, std::string_view text, const Language& language) {
  const bool is_known =
      std::any_of(cow.refused.begin(), cow.refused.end(),
                  [&](const RefusedLine& before) { return before.text == trimmed(text); });
  if (!is_known) keep_refused(cow, text, language);
}

bool names_one_told_of(std::string_view refused, const Line& news, const Language& language) {
  return std::any_of(news.clauses.begin(), news.clauses.end(), [&](const Clause& clause) {
    const auto* told = std::get_if<NewsSaid>(&clause);
    return told != nullptr && names_the_cow(refused, told->number, language);
  });
}

void given_again(InCrush& cow, std::string_view text, const Language& language) {
  drop_given_again(cow, text, language, [](const RefusedLine&) { return true; });
}

void settle_refused(InCrush& cow, const Line& line, std::string_view text,
                    const Language& language) {
  const bool is_of_another = is_news_of_another(cow, line);
  drop_given_again(cow, text, language, [&](const RefusedLine& refused) {
    return !is_of_another || names_one_told_of(refused.text, line, language);
  });
}

}  // namespace evenclaw
