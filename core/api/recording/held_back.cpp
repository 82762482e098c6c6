// After a refused line that may have named another cow, nobody knows whose the feet are that are
// told of: they are not the feet of her in the crush until a cow is named.
#include <algorithm>
#include <utility>
#include <variant>

#include "core/api/recording/refused_cow.hpp"
#include "core/api/recording/said_again.hpp"
#include "core/api/recording/state.hpp"
#include "core/api/recording/two_cows.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

bool is_said_of_her(const Clause& clause) {
  return std::holds_alternative<TurnClause>(clause);
}

bool names_a_cow(const Clause& clause) {
  return std::holds_alternative<CowNamed>(clause);
}

}  // namespace

void RecordingState::hold_back_after(std::string_view refused) {
  const bool may_be_another = crush_.cow && may_be_of_another_cow(refused, book_.language);
  if (may_be_another) crush_.held_back_by = trimmed(refused);
}

/// A cow is named, she is let out, or the line is said again: now it is known whose the feet are.
void RecordingState::let_go_held_back(const Line& line, std::string_view text) {
  if (crush_.held_back_by.empty()) return;
  const bool ends_it =
      std::any_of(line.clauses.begin(), line.clauses.end(), [](const Clause& clause) {
        return names_a_cow(clause) || std::holds_alternative<TurnEnded>(clause);
      });
  const bool is_news_in_short =
      tells_news(line) && is_said_again(text, crush_.held_back_by, book_.language) &&
      feet_in_refused(crush_.held_back_by, book_.language) == RefusedFeet{};
  const bool is_said = is_news_in_short || is_said_again(crush_.held_back_by, text, book_.language);
  if (!ends_it && !is_said) return;
  if (crush_.cow && (is_said || is_named_again(crush_.held_back_by, text, book_.language))) {
    std::vector<RefusedLine>& open = crush_.cow->refused;
    open.erase(std::remove_if(
                   open.begin(), open.end(),
                   [&](const RefusedLine& refused) { return refused.text == crush_.held_back_by; }),
               open.end());
  }
  crush_.held_back_by.clear();
}

/// "Rest fine", when that is what stood before the number of the other.
bool RecordingState::holds_back(const Line& line, std::string_view text) const {
  if (!crush_.cow || crush_.held_back_by.empty()) return false;
  const std::vector<RefusedLine>& open = crush_.cow->refused;
  const bool is_hers = std::any_of(open.begin(), open.end(), [&](const RefusedLine& refused) {
    return refused.text != crush_.held_back_by && refused.text == trimmed(text);
  });
  return !is_hers && std::any_of(line.clauses.begin(), line.clauses.end(), is_said_of_her);
}

/// Somebody looks at the screen: it is asked who she is, and the line is said again.
Outcome RecordingState::refuse_held_back(std::string_view text) {
  refuse(book_, crush_, text,
         {{.slug = "call-impossible",
           .message = "A line before may have named another cow, so it is not clear whose "
                      "this is.",
           .line = book_.answers.line(),
           .remedy = "Say her number, and this once more."}});
  keep_refused(*crush_.cow, text, book_.language);
  return Done{};
}

/// A cow without a number takes the place of her in the crush, and the line that may have named
/// her goes with her.
Outcome RecordingState::stand_for_whoever() {
  const std::string named = std::exchange(crush_.held_back_by, {});
  std::vector<RefusedLine>& open = crush_.cow->refused;
  if (!open.empty() && open.back().text == named) open.pop_back();
  const Outcome out = let_out(LetOutBy::next_cow);
  if (!out) return out;
  CowSaid whoever;
  whoever.known = CowKnown::unnumbered;
  const Outcome opened = open_cow(whoever);
  if (!opened) return opened;
  crush_.cow->named_in_refused = true;
  // A line that named several cows is on record for each of them.
  const bool is_on_record = names_several_cows(named, book_.language) ||
                            !parts_of_cows(named, book_.language).empty() ||
                            cow_further_on(named, book_.language).has_value();
  if (!is_on_record) keep_refused(*crush_.cow, named, book_.language);
  return Done{};
}

}  // namespace evenclaw
