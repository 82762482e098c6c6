// Everything on record taken out again, for other programs.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>

#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// Takes one table: its name and all its lines as CSV.
using TableSink = std::function<Outcome(std::string_view name, std::string csv)>;

/// Every table of the picture, of one herd or of all, then "herd" with the names of the herds. CSV
/// as core/exchange/csv_written.hpp writes it, in the order of the key; a table without rows is its
/// head. A fault of the sink ends it.
Outcome export_tables(Store& store, std::optional<HerdId> herd, const TableSink& sink);

/// "person": who stands behind the ids of callers and writers. Names are kept outside the log, and
/// so is this list.
Result<std::string> export_people(Directory& directory);

/// What each column of each table holds, as CSV: table, column, whether it belongs to the key, what
/// it holds, whether it may be empty, meaning.
std::string data_dictionary_csv();

/// The herd as ICAR ADE JSON (core/exchange/ade_written.hpp).
Result<std::string> export_ade(Store& store, HerdId herd, Instant made_at);

}  // namespace evenclaw
