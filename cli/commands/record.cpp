#include <unistd.h>

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/line_source.hpp"
#include "cli/records.hpp"
#include "cli/reply_printer.hpp"
#include "core/api/recording.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {
    {"FILE", "a file of called lines; - or nothing: what is typed or piped", false}};
constexpr Option options[] = {{"--herd", "HERD", "the herd, when more than one visit is open"},
                              {"--day", "DAY", "add to the visit of that day"}};
constexpr Example examples[] = {
    {"evenclaw record", "type line by line; ? asks what may follow, Ctrl-D ends"},
    {"evenclaw record monday.calls", "records a file, acknowledged as a whole"},
    {"printf '412 lame LH\\nLH sole ulcer outside\\ndone\\n' | evenclaw record -",
     "records what another program gives"}};

/// Lines of a file: read whole first, so that junk is refused before anything is recorded.
Exit record_file(Recording& recording, const std::string& path, ReplyPrinter& printer,
                 const Invocation& invocation) {
  auto lines = lines_of_file(path);
  if (!lines) return tell_faults(lines.faults(), invocation);
  if (lines->empty()) {
    return tell_faults({{"nothing-to-do", path + " holds no line", path, 0, 0, ""}}, invocation);
  }
  auto reply = recording.say_all(*lines);
  if (!reply) return tell_faults(reply.faults(), invocation);
  printer.print(*reply);
  auto last = recording.end_of_input();
  if (!last) return tell_faults(last.faults(), invocation);
  printer.print(*last);
  return printer.exit();
}

/// What may follow, when a line ends in a question mark.
bool asked_what_follows(const std::string& line) {
  return line == "?" || (line.size() > 1 && line.compare(line.size() - 2, 2, " ?") == 0);
}

void print_suggestions(const Recording& recording, const std::string& line) {
  const std::string half = line.size() > 1 ? line.substr(0, line.size() - 2) : std::string();
  for (const Suggestion& suggestion : recording.may_follow(half)) {
    std::cout << "  " << suggestion.words;
    if (!suggestion.meaning.empty()) std::cout << "  (" << suggestion.meaning << ')';
    std::cout << '\n';
  }
}

Exit say_line_by_line(Recording& recording, std::istream& stream, ReplyPrinter& printer,
                      const Invocation& invocation) {
  const bool typed = isatty(STDIN_FILENO) == 1 && !invocation.json;
  printer.print(recording.opening());
  for (int number = 1;; ++number) {
    if (typed) std::cout << recording.in_crush() << "> " << std::flush;
    auto line = next_line(stream, number);
    if (!line) {
      printer.note_exit(tell_faults(line.faults(), invocation));
      continue;
    }
    if (!line->has_value()) break;
    if (asked_what_follows(**line)) {
      print_suggestions(recording, **line);
      continue;
    }
    auto reply = recording.say(**line);
    if (!reply) return tell_faults(reply.faults(), invocation);
    printer.print(*reply);
  }
  if (typed) std::cout << '\n';
  auto last = recording.end_of_input();
  if (!last) return tell_faults(last.faults(), invocation);
  printer.print(*last);
  return printer.exit();
}

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  auto visit = (*records)->visit_meant(invocation, VisitState::open);
  if (!visit) return tell_faults(visit.faults(), invocation);
  auto recording = Recording::open((*records)->ports(), *visit, english());
  if (!recording) return tell_faults(recording.faults(), invocation);
  ReplyPrinter printer(invocation.json);
  if (invocation.operands.empty() || invocation.operands.front() == "-") {
    return say_line_by_line(*recording, std::cin, printer, invocation);
  }
  printer.print(recording->opening());
  return record_file(*recording, invocation.operands.front(), printer, invocation);
}

}  // namespace

extern const Command record_command = {
    "record", "record what is called out", operands, options, examples, run};

}  // namespace evenclaw::cli
