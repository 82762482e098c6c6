#include "cli/answer.hpp"
#include "cli/columns.hpp"
#include "cli/commands.hpp"
#include "cli/export_folder.hpp"
#include "cli/records.hpp"

namespace evenclaw::cli {
namespace {

constexpr Option options[] = {
    {"--to", "FOLDER", "a folder that is not there yet"},
    {"--herd", "HERD", "one herd alone, without people and log, to give away"}};
constexpr Example examples[] = {
    {"evenclaw export --to all",
     "all there is: tables, their dictionary, the log, ICAR ADE, calendars (docs/user/export.md)"},
    {"evenclaw export --herd home --to home", "what is of one herd, and nothing of any other"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<Exported>}};

Exit run(const Invocation& invocation) {
  const std::string folder = invocation.value("--to");
  if (folder.empty()) {
    return tell_faults({Fault{.slug = "usage",
                              .message = "it is not said where all of it is to lie",
                              .remedy = "Say a folder: evenclaw export --to all"}},
                       invocation);
  }
  auto records = Records::open(invocation, Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  const auto herd = (*records)->herd_named(invocation);
  if (!herd) return tell_faults(herd.faults(), invocation);
  const auto made = export_into((*records)->ports(), *herd, (*records)->today(), folder);
  if (!made) return tell_faults(made.faults(), invocation);
  tell_done(invocation,
            counted(static_cast<std::int64_t>(made->files.size()), "file lies", "files lie") +
                " in " + folder + ": " + counted(made->rows, "row", "rows") + ", " +
                counted(made->entries, "entry", "entries"),
            *made);
  return Exit::fine;
}

}  // namespace

extern const Command export_command = {
    "export", "take everything out, for other programs", {}, options, examples, run, answers};

}  // namespace evenclaw::cli
