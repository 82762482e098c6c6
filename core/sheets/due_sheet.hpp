// What is due in a herd, as a document for paper or terminal.
#pragma once

#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/paper/document.hpp"
#include "core/sheets/words.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

struct DueSheetInput {
  std::string herd_name;
  Day today;
  std::string version;                     // of the program
  std::vector<TaskRow> tasks;              // of the herd; closed ones are passed over
  std::vector<CowRow> cows;                // at least those with a task
  std::vector<HandlingRow> handling = {};  // of cows that are here
};

/// Blank lines to be written in by hand, in the order in which a cow is called: one box for each
/// cow with an open task that may be done by `today` or is late, with how she is to be handled and
/// why she is due, then empty ones for others. `feet` are those lifted that day; all four when
/// empty.
std::vector<Block> writing_pages(const DueSheetInput& input, const FootSet& feet,
                                 const Wording& wording = english_wording());

/// First the cows to be careful with. The open tasks in three parts: late (from their `overdue` day
/// on), to be done now (from their `earliest` day on), and coming; within a part by due day, owner
/// and cow. Every open task stands on it once.
Document due_sheet(const DueSheetInput& input, const Wording& wording = english_wording());

}  // namespace evenclaw
