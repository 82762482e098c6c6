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
                              {"--out", "FILE", "where the page goes; a name in .pdf makes a PDF"},
                              {"--pdf", "", "a PDF to print, without a browser"},
                              {"--text", "", "on the screen, as plain text"}};
constexpr Example examples[] = {
    {"evenclaw sheet", "makes the page of the open or last visit and says where it lies"},
    {"evenclaw sheet --pdf", "makes it as a PDF that any printer takes"},
    {"evenclaw sheet --text", "shows it here, to read or to put into an e-mail"},
    {"evenclaw sheet --herd home --day 2026-11-24 --out home.html", "one visit, into a file"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<FileAnswer>}};

Result<SheetMade> made(Records& records, const Invocation& invocation) {
  auto visit = records.visit_meant(invocation, VisitState::any);
  if (!visit) return visit.faults();
  return make_sheet(records.ports(), *visit, records.today(), {std::string(version), fonts()});
}

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
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
