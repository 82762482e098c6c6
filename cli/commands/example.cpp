#include <algorithm>
#include <filesystem>
#include <sstream>

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/due_text.hpp"
#include "cli/output_file.hpp"
#include "cli/records.hpp"
#include "cli/reply_printer.hpp"
#include "cli/shipped.hpp"
#include "core/api/due.hpp"
#include "core/api/recording.hpp"
#include "core/api/sheet.hpp"

namespace evenclaw::cli {
namespace {

constexpr Option options[] = {{"--quiet", "", "do not print each cow"}};
constexpr Example examples[] = {
    {"evenclaw example",
     "records the visits that ship with the program into a file of their own, "
     "shows what is due and where the sheet lies"},
    {"evenclaw show cow 231 --file ~/.local/share/evenclaw/example.db", "then look around in it"}};

constexpr std::string_view herd_mark = "# herd: ";
constexpr std::string_view beginning_of_a_page = "<!doctype html>\n";

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
  std::size_t saved = 0;
  std::size_t there_already = 0;
};

void count_and_print(const Reply& reply, Recorded& recorded, bool quiet) {
  ReplyPrinter printer(false);
  for (const ReplyItem& item : reply.items) {
    if (item.kind == ReplyKind::saved) ++recorded.saved;
    if (item.kind == ReplyKind::there_already) ++recorded.there_already;
    if (!quiet && item.kind != ReplyKind::there_already) printer.print(item);
  }
}

Result<Recorded> record_visit(Records& records, const ExampleVisit& example, bool quiet) {
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
  count_and_print(*said, recorded, quiet);
  auto last = recording->end_of_input();
  if (!last) return last.faults();
  count_and_print(*last, recorded, quiet);
  recorded.visit = recording->visit();
  return recorded;
}

void print_open_points(const VisitEnded& ended) {
  for (const OpenPoint& point : ended.open) {
    std::cout << "  to ask " << point.cow_said << ": " << point.words << '\n';
  }
}

Result<Recorded> record_and_end(Records& records, const ExampleVisit& example, bool quiet) {
  auto recorded = record_visit(records, example, quiet);
  if (!recorded) return recorded;
  auto ended = end_visit(records.ports(), recorded->visit);
  if (!ended) return ended.faults();
  if (!quiet && !ended->ended_before) print_open_points(*ended);
  std::cout << recorded->visit.herd_name << ", " << to_text(recorded->visit.day) << ": "
            << ended->cows << " cows, " << recorded->saved << " turns recorded, "
            << recorded->there_already << " there already\n";
  return recorded;
}

Outcome show_result(Records& records, const Visit& last, Day today) {
  auto due = list_due(records.store(), last.herd, today);
  if (!due) return due.faults();
  std::cout << "\nWhat is open at " << last.herd_name << " on " << to_text(today) << ":\n"
            << due_text(*due);
  auto sheet = make_sheet(records.ports(), last, today, {std::string(version), fonts()});
  if (!sheet) return sheet.faults();
  const std::string path = beside(records.file(), sheet->suggested_name);
  const auto written = write_file(path, sheet->html, beginning_of_a_page);
  if (!written) return written;
  std::cout << "\nThe farmer's sheet lies at " << path << "\nThe records lie at " << records.file()
            << "\n";
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
    auto recorded = record_and_end(**records, example, asked.has("--quiet"));
    if (!recorded) return tell_faults(recorded.faults(), invocation);
    last = recorded->visit;
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
