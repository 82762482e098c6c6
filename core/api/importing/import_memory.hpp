// What a herd's lists look like, remembered for the next one.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/api/journal.hpp"
#include "core/base/result.hpp"
#include "core/exchange/finding_scheme.hpp"
#include "core/exchange/herd_columns.hpp"
#include "core/exchange/written_days.hpp"
#include "core/ports/store.hpp"

namespace evenclaw {

struct ImportMemory {
  std::vector<ColumnSaid> columns = {};
  std::optional<DayOrder> dates = {};
  FindingScheme findings = {};  // what the words of a list of findings mean

  friend bool operator==(const ImportMemory&, const ImportMemory&) = default;
};

/// What was said at earlier imports into that herd, the last word for each head.
Result<ImportMemory> import_memory_of(Store& store, HerdId herd);

/// The same with what was said now.
ImportMemory with_said(ImportMemory memory, const std::vector<ColumnSaid>& columns,
                       std::optional<DayOrder> dates, const FindingScheme& findings = {});

/// Adds the entry that keeps it, a setting of the herd.
Outcome remember(Journal& journal, const ImportMemory& memory);

}  // namespace evenclaw
