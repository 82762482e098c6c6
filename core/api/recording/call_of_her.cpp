#include "core/api/recording/call_of_her.hpp"

#include <optional>
#include <string>
#include <utility>
#include <variant>

#include "core/api/cow_names.hpp"
#include "core/api/recording/last_time_anew.hpp"

namespace evenclaw {

Outcome add_to(const VisitBook& book, InCrush& cow, const TurnClause& clause) {
  const auto* named = std::get_if<FeetNamed>(&clause);
  if (named != nullptr && cow.draft.turn.rest_fine) {
    FootSet open;
    for (const RefusedLine& line : cow.refused) open.add(line.left_open(cow.draft.turn, four_feet));
    for (const Foot foot : all_feet) {
      const bool is_new = find_foot(cow.draft.turn, foot) == nullptr && !open.has(foot);
      if (named->feet.has(foot) && is_new) cow.fine_before_named.add(foot);
    }
  }
  const std::string called = recorded_as(cow.draft.turn.cow);
  const bool mends_foot = std::holds_alternative<FootCorrected>(clause);
  const std::optional<TurnDraft> before = mends_foot ? std::optional(cow.draft) : std::nullopt;
  const Outcome added = add_clause(cow.draft, clause);
  if (added && before) {
    const KnownPast past{cow.past.rows, book.visit.visit, book.visit.day};
    TakenAnew anew = for_the_right_foot(*before, std::move(cow.draft), past, book.language);
    cow.draft = std::move(anew.draft);
    cow.taken_anew = std::move(anew.told);
  }
  if (added && std::holds_alternative<CowCorrected>(clause)) cow.called_first.push_back(called);
  return added;
}

}  // namespace evenclaw
