// One line of a list from another program, read into what it tells of a cow.
#pragma once

#include <optional>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/exchange/csv.hpp"
#include "core/exchange/finding_words.hpp"
#include "core/exchange/herd_columns.hpp"
#include "core/exchange/herd_record.hpp"
#include "core/exchange/written_days.hpp"

namespace evenclaw {

/// How the lines of a table are read: what each column holds, and in which style its days are.
struct LineForm {
  std::vector<ColumnRead> columns;
  std::vector<std::optional<DayStyle>> styles;  // one for each column
  Day today;
  const FindingWords* findings = nullptr;  // of a list of findings
};

struct ListLine {
  HerdRecord record;
  Faults faults;  // with line and column; none when the record may be taken
  /// Of a list of findings one that tells of none; its record says of whom and when, or nothing.
  bool is_passed_over = false;
};

/// Every fault of the line: cells that do not hold what their column holds, and what cannot be true
/// (faults_of_record()).
ListLine herd_line(const CsvRow& row, const LineForm& form);

}  // namespace evenclaw
