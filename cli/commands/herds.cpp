#include "core/api/herds.hpp"

#include "cli/answer.hpp"
#include "cli/columns.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/said_day.hpp"

namespace evenclaw::cli {
namespace {

constexpr Example examples[] = {
    {"evenclaw herds", "each herd, its last visit, what is open there"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::list, field_docs<HerdLine>}};

std::string text_of(const HerdLine& line, Day today) {
  std::string text = line.name + ": " + counted(line.cows, "cow", "cows");
  if (line.last_visit) text += ", last visit " + said_day(*line.last_visit, today);
  if (line.open_visit) text += ", visit of " + said_day(*line.open_visit, today) + " not ended";
  return text + "; " + std::to_string(line.overdue) + " late, " + std::to_string(line.due) +
         " to do now, " + std::to_string(line.coming) + " coming\n";
}

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  auto lines = list_herds((*records)->store(), (*records)->today());
  if (!lines) return tell_faults(lines.faults(), invocation);
  if (invocation.json) {
    print_json(*lines);
    return Exit::fine;
  }
  for (const HerdLine& line : *lines) std::cout << text_of(line, (*records)->today());
  if (lines->empty()) std::cout << "No herd yet: evenclaw start \"Home Farm\" --new-herd\n";
  return Exit::fine;
}

}  // namespace

extern const Command herds_command = {
    "herds", "the herds and how each stands", {}, {}, examples, run, answers};

}  // namespace evenclaw::cli
