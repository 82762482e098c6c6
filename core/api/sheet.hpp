// Pages for the farm: the sheet that stays there after a visit, the list of what is due.
#pragma once

#include <string>
#include <vector>

#include "core/api/herds.hpp"
#include "core/api/ports.hpp"
#include "core/api/visits.hpp"
#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/paper/document.hpp"
#include "core/paper/html.hpp"

namespace evenclaw {

struct SheetMade {
  Document document;           // what the page says, for those who render it in another way
  std::string suggested_name;  // "2026-10-27-home-farm.html"
  std::string html;            // one file that needs nothing else
  std::string text;            // the same for a terminal or an e-mail

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("suggested_name", &SheetMade::suggested_name, "a name for the file");
    visit("html", &SheetMade::html, "the page");
    visit("text", &SheetMade::text, "the same as plain text");
  }
};

/// The same visit for a spreadsheet or another program.
struct LinesMade {
  std::string suggested_name;  // "2026-10-27-home-farm.csv"
  std::string csv;             // docs/format/data-dictionary.md tells each column
};

struct SheetLook {
  std::string version;          // of the program, stands on the page
  std::vector<FontFile> fonts;  // travel inside the page; may be empty
};

/// What is due in a herd as it stands `today`, to hang up; tasks of cows that left are not on it.
Result<SheetMade> make_due_sheet(Store& store, const Herd& herd, Day today, const SheetLook& look);

/// What the visit said, made `today`; what came after its day is left out, but its tasks that were
/// closed since are told as such. The visit need not be closed.
Result<SheetMade> make_sheet(const Ports& ports, const Visit& visit, Day today,
                             const SheetLook& look);

/// The rows that sheet is told from, a line for each thing; tasks of that day as open `today`.
Result<LinesMade> make_sheet_lines(const Ports& ports, const Visit& visit, Day today);

}  // namespace evenclaw
