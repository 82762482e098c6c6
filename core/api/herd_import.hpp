// Taking over what another program tells of a herd: its cows, their calvings, dryings off, arrivals
// and leavings, and what was found on their feet.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/exchange/finding_scheme.hpp"
#include "core/exchange/herd_columns.hpp"
#include "core/exchange/herd_table.hpp"
#include "core/exchange/written_days.hpp"

namespace evenclaw {

/// Larger files are refused: it is a hundred times the list of a large herd with all its events.
inline constexpr std::int64_t largest_import_bytes = 64LL * 1024 * 1024;

struct ImportWish {
  Day from;                              // the list holds from this day
  std::vector<ColumnSaid> columns = {};  // what a person says the columns hold
  std::optional<DayOrder> dates = {};    // and how its days are written
  FindingScheme findings = {};           // and what the words of a list of findings mean
  bool is_sure = false;                  // answers every question
  bool all_or_nothing = false;
  bool only_tries = false;  // nothing is written
};

/// A line or object that was not taken over, and why.
struct LeftOut {
  std::int32_t line = 0;
  std::int32_t column = 0;
  std::string slug;
  std::string message;
  std::string token;
  std::string remedy;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("line", &LeftOut::line, "line of the file, or which object of it, from 1");
    visit("column", &LeftOut::column, "which column, from 1; 0 when it is none alone");
    visit("slug", &LeftOut::slug, "which error of docs/errors.md");
    visit("message", &LeftOut::message, "what is wrong");
    visit("token", &LeftOut::token, "the words concerned");
    visit("remedy", &LeftOut::remedy, "what to do");
  }
};

struct HerdImported {
  std::string form;      // "table" or "ICAR ADE"
  std::string encoding;  // "UTF-8" ...
  std::string separator;
  std::vector<ColumnRead> columns;
  std::vector<std::string> days;
  std::int32_t lines = 0;
  std::int32_t entered = 0;
  std::int32_t told_more = 0;
  std::int32_t unchanged = 0;
  std::int32_t events = 0;
  std::vector<LesionWord> lesions;  // of a list of findings; this and what follows
  std::int32_t findings = 0;
  std::int32_t taken_back = 0;
  std::int32_t passed_over = 0;
  std::int32_t left_out_lines = 0;
  std::vector<LeftOut> left_out;
  bool written = false;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("form", &HerdImported::form, "what the file is: a table, or ICAR ADE");
    visit("encoding", &HerdImported::encoding, "how its text is written");
    visit("separator", &HerdImported::separator, "what parts the cells of a table");
    visit("columns", &HerdImported::columns, "what each column of a table is read as");
    visit("days", &HerdImported::days, "how the days of each column are written");
    visit("lines", &HerdImported::lines, "lines or objects that tell of a cow");
    visit("entered", &HerdImported::entered, "cows nobody had recorded yet");
    visit("told_more", &HerdImported::told_more, "known cows of whom something is new");
    visit("unchanged", &HerdImported::unchanged, "known cows of whom nothing is new");
    visit("events", &HerdImported::events, "events that were not known");
    visit("lesions", &HerdImported::lesions, "of a list of findings what each word is read as");
    visit("findings", &HerdImported::findings, "findings that were not known");
    visit("taken_back", &HerdImported::taken_back,
          "findings the same file told before and does not tell any more");
    visit("passed_over", &HerdImported::passed_over, "lines that tell of no finding");
    visit("left_out_lines", &HerdImported::left_out_lines, "lines that were not taken over");
    visit("left_out", &HerdImported::left_out, "why");
    visit("written", &HerdImported::written, "it is on record; false after a try");
  }
};

/// Takes over a table (CSV and its like, core/exchange/csv.hpp) or ICAR ADE JSON; which of the two
/// it is tells its first character. Every line is taken over or left out on its own, with its
/// reason; all that is taken over is written at once. The same file again writes nothing; read with
/// other words for its lesions it mends what it told before. What a person said of columns, days
/// and words is kept for the next list of the herd, with the import. Faults,
/// and then nothing was written: those of the file as a whole ("file-unreadable", "file-too-large",
/// "list-refused", "date-unreadable", "json-unreadable", "usage"); with all_or_nothing those of
/// every line that would be left out.
Result<HerdImported> import_herd(const Ports& ports, HerdId herd, std::string_view bytes,
                                 const ImportWish& wish);

}  // namespace evenclaw
