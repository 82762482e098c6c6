// A list of cows or of what happened to them, as a table: every line read on its own, so that a bad
// one does not keep out the others.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/exchange/csv.hpp"
#include "core/exchange/finding_scheme.hpp"
#include "core/exchange/herd_columns.hpp"
#include "core/exchange/herd_record.hpp"
#include "core/exchange/written_days.hpp"

namespace evenclaw {

struct TableWish {
  std::vector<ColumnSaid> said = {};
  std::vector<ColumnSaid> remembered = {};
  std::optional<DayOrder> dates = {};
  Day today;  // the list holds from this day
  FindingScheme findings = {};
};

/// A word of the column of lesions, and what it is read as.
struct LesionWord {
  std::string word;   // as it stands in the list
  std::string means;  // "SU", "ignore"; "" when nobody said what it means
  std::int32_t lines = 0;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("word", &LesionWord::word, "as it stands in the list");
    visit("means", &LesionWord::means, "the lesion it is read as; ignore: none; empty: not known");
    visit("lines", &LesionWord::lines, "how many lines hold it");
  }
};

struct HerdTable {
  std::vector<ColumnRead> columns;
  std::vector<std::string> day_styles;  // "calved: day first, as 31.12.2026"
  std::vector<HerdRecord> records;      // by line
  Faults row_faults;                    // of the lines that are not among them, by line
  std::vector<LesionWord> lesions;      // of a list of findings, the most frequent first
  int passed_over = 0;                  // lines of such a list that tell of none
  int lines = 0;                        // of cows or events, also of those that could not be read
};

/// Faults about the whole table, and then nothing of it is read: those of csv_table() of the head,
/// of columns_read() and of day_style_of(), the latter with its column. All other faults are of one
/// line: slug, line, column (from 1), the words of the cell, what to do. A list of cows holds one
/// line for each cow: the same number, tag or electronic number in a second line is a fault, unless
/// one of the two has left. In a list of events (columns `event` and `day`) a line is one event.
/// In a list of findings (a column of lesions, and a day) it is one finding; where nobody said what
/// its words mean it is refused whole, with the words.
/// Numbers may have a decimal comma or point where they are whole all the same. A cell that begins
/// as a formula is no number, tag or breed, and stays text in a name or a reason.
Result<HerdTable> herd_table(const CsvTable& table, const TableWish& wish);

}  // namespace evenclaw
