// The flat rows of the picture: what a store keeps, a count query counts, a check looks at.
#pragma once

#include <vector>

#include "core/trade/batch_rows.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/farm_change.hpp"
#include "core/trade/farm_walk.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/handling_rows.hpp"
#include "core/trade/identity_rows.hpp"
#include "core/trade/life.hpp"
#include "core/trade/mobility_scoring.hpp"
#include "core/trade/past_finding.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// The rows of one subject: a cow (with all united with her) fills everything but `visits`,
/// `batches` and what is recorded of the farm; a visit fills the first two of these, a mobility
/// scoring, a farm walk and a change their own.
struct Rows {
  std::vector<CowRow> cows;
  std::vector<CowNumberRow> cow_numbers;
  std::vector<CowCalledRow> cow_called;
  std::vector<CowTagRow> cow_tags;
  std::vector<CowAliasRow> cow_aliases;
  std::vector<CowFactsRow> cow_facts;
  std::vector<CowLifeRow> cow_life;
  std::vector<PastFindingRow> past_findings;
  std::vector<HandlingRow> handling;
  std::vector<VisitRow> visits;
  std::vector<BatchRow> batches;
  std::vector<TurnRow> turns;
  std::vector<FootRow> feet;
  std::vector<FindingRow> findings;
  std::vector<ActionRow> actions;
  std::vector<MeasureRow> measures;
  std::vector<CaseRow> cases;
  std::vector<OnFootRow> on_feet;
  std::vector<TaskRow> tasks;
  std::vector<DoubtRow> doubts;
  std::vector<MobilityScoringRow> mobility_scorings;
  std::vector<MobilityScoreRow> mobility_scores;
  std::vector<FarmWalkRow> farm_walks;
  std::vector<FarmChangeRow> farm_changes;
};

/// Calls f(vector) for each table of `rows`, in a fixed order (parents first).
template <class RowsLike, class F>
void for_each_table(RowsLike& rows, F&& f) {
  f(rows.cows);
  f(rows.cow_numbers);
  f(rows.cow_called);
  f(rows.cow_tags);
  f(rows.cow_aliases);
  f(rows.cow_facts);
  f(rows.cow_life);
  f(rows.past_findings);
  f(rows.handling);
  f(rows.visits);
  f(rows.batches);
  f(rows.turns);
  f(rows.feet);
  f(rows.findings);
  f(rows.actions);
  f(rows.measures);
  f(rows.cases);
  f(rows.on_feet);
  f(rows.tasks);
  f(rows.doubts);
  f(rows.mobility_scorings);
  f(rows.mobility_scores);
  f(rows.farm_walks);
  f(rows.farm_changes);
}

}  // namespace evenclaw
