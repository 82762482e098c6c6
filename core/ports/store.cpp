#include "core/ports/store.hpp"

#include "core/trade/rows.hpp"

namespace evenclaw {

template <HasFields RowType>
Result<std::vector<RowType>> RowsSelected<RowType>::from(Store& store,
                                                         const RowSelection& selection) {
  auto cells = store.select(selection);
  if (!cells) return cells.faults();
  std::vector<RowType> rows;
  rows.reserve(cells->size());
  for (const Cells& row : *cells) {
    auto value = from_cells<RowType>(row);
    if (!value) return value.faults();
    rows.push_back(*std::move(value));
  }
  return rows;
}

template struct RowsSelected<CowRow>;
template struct RowsSelected<CowNumberRow>;
template struct RowsSelected<CowCalledRow>;
template struct RowsSelected<CowTagRow>;
template struct RowsSelected<CowAliasRow>;
template struct RowsSelected<CowFactsRow>;
template struct RowsSelected<CowLifeRow>;
template struct RowsSelected<PastFindingRow>;
template struct RowsSelected<HandlingRow>;
template struct RowsSelected<VisitRow>;
template struct RowsSelected<BatchRow>;
template struct RowsSelected<TurnRow>;
template struct RowsSelected<FootRow>;
template struct RowsSelected<FindingRow>;
template struct RowsSelected<ActionRow>;
template struct RowsSelected<MeasureRow>;
template struct RowsSelected<CaseRow>;
template struct RowsSelected<OnFootRow>;
template struct RowsSelected<TaskRow>;
template struct RowsSelected<DoubtRow>;
template struct RowsSelected<MobilityScoringRow>;
template struct RowsSelected<MobilityScoreRow>;
template struct RowsSelected<FarmWalkRow>;
template struct RowsSelected<FarmChangeRow>;

}  // namespace evenclaw
