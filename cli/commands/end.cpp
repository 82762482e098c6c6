#include "cli/answer.hpp"
#include "cli/columns.hpp"
#include "cli/commands.hpp"
#include "cli/open_points.hpp"
#include "cli/records.hpp"
#include "cli/reply_printer.hpp"
#include "core/api/said_day.hpp"
#include "core/api/visits.hpp"

namespace evenclaw::cli {
namespace {

constexpr Option options[] = {{"--herd", "HERD", "the herd, when more than one visit is open"},
                              {"--day", "DAY", "end the visit of that day"}};
constexpr Example examples[] = {
    {"evenclaw end", "lists what is still in doubt and closes the visit"},
    {"evenclaw end --herd home --day 2026-11-24", "one of several open visits"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<VisitEnded>}};

/// Once, when the work in this yard is over.
void print_before_leaving(const VisitEnded& ended) {
  if (ended.before_leaving.empty()) return;
  std::cout << "Before you leave the yard\n";
  for (const std::string& words : ended.before_leaving) {
    std::cout << wrapped_behind("  [ ] ", words) << "\n";
  }
}

void print(const VisitEnded& ended, Day today) {
  ReplyPrinter printer(false);
  for (const ReplyItem& item : ended.last_turn) printer.print(item);
  if (ended.open.empty()) {
    std::cout << "Nothing is left in doubt.\n";
  } else {
    std::cout << "Still to be asked (" << ended.open.size() << "):\n"
              << open_points_text(ended.open) << how_to_answer(ended.open, ended.visit.day);
  }
  std::cout << "Visit to " << ended.visit.herd_name << ", " << said_day(ended.visit.day, today)
            << (ended.ended_before ? ": had been ended before, " : ": ended, ")
            << counted(ended.cows, "cow", "cows") << ".\n"
            << "Now: evenclaw sheet, evenclaw due\n";
  if (!ended.open.empty()) std::cout << "What is still to be asked: evenclaw show visit\n";
  print_before_leaving(ended);
}

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  auto visit = (*records)->visit_meant(invocation, VisitState::open);
  if (!visit) return tell_faults(visit.faults(), invocation);
  auto ended = end_visit((*records)->ports(), *visit, (*records)->language());
  if (!ended) return tell_faults(ended.faults(), invocation);
  if (invocation.json) {
    print_json(*ended);
  } else {
    print(*ended, (*records)->today());
  }
  return ended->open.empty() ? Exit::fine : Exit::asked;
}

}  // namespace

extern const Command end_command = {
    "end", "ask about what is in doubt and close the visit", {}, options, examples, run, answers};

}  // namespace evenclaw::cli
