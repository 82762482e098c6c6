#include "core/api/recording/called_before.hpp"

#include <algorithm>
#include <string>
#include <variant>
#include <vector>

#include "core/api/cow_names.hpp"
#include "core/api/recording/end_reasons.hpp"
#include "core/api/recording/late_mending.hpp"
#include "core/api/recording/said_again.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/mobility.hpp"

namespace evenclaw {

namespace {

const CowSaid* named_in(const Line& line) {
  const auto* named = line.clauses.empty() ? nullptr : std::get_if<CowNamed>(&line.clauses.front());
  return named == nullptr ? nullptr : &named->cow;
}

const MobilityTold* score_called_in(const Line& line) {
  for (const Clause& clause : line.clauses) {
    const auto* said = std::get_if<TurnClause>(&clause);
    const auto* score = said == nullptr ? nullptr : std::get_if<MobilityTold>(said);
    if (score != nullptr && !score->is_correction) return score;
  }
  return nullptr;
}

std::string in_figures(const MobilitySaid& said) {
  return std::to_string(*said.score) + " of " + std::to_string(facts_of(*said.scale).highest);
}

bool holds_line(const std::vector<std::string>& words, std::string_view text) {
  return std::find(words.begin(), words.end(), trimmed(text)) != words.end();
}

}  // namespace

bool names_the_next_without_name(const VisitBook& book, const Crush& crush, const Line& line,
                                 std::string_view text) {
  const CowSaid* cow = named_in(line);
  const bool is_nameless =
      cow != nullptr && cow->known == CowKnown::unnumbered && called_as(*cow).empty();
  if (!is_nameless || !stands_there(book, crush, *cow)) return false;
  const Turn& turn = crush.cow->draft.turn;
  if (says_nothing(turn) && turn.reason == Reason::not_called) return false;
  const bool corrects =
      std::any_of(line.clauses.begin(), line.clauses.end(), [](const Clause& each) {
        const auto* said = std::get_if<TurnClause>(&each);
        return said != nullptr && mends_or_takes_back(*said);
      });
  return !corrects && std::none_of(crush.cow->refused.begin(), crush.cow->refused.end(),
                                   [&](const RefusedLine& refused) {
                                     return is_said_again(refused.text, text, book.language);
                                   });
}

std::optional<Fault> scored_otherwise_before(const VisitBook& book, const Crush& crush,
                                             const Line& line, std::string_view text) {
  const MobilityTold* now = score_called_in(line);
  const CowSaid* cow = named_in(line);
  if (cow == nullptr && crush.cow) cow = &crush.cow->draft.turn.cow;
  if (now == nullptr || cow == nullptr || cow->known != CowKnown::numbered) return std::nullopt;
  for (const RecordedTurn* turn : book.before.turns_called(*cow)) {
    const MobilitySaid& then = turn->body.turn.mobility;
    if (!then.said() || then == now->mobility || holds_line(turn->body.words, text)) continue;
    return Fault{
        .slug = "call-impossible",
        .message = "Her mobility was called " + in_figures(then) + " before at this visit.",
        .line = book.answers.line(),
        .remedy =
            "If that was wrong, say \"" + offered_correction(now->mobility, book.language) + "\"."};
  }
  return std::nullopt;
}

}  // namespace evenclaw
