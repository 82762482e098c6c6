#include "core/api/recording/refused_of_her.hpp"

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

#include "core/api/recording/foot_in_doubt.hpp"
#include "core/api/recording/refused_feet.hpp"
#include "core/api/recording/said_again.hpp"
#include "core/api/recording/said_otherwise.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/foot.hpp"
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

}  // namespace

void keep_refused(InCrush& cow, std::string_view text, const Language& language) {
  const FootSet in_doubt = feet_in_doubt(cow, language);
  cow.refused.emplace_back(text, in_doubt.empty() ? cow.draft.feet_named : in_doubt, language);
  cow.refused.back().said_before = cow.draft.words.size();
}

void keep_refused_once(InCrush& cow, std::string_view text, const Language& language) {
  const bool is_known =
      std::any_of(cow.refused.begin(), cow.refused.end(),
                  [&](const RefusedLine& before) { return before.text == trimmed(text); });
  if (!is_known) keep_refused(cow, text, language);
}

void given_again(InCrush& cow, std::string_view text, const Language& language) {
  const std::string_view now = trimmed(text);
  const FootSet named_last = cow.draft.feet_named;
  const Turn& turn = cow.draft.turn;
  std::erase_if(cow.refused, [&](const RefusedLine& refused) {
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

}  // namespace evenclaw
