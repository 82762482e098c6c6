#include "cli/answer.hpp"
#include "cli/columns.hpp"
#include "cli/commands.hpp"
#include "cli/output_file.hpp"
#include "cli/records.hpp"
#include "core/api/task_calendar.hpp"

namespace evenclaw::cli {
namespace {

constexpr Option options[] = {
    {"--herd", "HERD", "the herd, when there are several"},
    {"--for", "WHOM", "the tasks of the farmer, the trimmer or the vet alone"},
    {"--out", "FILE", "into a new file instead of the screen"}};
constexpr Example examples[] = {
    {"evenclaw calendar --out tasks.ics", "a file that telephones and office programs take"},
    {"evenclaw calendar --for farmer --out farmer.ics",
     "what the farmer does; again later, and what moved or is done follows"}};

struct CalendarWritten {
  std::string file;
  std::int32_t open = 0;
  std::int32_t cancelled = 0;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("file", &CalendarWritten::file, "where it lies");
    visit("open", &CalendarWritten::open, "tasks that stand in it");
    visit("cancelled", &CalendarWritten::cancelled, "closed ones, as cancelled");
  }
};

constexpr JsonAnswer answers[] = {{"with --out", JsonForm::document, field_docs<CalendarWritten>}};

Result<std::optional<Owner>> owner_in(const Invocation& invocation) {
  if (!invocation.has("--for")) return std::optional<Owner>();
  const std::string whom = invocation.value("--for");
  const auto owner = enum_of<Owner>(whom);
  if (owner) return owner;
  return Fault{.slug = "usage",
               .message = "nobody of that name has tasks",
               .token = whom,
               .remedy = "Say --for farmer, --for trimmer or --for vet."};
}

Exit run(const Invocation& invocation) {
  const auto owner = owner_in(invocation);
  if (!owner) return tell_faults(owner.faults(), invocation);
  auto records = Records::open(invocation, Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  const auto herd = (*records)->herd_meant(invocation);
  if (!herd) return tell_faults(herd.faults(), invocation);
  const auto made = task_calendar((*records)->ports(), *herd, *owner, (*records)->today());
  if (!made) return tell_faults(made.faults(), invocation);
  const std::string path = invocation.value("--out");
  if (path.empty()) {
    std::cout << made->file;
    return Exit::fine;
  }
  const Outcome written = write_new_file(path, made->file);
  if (!written) return tell_faults(written.faults(), invocation);
  tell_done(invocation,
            "The calendar lies at " + path + ": " + counted(made->open, "task", "tasks") + ", " +
                std::to_string(made->cancelled) + " cancelled",
            CalendarWritten{path, made->open, made->cancelled});
  return Exit::fine;
}

}  // namespace

extern const Command calendar_command = {
    "calendar", "the tasks of a herd as a calendar file", {}, options, examples, run, answers};

}  // namespace evenclaw::cli
