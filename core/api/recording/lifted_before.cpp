#include "core/api/recording/lifted_before.hpp"

#include <cstddef>
#include <utility>
#include <variant>
#include <vector>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

namespace {

bool says_just(std::string_view text, const Language& language) {
  const std::vector<Token> tokens = tokens_of(text);
  std::size_t at = 0;
  while (at < tokens.size()) {
    const Language::Match match = language.longest_match(tokens, at);
    if (match.phrase != nullptr && match.phrase->kind == TermKind::only) return true;
    at += match.phrase == nullptr ? 1 : match.word_count;
  }
  return false;
}

template <class T>
T* said_at(Line& line, std::size_t at) {
  if (at >= line.clauses.size()) return nullptr;
  auto* clause = std::get_if<TurnClause>(&line.clauses[at]);
  return clause == nullptr ? nullptr : std::get_if<T>(clause);
}

// Where the feet stand that "just" leaves out; the number of clauses when nowhere.
std::size_t feet_left_out(Line& line) {
  for (std::size_t at = 0; at < line.clauses.size(); ++at) {
    const auto* state = said_at<FootStateSaid>(line, at + 1);
    const bool is_down = state != nullptr && state->state == FootState::not_lifted;
    const bool goes_on = said_at<FeetNamed>(line, at + 2) != nullptr;
    if (is_down && goes_on && said_at<FeetNamed>(line, at) != nullptr) return at;
  }
  return line.clauses.size();
}

}  // namespace

FootSet lifted_feet(const Turn& turn) {
  FootSet feet;
  for (const FootCall& call : turn.feet) {
    if (was_lifted(call)) feet.add(call.foot);
  }
  return feet;
}

Line with_lifted_kept(Line line, std::string_view text, const FootSet& lifted,
                      const Language& language) {
  if (lifted.empty() || !says_just(text, language)) return line;
  const std::size_t at = feet_left_out(line);
  if (at == line.clauses.size()) return line;
  auto* named = said_at<FeetNamed>(line, at);
  FootSet down;
  for (const Foot foot : all_feet) {
    if (named->feet.has(foot) && !lifted.has(foot)) down.add(foot);
  }
  named->feet = down;
  const auto first = line.clauses.begin() + static_cast<std::ptrdiff_t>(at);
  if (down.empty()) line.clauses.erase(first, first + 2);
  return line;
}

FootSet lifted_at_this_visit(const VisitBook& book, const Crush& crush, const Line& line) {
  const auto* named = line.clauses.empty() ? nullptr : std::get_if<CowNamed>(&line.clauses.front());
  FootSet lifted;
  if (named == nullptr && !crush.cow) return lifted;
  const CowSaid& cow = named != nullptr ? named->cow : crush.cow->draft.turn.cow;
  for (const RecordedTurn* turn : book.before.turns_called(cow)) {
    lifted.add(lifted_feet(turn->body.turn));
  }
  return lifted;
}

}  // namespace evenclaw
