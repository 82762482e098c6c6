#include "core/api/due.hpp"

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/due_text.hpp"
#include "cli/page_file.hpp"
#include "cli/records.hpp"
#include "cli/shipped.hpp"
#include "core/api/sheet.hpp"

namespace evenclaw::cli {
namespace {

constexpr Option options[] = {
    {"--herd", "HERD", "one herd only"},
    {"--paper", "FILE",
     "one herd's list to print, with blank call lines; a name in .pdf makes a PDF"}};
constexpr Example examples[] = {
    {"evenclaw due", "who has to do what, by when, in all herds"},
    {"evenclaw due --herd home --today 2026-11-26", "one herd, as it stands on that day"},
    {"evenclaw due --herd home --paper due.html",
     "the same to hang up, with blank lines to write in"},
    {"evenclaw due --herd home --paper due.pdf", "as a PDF that any printer takes"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<DueList>},
                                  {"with --paper", JsonForm::document, field_docs<FileAnswer>}};

Exit onto_paper(Records& records, const Invocation& invocation) {
  const auto herd = records.herd_meant(invocation);
  if (!herd) return tell_faults(herd.faults(), invocation);
  const auto sheet =
      make_due_sheet(records.store(), *herd, records.today(), {std::string(version), fonts()});
  if (!sheet) return tell_faults(sheet.faults(), invocation);
  const std::string path = invocation.value("--paper");
  const auto written = write_sheet(path, form_of(path), *sheet);
  if (!written) return tell_faults(written.faults(), invocation);
  tell_done(invocation, "The list lies at " + path, FileAnswer{path});
  return Exit::fine;
}

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  if (invocation.has("--paper")) return onto_paper(**records, invocation);
  auto herd = (*records)->herd_named(invocation);
  if (!herd) return tell_faults(herd.faults(), invocation);
  const auto id = herd->has_value() ? std::optional<HerdId>((*herd)->herd) : std::nullopt;
  auto list = list_due((*records)->store(), id, (*records)->today());
  if (!list) return tell_faults(list.faults(), invocation);
  if (invocation.json) {
    print_json(*list);
  } else {
    std::cout << due_text(*list);
  }
  return Exit::fine;
}

}  // namespace

extern const Command due_command = {
    "due", "what is open, who does it, by when", {}, options, examples, run, answers};

}  // namespace evenclaw::cli
