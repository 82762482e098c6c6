#include "core/api/herds.hpp"

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"

namespace evenclaw::cli {
namespace {

constexpr Example examples[] = {
    {"evenclaw herds", "each herd, its last visit, what is open there"}};

void print(const HerdLine& line) {
  std::cout << line.name << ": " << line.cows << " cows";
  if (line.last_visit) std::cout << ", last visit " << to_text(*line.last_visit);
  if (line.open_visit) std::cout << ", visit of " << to_text(*line.open_visit) << " still open";
  std::cout << "; " << line.overdue << " late, " << line.due << " to do now, " << line.coming
            << " coming\n";
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
  for (const HerdLine& line : *lines) print(line);
  if (lines->empty()) std::cout << "No herd yet: evenclaw start \"Home Farm\" --new-herd\n";
  return Exit::fine;
}

}  // namespace

extern const Command herds_command = {"herds", "the herds and how each stands", {}, {}, examples,
                                      run};

}  // namespace evenclaw::cli
