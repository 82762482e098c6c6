#include "core/trade/call_line/two_scores.hpp"

#include <algorithm>
#include <string>
#include <variant>

#include "core/trade/call_line/open_item.hpp"
#include "core/trade/mobility.hpp"

namespace evenclaw {

namespace {

const MobilityTold* score_in(const PlacedClause& placed) {
  const auto* clause = std::get_if<TurnClause>(&placed.clause);
  return clause == nullptr ? nullptr : std::get_if<MobilityTold>(clause);
}

std::string called(const MobilityTold& told) {
  return "\"{mobility " + std::to_string(*told.mobility.score) + " of " +
         std::to_string(facts_of(*told.mobility.scale).highest) + "}\"";
}

}  // namespace

std::optional<PlacedFault> two_scores_in_one_line(std::span<const PlacedClause> clauses,
                                                  std::size_t at) {
  const MobilityTold* second = score_in(clauses[at]);
  if (second == nullptr || second->is_correction) return std::nullopt;
  const std::span<const PlacedClause> before = clauses.first(at);
  const auto first = std::find_if(before.rbegin(), before.rend(), [](const PlacedClause& placed) {
    return score_in(placed) != nullptr || std::holds_alternative<CowNamed>(placed.clause);
  });
  const MobilityTold* told = first == before.rend() ? nullptr : score_in(*first);
  if (told == nullptr || told->mobility == second->mobility) return std::nullopt;
  return PlacedFault{impossible("two mobility scores are called of her in one line",
                                "say the line again with the one that holds: " + called(*told) +
                                    ", or " + called(*second)),
                     clauses[at].from};
}

}  // namespace evenclaw
