#include "cli/help.hpp"

#include <iostream>

#include "cli/answer.hpp"
#include "cli/arguments.hpp"
#include "cli/commands.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"VERB", "the command to explain", false}};
constexpr Option options[] = {{"--reference", "", "print docs/user/commands.md"},
                              {"--answers", "", "print docs/format/answers.md"}};
constexpr Example examples[] = {{"evenclaw help", "lists the commands"},
                                {"evenclaw help record", "explains one by example"}};

Exit run(const Invocation& invocation) {
  if (invocation.has("--reference")) {
    std::cout << command_reference();
    return Exit::fine;
  }
  if (invocation.has("--answers")) {
    std::cout << answer_reference();
    return Exit::fine;
  }
  if (invocation.operands.empty()) {
    std::cout << help_of_all();
    return Exit::fine;
  }
  const Command* command = find_command(invocation.operands.front());
  if (command == nullptr) {
    return tell_faults({no_such_command(invocation.operands.front())}, invocation);
  }
  std::cout << help_of(*command);
  return Exit::fine;
}

}  // namespace

extern const Command help_command = {
    "help", "explain a command by example", operands, options, examples, run};

}  // namespace evenclaw::cli
