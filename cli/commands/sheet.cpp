#include "core/api/sheet.hpp"

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/page_file.hpp"
#include "cli/records.hpp"
#include "cli/shipped.hpp"

namespace evenclaw::cli {
namespace {

constexpr Option options[] = {{"--herd", "HERD", "the herd, when there are several"},
                              {"--day", "DAY", "the visit of that day, else the open or last one"},
                              {"--out", "FILE", "where it goes; a name in .pdf makes a PDF"},
                              {"--pdf", "", "a PDF to print, without a browser"},
                              {"--text", "", "on the screen, as plain text"},
                              {"--csv", "", "as a list for a spreadsheet: a line for each thing"}};
constexpr Example examples[] = {
    {"evenclaw sheet", "makes the page of the open or last visit and says where it lies"},
    {"evenclaw sheet --pdf", "makes it as a PDF that any printer takes"},
    {"evenclaw sheet --text", "shows it here, to read or to put into an e-mail"},
    {"evenclaw sheet --herd home --day 2026-11-24 --out home.html", "one visit, into a file"},
    {"evenclaw sheet --csv --out visit.csv",
     "the rows of the sheet as a list; without --out it is shown here"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<FileAnswer>}};

Result<SheetMade> made(Records& records, const Invocation& invocation) {
  auto visit = records.visit_meant(invocation, VisitState::any);
  if (!visit) return visit.faults();
  return make_sheet(records.ports(), *visit, records.today(), {std::string(version), fonts()});
}

/// The list, on the screen or into a new file.
Exit run_csv(Records& records, const Invocation& invocation) {
  auto visit = records.visit_meant(invocation, VisitState::any);
  if (!visit) return tell_faults(visit.faults(), invocation);
  auto lines = make_sheet_lines(records.ports(), *visit, records.today());
  if (!lines) return tell_faults(lines.faults(), invocation);
  const std::string path = invocation.value("--out");
  if (path.empty()) {
    std::cout << lines->csv;
    return Exit::fine;
  }
  auto written = write_new_file(path, lines->csv);
  if (!written) return tell_faults(written.faults(), invocation);
  tell_done(invocation, "The list lies at " + path, FileAnswer{path});
  return Exit::fine;
}

Exit run(const Invocation& invocation) {
  const int forms = static_cast<int>(invocation.has("--csv")) +
                    static_cast<int>(invocation.has("--pdf")) +
                    static_cast<int>(invocation.has("--text"));
  if (forms > 1) {
    return tell_faults({{"usage", "a sheet is made in one form at a time", "", 0, 0,
                         "Leave out all but one of --csv, --pdf and --text."}},
                       invocation);
  }
  auto records = Records::open(invocation, Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  if (invocation.has("--csv")) return run_csv(**records, invocation);
  auto sheet = made(**records, invocation);
  if (!sheet) return tell_faults(sheet.faults(), invocation);
  if (invocation.has("--text")) {
    std::cout << sheet->text;
    return Exit::fine;
  }
  std::string path = invocation.value("--out");
  const bool is_pdf = invocation.has("--pdf") || form_of(path) == PageForm::pdf;
  const PageForm form = is_pdf ? PageForm::pdf : PageForm::html;
  if (path.empty()) path = beside((*records)->file(), named_for(form, sheet->suggested_name));
  const auto written = write_sheet(path, form, *sheet);
  if (!written) return tell_faults(written.faults(), invocation);
  tell_done(invocation, "The sheet lies at " + path, FileAnswer{path});
  return Exit::fine;
}

}  // namespace

extern const Command sheet_command = {
    "sheet", "the page that stays on the farm", {}, options, examples, run, answers};

}  // namespace evenclaw::cli
