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
    {"evenclaw example --each", "the same with what was answered to each cow"}};

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

/// One visit of the example as it was recorded now, or had been before.
struct VisitPlayed {
  Visit visit;
  std::vector<ReplyItem> answers;
  std::vector<OpenPoint> open;
  std::int32_t cows = 0;
  std::int64_t saved = 0;  // turns; 0 when all had been recorded before

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("visit", &VisitPlayed::visit, "the visit");
    visit("answers", &VisitPlayed::answers, "what was answered to its lines");
    visit("open", &VisitPlayed::open, "what was to be asked when it ended");
    visit("cows", &VisitPlayed::cows, "different cows seen");
    visit("saved", &VisitPlayed::saved, "turns recorded now; 0 when all had been before");
  }
};

struct ExamplePlayed {
  std::vector<VisitPlayed> visits;
  DueList due;
  std::string sheet;
  std::string records;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("visits", &ExamplePlayed::visits, "the visits, by day");
    visit("due", &ExamplePlayed::due, "what is open after the last one");
    visit("sheet", &ExamplePlayed::sheet, "where the farmer's sheet lies");
    visit("records", &ExamplePlayed::records, "where the records lie");
  }
};

constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<ExamplePlayed>}};

bool is_warning(ReplyKind kind) {
  return kind == ReplyKind::stop || kind == ReplyKind::ask || kind == ReplyKind::question ||
         kind == ReplyKind::refused;
}

void keep(const Reply& reply, VisitPlayed& played) {
  for (const ReplyItem& item : reply.items) {
    if (item.kind == ReplyKind::saved) ++played.saved;
    played.answers.push_back(item);
  }
}

Result<Visit> visit_of(Records& records, const ExampleVisit& example,
                       const std::vector<std::string>& lines) {
  auto herd = herd_for(records, herd_of(lines));
  if (!herd) return herd.faults();
  VisitWanted wanted;
  wanted.herd = herd->herd;
  wanted.sure = true;  // its days stay where they are, however late it is played
  wanted.day = day_from_text(example.name.substr(0, example.name.find('.')));
  return start_visit(records.ports(), wanted);
}

Result<VisitPlayed> play_visit(Records& records, const ExampleVisit& example) {
  const std::vector<std::string> lines = lines_of(example.calls);
  auto visit = visit_of(records, example, lines);
  if (!visit) return visit.faults();
  // Its lines are English, whatever language the business calls its days in.
  auto recording = Recording::open(records.ports(), *visit, english());
  if (!recording) return recording.faults();
  VisitPlayed played;
  auto said = recording->say_all(lines);
  if (!said) return said.faults();
  keep(*said, played);
  auto last = recording->end_of_input();
  if (!last) return last.faults();
  keep(*last, played);
  auto ended = end_visit(records.ports(), recording->visit(), english());
  if (!ended) return ended.faults();
  played.visit = recording->visit();
  played.open = std::move(ended->open);
  played.cows = ended->cows;
  return played;
}

Result<ExamplePlayed> play(Records& records, std::optional<Day> asked_day) {
  ExamplePlayed played;
  for (const ExampleVisit& example : example_visits()) {
    auto visit = play_visit(records, example);
    if (!visit) return visit.faults();
    played.visits.push_back(*std::move(visit));
  }
  const Visit& last = played.visits.back().visit;
  // Seen from its own last day, else every task of the example would be years late one day.
  const Day today = asked_day.value_or(last.day);
  auto due = list_due(records.store(), last.herd, today);
  if (!due) return due.faults();
  played.due = *std::move(due);
  auto sheet = make_sheet(records.ports(), last, today, {std::string(version), fonts()});
  if (!sheet) return sheet.faults();
  played.sheet = beside(records.file(), sheet->suggested_name);
  played.records = records.file();
  const auto written = write_page(played.sheet, PageForm::html, sheet->html);
  if (!written) return written.faults();
  return played;
}

/// What a person would have heard in the crush; the second time it was all answered before.
void print(const VisitPlayed& played, bool each) {
  ReplyPrinter printer(false);
  std::cout << played.visit.herd_name << ", " << said_day(played.visit.day, played.visit.day)
            << ": " << counted(played.cows, "cow", "cows")
            << (played.saved > 0 ? " recorded\n" : ", all recorded before\n");
  for (const ReplyItem& item : played.answers) {
    if (each || (played.saved > 0 && is_warning(item.kind))) printer.print(item);
  }
  if (played.saved > 0 && !played.open.empty()) {
    std::cout << " to be asked when the visit ended:\n" << open_points_text(played.open);
  }
}

void print(const ExamplePlayed& played, bool each) {
  for (const VisitPlayed& visit : played.visits) print(visit, each);
  const Visit& last = played.visits.back().visit;
  std::cout << "\nWhat is open at " << last.herd_name << " on "
            << said_day(played.due.today, last.day) << "\n"
            << due_text(played.due) << "\nThe farmer's sheet lies at\n  " << played.sheet
            << "\nThe records lie at\n  " << played.records
            << "\nLook around in them, for example\n  evenclaw show cow 231 --file "
            << played.records << "\n";
}

Exit run(const Invocation& asked) {
  Invocation invocation = asked;
  if (!invocation.file_named) {
    // A file of its own: the example's cows are nobody's, and must not mix with a user's.
    invocation.file = (std::filesystem::path(asked.file).parent_path() / "example.db").string();
  }
  auto records = Records::open(invocation, Opening::create);
  if (!records) return tell_faults(records.faults(), invocation);
  auto played =
      play(**records, asked.today ? std::optional((*records)->today()) : std::optional<Day>());
  if (!played) return tell_faults(played.faults(), invocation);
  if (invocation.json) {
    print_json(*played);
  } else {
    print(*played, asked.has("--each"));
  }
  return Exit::fine;
}

}  // namespace

extern const Command example_command = {
    "example", "record the visits that ship with the program", {}, options, examples, run, answers};

}  // namespace evenclaw::cli
