#include <filesystem>
#include <sstream>

#include "cli/answer.hpp"
#include "cli/columns.hpp"
#include "cli/commands.hpp"
#include "cli/due_text.hpp"
#include "cli/open_points.hpp"
#include "cli/output_file.hpp"
#include "cli/records.hpp"
#include "cli/reply_printer.hpp"
#include "cli/shipped.hpp"
#include "core/api/due.hpp"
#include "core/api/recording.hpp"
#include "core/api/said_day.hpp"
#include "core/api/sheet.hpp"

namespace evenclaw::cli {
namespace {

constexpr Option options[] = {{"--each", "", "print the answer to each cow"}};
constexpr Example examples[] = {
    {"evenclaw example",
     "records the visits that ship with the program into a file of their own, "
     "shows what is due and where the sheet lies"},
    {"evenclaw example --quiet", "the same without a line for each cow"}};

constexpr std::string_view herd_mark = "# herd: ";

std::vector<std::string> lines_of(std::string_view text) {
  std::vector<std::string> lines;
  std::istringstream stream{std::string(text)};
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

std::string herd_of(const std::vector<std::string>& lines) {
  for (const std::string& line : lines) {
    if (line.rfind(herd_mark, 0) == 0) return line.substr(herd_mark.size());
  }
  return "Example herd";
}

Result<Herd> herd_for(Records& records, const std::string& name) {
  auto herd = find_herd(records.store(), name);
  if (herd) return herd;
  return register_herd(records.ports(), name, true);
}

struct Recorded {
  Visit visit;
  std::vector<ReplyItem> answers;
  std::size_t saved = 0;
};

bool is_warning(ReplyKind kind) {
  return kind == ReplyKind::stop || kind == ReplyKind::ask || kind == ReplyKind::question ||
         kind == ReplyKind::refused;
}

void keep(const Reply& reply, Recorded& recorded) {
  for (const ReplyItem& item : reply.items) {
    if (item.kind == ReplyKind::saved) ++recorded.saved;
    recorded.answers.push_back(item);
  }
}

Result<Recorded> record_visit(Records& records, const ExampleVisit& example) {
  const std::vector<std::string> lines = lines_of(example.calls);
  auto herd = herd_for(records, herd_of(lines));
  if (!herd) return herd.faults();
  VisitWanted wanted;
  wanted.herd = herd->herd;
  wanted.day = day_from_text(example.name.substr(0, example.name.find('.')));
  auto visit = start_visit(records.ports(), wanted);
  if (!visit) return visit.faults();
  auto recording = Recording::open(records.ports(), *visit, english());
  if (!recording) return recording.faults();
  Recorded recorded;
  auto said = recording->say_all(lines);
  if (!said) return said.faults();
  keep(*said, recorded);
  auto last = recording->end_of_input();
  if (!last) return last.faults();
  keep(*last, recorded);
  recorded.visit = recording->visit();
  return recorded;
}

/// What a person would have heard in the crush; the second time it was all answered before.
void print_answers(const Recorded& recorded, bool each) {
  ReplyPrinter printer(false);
  for (const ReplyItem& item : recorded.answers) {
    if (each || (recorded.saved > 0 && is_warning(item.kind))) printer.print(item);
  }
}

Result<Visit> record_and_end(Records& records, const ExampleVisit& example, bool each) {
  auto recorded = record_visit(records, example);
  if (!recorded) return recorded.faults();
  auto ended = end_visit(records.ports(), recorded->visit);
  if (!ended) return ended.faults();
  std::cout << recorded->visit.herd_name << ", "
            << said_day(recorded->visit.day, recorded->visit.day) << ": "
            << counted(ended->cows, "cow", "cows")
            << (recorded->saved > 0 ? " recorded\n" : ", all recorded before\n");
  print_answers(*recorded, each);
  if (recorded->saved > 0 && !ended->open.empty()) {
    std::cout << " to be asked when the visit ended:\n" << open_points_text(ended->open);
  }
  return recorded->visit;
}

Outcome show_result(Records& records, const Visit& last, Day today) {
  auto due = list_due(records.store(), last.herd, today);
  if (!due) return due.faults();
  std::cout << "\nWhat is open at " << last.herd_name << " on " << said_day(today, last.day) << "\n"
            << due_text(*due);
  auto sheet = make_sheet(records.ports(), last, today, {std::string(version), fonts()});
  if (!sheet) return sheet.faults();
  const std::string path = beside(records.file(), sheet->suggested_name);
  const auto written = write_page(path, sheet->html);
  if (!written) return written;
  std::cout << "\nThe farmer's sheet lies at\n  " << path << "\nThe records lie at\n  "
            << records.file()
            << "\nLook around in them, for example\n  evenclaw show cow 231 --file "
            << records.file() << "\n";
  return Done{};
}

Exit run(const Invocation& asked) {
  Invocation invocation = asked;
  if (!invocation.file_named) {
    // A file of its own: the example's cows are nobody's, and must not mix with a user's.
    invocation.file = (std::filesystem::path(asked.file).parent_path() / "example.db").string();
  }
  auto records = Records::open(invocation, Opening::create);
  if (!records) return tell_faults(records.faults(), invocation);
  Visit last;
  for (const ExampleVisit& example : example_visits()) {
    auto visit = record_and_end(**records, example, asked.has("--each"));
    if (!visit) return tell_faults(visit.faults(), invocation);
    last = *std::move(visit);
  }
  // Seen from its own last day, else every task of the example would be years late one day.
  const Day today = asked.today ? (*records)->today() : last.day;
  const auto shown = show_result(**records, last, today);
  return shown ? Exit::fine : tell_faults(shown.faults(), invocation);
}

}  // namespace

extern const Command example_command = {
    "example", "record the visits that ship with the program", {}, options, examples, run};

}  // namespace evenclaw::cli
